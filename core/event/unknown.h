#pragma once

/// Members of the document that this version does not know.

#include <map>
#include <string>

namespace cinder::event {

/// Name of the member to its value as JSON text, kept at the level where it was found and written
/// back there, so that an older app does not lose what a newer one wrote.
using UnknownMembers = std::map<std::string, std::string>;

}  // namespace cinder::event
