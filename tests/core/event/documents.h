#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "event/event.h"
#include "event/fault.h"

namespace cinder::test {

/// The text of a file of the source tree; fails the test when it cannot be read.
[[nodiscard]] std::string sourceText(const std::string& path);

/// The document that has every member of the format once.
[[nodiscard]] std::string everyMember();

[[nodiscard]] std::vector<std::string> demoFiles();

/// `document` with the only occurrence of `what` replaced; fails the test when there is none.
[[nodiscard]] std::string replaced(std::string document, const std::string& what,
                                   const std::string& by);

/// The faults of a document; fails the test when it has none.
[[nodiscard]] event::Faults faultsOf(const std::string& document);

/// The only fault of the document with every member once `value` stands at `pointer`.
[[nodiscard]] event::Fault faultWith(const std::string& pointer,
                                     const nlohmann::ordered_json& value);

}  // namespace cinder::test
