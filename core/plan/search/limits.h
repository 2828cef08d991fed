#pragma once

/// When a search ends.

#include <functional>

#include "plan/search/project.h"

namespace cinder::plan::search {

/// Ends a search early; asked between schedules.
using EndNow = std::function<bool()>;

struct Limits {
    /// In passes; one cut short counts by the share of members it placed, and a window by the
    /// starts it sought: one that is kept counts for nothing.
    std::int64_t schedules = 5000;
    /// A makespan known to be best: the search ends there.
    Slot bound = 0;
    EndNow endNow;
};

}  // namespace cinder::plan::search
