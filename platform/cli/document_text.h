#pragma once

#include <string>

#include "report/document.h"

namespace cinder::cli {

/// A document as plain text: headings underlined, tables in columns with "[ ]" for check boxes. A
/// drawing is left out; the table below it says where everything stands.
[[nodiscard]] std::string documentText(const report::Document& document);

}  // namespace cinder::cli
