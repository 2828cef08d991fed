#pragma once

/// The judge. Re-checks every rule of a problem on a finished schedule, sharing nothing with the
/// search: no data structure, no helper, no shortcut. Every plan passes through here before anybody
/// sees it, and so does every schedule of the tests and the benchmarks.

#include <string>
#include <vector>

#include "plan/solution.h"

namespace cinder::plan {

enum class Rule {
    Shape,       ///< as many planned tasks, pieces and people as the problem asks for
    Duration,    ///< finish is start plus duration; pieces add up and respect the shortest piece
    Window,      ///< before arrival, before the earliest start, after the latest finish
    Lag,         ///< a link's minimum or maximum
    Capacity,    ///< more of a resource in use than there is
    Skill,       ///< a person without the skill
    DoubleBook,  ///< a person in two places at once
    Walk,        ///< a person with too little time to get there
};

/// One broken rule, with the tasks it concerns and the amount by which it is broken, in the
/// rule's own unit (half-minutes, resource units, people).
struct Violation {
    Rule rule = Rule::Shape;
    TaskIndex task = 0;
    std::optional<TaskIndex> other;
    std::optional<ResourceIndex> resource;
    std::optional<PersonIndex> person;
    FromBell at{0};
    std::int64_t by = 0;
    friend bool operator==(const Violation&, const Violation&) = default;
};

/// All broken rules, in the order of `Rule`, then task; empty for a valid schedule.
[[nodiscard]] std::vector<Violation> check(const Problem& problem, const Schedule& schedule);

/// The same of a day under way: what is fixed has happened, by the rules or not, so only those
/// count in which something that is not takes part. `isFixed` per task; empty: nothing is.
[[nodiscard]] std::vector<Violation> check(const Problem& problem, const Schedule& schedule,
                                           const std::vector<bool>& isFixed);

/// One line of plain English for logs, tests and the command line.
[[nodiscard]] std::string describe(const Problem& problem, const Violation& violation);

}  // namespace cinder::plan
