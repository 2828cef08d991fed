#include "plan/check.h"

namespace cinder::plan {

namespace {

/// A span in minutes, with ".5" when there is half a one.
std::string minutes(std::int64_t halfMinutes) {
    return std::to_string(halfMinutes / 2) + (halfMinutes % 2 != 0 ? ".5 min" : " min");
}

std::string moment(FromBell at) {
    const std::int64_t distance = at.count() < 0 ? -std::int64_t{at.count()} : at.count();
    return std::string(at.count() <= 0 ? "T-" : "T+") + minutes(distance);
}

}  // namespace

std::string describe(const Problem& problem, const Violation& v) {
    const auto name = [&](TaskIndex i) {
        const auto k = static_cast<std::size_t>(i);
        return k < problem.tasks.size() ? "\"" + problem.tasks[k].id.text() + "\""
                                        : "task " + std::to_string(i);
    };
    const std::string task = name(v.task);
    const std::string other = v.other ? name(*v.other) : "";
    const std::string who =
        v.person ? problem.crew[static_cast<std::size_t>(*v.person)].name : std::string("nobody");
    const std::string at = moment(v.at);
    switch (v.rule) {
        case Rule::Shape:
            return task + " does not have the pieces and people it asks for, at " + at;
        case Rule::Duration:
            return task + " has a wrong length or piece by " + minutes(v.by) + ", at " + at;
        case Rule::Window:
            return task + " is outside its window by " + minutes(v.by) + ", at " + at;
        case Rule::Lag:
            return "the time from " + task + " to " + other + " is wrong by " + minutes(v.by) +
                   ", at " + at;
        case Rule::Capacity:
            return "there is too little of \"" +
                   problem.resources[static_cast<std::size_t>(v.resource.value_or(0))].id.text() +
                   "\" for " + task + " by " + std::to_string(v.by) + " units, at " + at;
        case Rule::Skill:
            return who + " does not have the skill for " + task + ", at " + at;
        case Rule::DoubleBook:
            return who + " is asked for " + task + " and " + other + " at once for " +
                   minutes(v.by) + ", at " + at;
        case Rule::Walk:
            return who + " needs " + minutes(v.by) + " more to walk from " + task + " to " + other +
                   ", at " + at;
    }
    return {};
}

}  // namespace cinder::plan
