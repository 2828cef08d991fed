#include "live/crew.h"

#include <algorithm>
#include <set>

#include "event/limits.h"

namespace cinder::live {

namespace {

bool has(const std::vector<plan::SkillIndex>& skills, plan::SkillIndex skill) {
    return std::find(skills.begin(), skills.end(), skill) != skills.end();
}

/// What somebody can do now, in the places of the sheet; what it does not know, it does not ask.
std::vector<plan::SkillIndex> placesOf(const journal::CrewChanged::Member& member,
                                       const plan::Problem& problem) {
    std::vector<plan::SkillIndex> places;
    if (!member.isHere) return places;
    const auto& skills = member.skills;
    for (std::size_t s = 0; s < problem.skills.size(); ++s)
        if (std::find(skills.begin(), skills.end(), problem.skills[s].id) != skills.end())
            places.push_back(static_cast<plan::SkillIndex>(s));
    return places;
}

/// The first of a task's hands that is still to come.
std::size_t firstToCome(const Situation& s, std::size_t task, const plan::Actual& actual) {
    const bool isWhole = s.sheet.problem.tasks[task].hands.size() == 1;
    return isWhole ? 0 : static_cast<std::size_t>(std::max(0, actual.piecesDone));
}

std::int32_t ableTo(const std::vector<plan::Person>& crew, plan::SkillIndex skill) {
    return static_cast<std::int32_t>(
        std::count_if(crew.begin(), crew.end(),
                      [&](const plan::Person& person) { return has(person.skills, skill); }));
}

/// Finds who takes over from those that are not there.
class StandIns {
  public:
    StandIns(const Situation& situation, RunSheet& sheet)
        : s_(situation), sheet_(sheet), crew_(sheet.problem.crew) {}

    void run() {
        const auto actuals = actualsOf(s_);
        for (std::size_t i = 0; i < actuals.size(); ++i) {
            if (s_.progress[i].isOut()) continue;
            const std::size_t from = firstToCome(s_, i, actuals[i]);
            if (s_.progress[i].isRunning()) relieve(i, from);
            spread(i, from);
        }
    }

  private:
    /// Work for more than there are is done by those there are; what they have not begun takes them
    /// so much longer.
    void spread(std::size_t i, std::size_t from) {
        plan::Task& task = sheet_.problem.tasks[i];
        plan::PlannedTask& planned = sheet_.schedule.tasks[i];
        for (std::size_t k = from; k < std::min(task.hands.size(), planned.pieces.size()); ++k) {
            plan::HandsOn& hands = task.hands[k];
            const std::int32_t able = ableTo(crew_, hands.skill);
            if (able == 0 || able >= hands.people) continue;
            auto& people = planned.pieces[k].people;
            std::stable_partition(people.begin(), people.end(), [&](plan::PersonIndex one) {
                return has(crew_[at(one)].skills, hands.skill);
            });
            people.resize(static_cast<std::size_t>(able));
            std::sort(people.begin(), people.end());
            const bool isWhole = task.hands.size() == 1 && hands.length == task.duration.usual;
            if (isWhole && !s_.progress[i].isRunning()) lengthen(task, planned, hands.people, able);
            hands.people = able;
        }
    }

    static void lengthen(plan::Task& task, plan::PlannedTask& planned, std::int32_t asked,
                         std::int32_t able) {
        const auto longer = [&](plan::HalfMinutes length) {
            return plan::HalfMinutes{(length.count() * asked + able - 1) / able};
        };
        auto& length = task.duration;
        length = {longer(length.low), longer(length.usual), longer(length.high)};
        task.hands.front().length = length.usual;
        planned.finish = planned.start + length.usual;
        planned.pieces.front().length = length.usual;
    }

    /// One for all that somebody still had to do at a task, so that a batch has one cook.
    void relieve(std::size_t i, std::size_t from) {
        const auto& hands = s_.sheet.problem.tasks[i].hands;
        auto& pieces = sheet_.schedule.tasks[i].pieces;
        for (std::size_t k = from; k < std::min(hands.size(), pieces.size()); ++k)
            for (const plan::PersonIndex gone : std::vector(pieces[k].people)) {
                const plan::SkillIndex skill = hands[k].skill;
                if (has(crew_[at(gone)].skills, skill)) continue;
                const auto other = best(i, from, gone, skill);
                if (!other) continue;
                for (std::size_t later = k; later < pieces.size(); ++later)
                    if (later < hands.size() && hands[later].skill == skill)
                        replace(pieces[later].people, gone, *other);
            }
    }

    static std::size_t at(plan::PersonIndex person) { return static_cast<std::size_t>(person); }

