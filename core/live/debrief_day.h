#pragma once

/// What the journal tells of the debrief.

#include <cstdint>
#include <map>
#include <set>
#include <string>

#include "base/id.h"

namespace cinder::live {

/// What a person answered to a figure that was learnt (learn/lessons.h).
struct Lesson {
    bool isAccepted = false;
    std::int64_t value = 0;
    friend bool operator==(const Lesson&, const Lesson&) = default;
};

struct DebriefDay {
    std::set<TaskId> interrupted;
    std::map<std::string, Lesson> lessons;  ///< by figure
    friend bool operator==(const DebriefDay&, const DebriefDay&) = default;
};

}  // namespace cinder::live
