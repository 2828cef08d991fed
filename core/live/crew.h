#pragma once

/// Who is there: people come in the middle of a day, can do other things than was said, or go.

#include <vector>

#include "journal/operation.h"
#include "live/outlook.h"

namespace cinder::live {

/// As many as the planner can hold (plan/fault.cpp); those who have gone count too.
inline constexpr std::size_t kMostInCrew = 32;

/// What was said of the crew, put to what was known of it. False, and nothing changes, when there
/// would be too many, or one without a name.
[[nodiscard]] bool changeCrew(std::vector<journal::CrewChanged::Member>& crew,
                              const journal::CrewChanged& said);

/// The crew of a sheet as it now is: whoever came stands behind the others, whoever has gone can do
/// nothing any more.
[[nodiscard]] std::vector<plan::Person> crewOfThoseThere(const Day& day,
                                                         const plan::Problem& problem);

/// The sheet in force, for those who are there now (crewOfThoseThere). The hands that running work
/// still needs of somebody who cannot lend them are lent by who can, by the one who has least to do
/// just then. Work for more than are there is done by fewer and, if it has not begun, takes them so
/// much longer: what two would have carried, one carries in two goes (common practice - no source).
/// Where nobody can, everything stays as it was.
[[nodiscard]] RunSheet sheetOfThoseThere(const Situation& situation);

/// The skills that work which is not over needs and nobody has; `sheet` is that of those who are
/// there.
[[nodiscard]] std::vector<SkillId> skillsWanting(const Situation& situation, const RunSheet& sheet);

}  // namespace cinder::live