    static void replace(std::vector<plan::PersonIndex>& people, plan::PersonIndex gone,
                        plan::PersonIndex other) {
        const auto place = std::find(people.begin(), people.end(), gone);
        if (place == people.end() || std::find(people.begin(), people.end(), other) != people.end())
            return;
        *place = other;
        std::sort(people.begin(), people.end());
    }

    /// Who can, does not lend a hand there already, and has least to do meanwhile.
    std::optional<plan::PersonIndex> best(std::size_t i, std::size_t from, plan::PersonIndex gone,
                                          plan::SkillIndex skill) const {
        const auto& pieces = sheet_.schedule.tasks[i].pieces;
        std::optional<plan::PersonIndex> found;
        std::int64_t least = 0;
        for (std::size_t p = 0; p < crew_.size(); ++p) {
            const auto person = static_cast<plan::PersonIndex>(p);
            if (person == gone || !has(crew_[p].skills, skill)) continue;
            std::int64_t busy = 0;
            bool isThere = false;
            for (std::size_t k = from; k < pieces.size(); ++k) {
                const auto& people = pieces[k].people;
                isThere =
                    isThere || std::find(people.begin(), people.end(), person) != people.end();
                busy += busyWith(person, i, pieces[k]);
            }
            if (isThere || (found && busy >= least)) continue;
            found = person;
            least = busy;
        }
        return found;
    }

    /// How much of a piece's time somebody spends at what else is not over, in half-minutes.
    std::int64_t busyWith(plan::PersonIndex person, std::size_t but,
                          const plan::Piece& piece) const {
        std::int64_t busy = 0;
        for (std::size_t j = 0; j < s_.progress.size(); ++j) {
            if (j == but || s_.progress[j].isOut()) continue;
            for (const plan::Piece& other : sheet_.schedule.tasks[j].pieces) {
                const auto& people = other.people;
                if (std::find(people.begin(), people.end(), person) == people.end()) continue;
                const auto both = std::min(piece.start + piece.length, other.start + other.length) -
                                  std::max(piece.start, other.start);
                busy += std::max(0, both.count());
            }
        }
        return busy;
    }

    const Situation& s_;
    RunSheet& sheet_;
    const std::vector<plan::Person>& crew_;
};

}  // namespace

bool changeCrew(std::vector<journal::CrewChanged::Member>& crew, const journal::CrewChanged& said) {
    auto changed = crew;
    for (const auto& member : said.members) {
        const bool isNamed = !member.person.empty() && !member.name.empty() &&
                             member.name.size() <= event::kNameLetters.high;
        if (!isNamed) return false;
        const auto known = std::find_if(changed.begin(), changed.end(), [&](const auto& one) {
            return one.person == member.person;
        });
        if (known == changed.end())
            changed.push_back(member);
        else
            *known = member;
    }
    if (changed.size() > kMostInCrew) return false;
    crew = std::move(changed);
    return true;
}

std::vector<plan::Person> crewOfThoseThere(const Day& day, const plan::Problem& problem) {
    auto crew = problem.crew;
    for (const auto& member : day.crew) {
        auto skills = placesOf(member, problem);
        const auto known = std::find_if(crew.begin(), crew.end(),
                                        [&](const auto& one) { return one.id == member.person; });
        if (known != crew.end()) {
            known->name = member.name;
            known->skills = std::move(skills);
        } else if (member.isHere) {
            crew.push_back({member.person, member.name, std::move(skills)});
        }
    }
    return crew;
}

RunSheet sheetOfThoseThere(const Situation& situation) {
    RunSheet sheet = situation.sheet;
    sheet.problem.crew = crewOfThoseThere(situation.day, sheet.problem);
    if (sheet.problem.crew != situation.sheet.problem.crew) StandIns(situation, sheet).run();
    return sheet;
}

std::vector<SkillId> skillsWanting(const Situation& situation, const RunSheet& sheet) {
    const plan::Problem& problem = sheet.problem;
    std::set<plan::SkillIndex> wanting;
    const auto actuals = actualsOf(situation);
    for (std::size_t i = 0; i < actuals.size(); ++i) {
        if (situation.progress[i].isOut()) continue;
        const auto& hands = problem.tasks[i].hands;
        for (std::size_t k = firstToCome(situation, i, actuals[i]); k < hands.size(); ++k)
            if (ableTo(problem.crew, hands[k].skill) == 0) wanting.insert(hands[k].skill);
    }
    std::vector<SkillId> skills;
    skills.reserve(wanting.size());
    for (const plan::SkillIndex skill : wanting)
        skills.push_back(problem.skills[static_cast<std::size_t>(skill)].id);
    return skills;
}

}  // namespace cinder::live
