#pragma once

/// What can be printed of the open event.

#include <cstdint>
#include <string>
#include <vector>

#include "report/document.h"

namespace cinder::app {

enum class Sheet : std::uint8_t { Purchase, Pack, Kitchen, Run, Buffet, Cards, Record };

struct Paper {
    /// The name of its files, without an ending: letters, digits, "-", "." and "_" only.
    std::string stem;
    report::Document document;
    /// What can also be written as CSV; none where a table would say too little.
    std::vector<report::Table> tables;
};

}  // namespace cinder::app
