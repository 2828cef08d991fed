#pragma once

#include <string>

#include "report/document.h"

namespace cinder::report {

/// The table as RFC 4180: UTF-8, CRLF after every record, header first, fields quoted where they
/// have to be. Check boxes are left out.
[[nodiscard]] std::string csv(const Table& table);

}  // namespace cinder::report
