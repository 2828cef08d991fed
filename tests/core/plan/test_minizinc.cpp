#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "base/rng.h"
#include "folder.h"
#include "orchard.h"
#include "plan/check.h"
#include "plan/planner.h"

// The planner against a general-purpose constraint solver, MiniZinc with Gecode: small days with
// every feature that decides an arrival are written out as a model of their own, sharing nothing
// with the search, and both must find the same latest arrival.

using namespace cinder;
using namespace cinder::plan;
using namespace cinder::plan::test;

namespace {

int between(Rng& rng, int low, int high) {
    return low + static_cast<int>(rng.below(static_cast<std::uint32_t>(high - low + 1)));
}

/// Six tasks for two or three people: skills, walks, touches, interruption, links with maximum
/// lags, windows and a small grate. In half-minutes, few of them.
Problem smallDay(std::uint64_t seed) {
    Rng rng(seed);
    Problem problem;
    for (int s = 0; s < 2; ++s)
        problem.stations.push_back({StationId(std::to_string(s)), LocalText("Station")});
    const HalfMinutes way{between(rng, 0, 2)};
    problem.walk = {{HalfMinutes{0}, way}, {way, HalfMinutes{0}}};
    problem.skills = {{SkillId("a"), LocalText("A")}, {SkillId("b"), LocalText("B")}};
    const int people = between(rng, 2, 3);
    for (int p = 0; p < people; ++p)
        problem.crew.push_back({PersonId(std::to_string(p)), std::to_string(p),
                                p == 0   ? std::vector<SkillIndex>{0, 1}
                                : p == 1 ? std::vector<SkillIndex>{0}
                                         : std::vector<SkillIndex>{1}});
    problem.resources = {{ResourceId("grate"), LocalText("Grate"), 3, {}}};
    for (int i = 0; i < 6; ++i) {
        const int length = between(rng, 3, 8);
        const int kind = between(rng, 0, 3);
        Task task;
        task.id = TaskId(std::to_string(i));
        task.duration = {HalfMinutes{length}, HalfMinutes{length}, HalfMinutes{length}};
        task.station = between(rng, 0, 1);
        task.latestFinish = FromBell{between(rng, 0, 3) == 0 ? -between(rng, 1, 4) : 0};
        const SkillIndex skill = between(rng, 0, 1);
        const auto hold = [&](int offset, int held, int count) {
            task.hands.push_back(
                {HalfMinutes{offset}, HalfMinutes{held}, skill, count, HandsOn::Act::Work});
        };
        if (kind == 0) hold(0, length, between(rng, 0, 3) == 0 ? 2 : 1);
        if (kind == 1) {
            hold(0, 1, 1);
            hold(length - 1, 1, 1);
        }
        if (kind == 2) {
            hold(0, length, 1);
            if (length >= 4) task.shortestPiece = HalfMinutes{2};
        }
        if (kind != 2) task.uses = {{0, between(rng, 1, 2)}};
        problem.tasks.push_back(task);
        if (i == 0 || between(rng, 0, 2) == 0) continue;
        Link link{between(rng, 0, i - 1), i, End::Finish, End::Start, HalfMinutes{0}, {}};
        link.minLag = HalfMinutes{between(rng, 0, 2)};
        if (between(rng, 0, 1) == 0) link.maxLag = link.minLag + HalfMinutes{between(rng, 0, 4)};
        problem.links.push_back(link);
    }
    return problem;
}

/// One stretch of work as a name in the model.
struct Stretch {
    std::string start;
    std::string length;
    std::string who;
    StationIndex station;
};

class Model {
  public:
    explicit Model(const Problem& problem) : problem_(problem) {
        int horizon = 0;
        for (const Task& task : problem.tasks)
            horizon += task.duration.usual.count() + 8;
        out_ << "set of int: day = -" << horizon << "..0;\n";
        for (std::size_t i = 0; i < problem.tasks.size(); ++i)
            addTask(i);
        addLinks();
        addGrate();
        addPeople();
        out_ << "var day: arrival;\n";
        for (std::size_t i = 0; i < problem.tasks.size(); ++i)
            out_ << "constraint arrival <= s" << i << ";\n";
        out_ << "solve maximize arrival;\noutput [\"arrival \", show(arrival), \"\\n\"];\n";
    }
    [[nodiscard]] std::string text() const { return out_.str(); }

  private:
    void addTask(std::size_t i) {
        const Task& task = problem_.tasks[i];
        const int length = task.duration.usual.count();
        out_ << "var day: s" << i << ";\nvar day: e" << i << ";\nconstraint e" << i
             << " <= " << task.latestFinish->count() << ";\n";
        if (task.shortestPiece) {
            addPieces(i);
            return;
        }
        out_ << "constraint e" << i << " = s" << i << " + " << length << ";\n";
        for (std::size_t k = 0; k < task.hands.size(); ++k)
            addStretch(
                "s" + std::to_string(i) + " + " + std::to_string(task.hands[k].offset.count()),
                std::to_string(task.hands[k].length.count()), task.hands[k],
                "w" + std::to_string(i) + "_" + std::to_string(k), task.station);
    }

    /// The same person for all pieces; unused ones have no length and lie at the end.
    void addPieces(std::size_t i) {
        const Task& task = problem_.tasks[i];
        const int length = task.duration.usual.count();
        const int shortest = task.shortestPiece->count();
        const int most = length / shortest;
        const std::string who = "w" + std::to_string(i) + "_0";
        std::string sum;
        std::string before;
        for (int k = 0; k < most; ++k) {
            const std::string name = std::to_string(i) + "_" + std::to_string(k);
            out_ << "var day: p" << name << ";\nvar 0.." << length << ": l" << name
                 << ";\nconstraint l" << name << " = 0 \\/ l" << name << " >= " << shortest
                 << ";\n";
            if (k == 0)
                out_ << "constraint p" << name << " = s" << i << ";\n";
            else
                out_ << "constraint p" << name << " >= p" << before << " + l" << before
                     << ";\nconstraint l" << before << " = 0 -> l" << name << " = 0;\nconstraint l"
                     << name << " = 0 -> p" << name << " = p" << before << " + l" << before
                     << ";\n";
            addStretch("p" + name, "l" + name, task.hands.front(), k == 0 ? who : "", task.station);
            stretches_.back().who = who;
            sum += (k == 0 ? "l" : " + l") + name;
            before = name;
        }
        out_ << "constraint " << sum << " = " << length << ";\nconstraint e" << i << " = p"
             << before << " + l" << before << ";\n";
    }

    /// Declares who does it unless `who` is empty.
    void addStretch(const std::string& start, const std::string& length, const HandsOn& hands,
                    const std::string& who, StationIndex station) {
        if (!who.empty()) {
            out_ << "array[1.." << problem_.crew.size() << "] of var bool: " << who
                 << ";\nconstraint sum(" << who << ") = " << hands.people << ";\n";
            for (std::size_t p = 0; p < problem_.crew.size(); ++p) {
                const auto& skills = problem_.crew[p].skills;
                if (std::find(skills.begin(), skills.end(), hands.skill) == skills.end())
                    out_ << "constraint not " << who << "[" << p + 1 << "];\n";
            }
        }
        stretches_.push_back({start, length, who, station});
    }

    void addLinks() {
        for (const Link& link : problem_.links) {
            out_ << "constraint s" << link.to << " >= e" << link.from << " + "
                 << link.minLag.count() << ";\n";
            if (link.maxLag)
                out_ << "constraint s" << link.to << " <= e" << link.from << " + "
                     << link.maxLag->count() << ";\n";
        }
    }

    /// Enough grate whenever something is put on it; in the language's own words, because the
    /// library of constraints differs between packages.
    void addGrate() {
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i) {
            if (problem_.tasks[i].uses.empty()) continue;
            out_ << "constraint 0";
            for (std::size_t j = 0; j < problem_.tasks.size(); ++j)
                if (!problem_.tasks[j].uses.empty())
                    out_ << " + " << problem_.tasks[j].uses.front().units << " * bool2int(s" << j
                         << " <= s" << i << " /\\ s" << i << " < e" << j << ")";
            out_ << " <= " << problem_.resources.front().capacity << ";\n";
        }
    }

    void addPeople() {
        for (std::size_t x = 0; x < stretches_.size(); ++x)
            for (std::size_t y = x + 1; y < stretches_.size(); ++y) {
                const Stretch& a = stretches_[x];
                const Stretch& b = stretches_[y];
                if (a.who == b.who) continue;  // pieces of one task follow each other anyway
                const int way = problem_
                                    .walk[static_cast<std::size_t>(a.station)]
                                         [static_cast<std::size_t>(b.station)]
                                    .count();
                out_ << "constraint forall(p in 1.." << problem_.crew.size() << ")((" << a.who
                     << "[p] /\\ " << b.who << "[p] /\\ " << a.length << " > 0 /\\ " << b.length
                     << " > 0) -> (" << b.start << " >= " << a.start << " + " << a.length << " + "
                     << way << " \\/ " << a.start << " >= " << b.start << " + " << b.length << " + "
                     << way << "));\n";
            }
    }

    const Problem& problem_;
    std::ostringstream out_;
    std::vector<Stretch> stretches_;
};

struct Answer {
    bool isComplete = false;  ///< proved best, or proved impossible
    std::optional<int> arrival;
};

std::string outputOf(const std::string& command) {
    std::string text;
    if (FILE* pipe = popen(command.c_str(), "r")) {
        std::array<char, 256> line{};
        while (std::fgets(line.data(), static_cast<int>(line.size()), pipe) != nullptr)
            text += line.data();
        pclose(pipe);
    }
    return text;
}

Answer solvedByGecode(const Problem& problem, const std::filesystem::path& file) {
    std::ofstream(file) << Model(problem).text();
    const std::string text =
        outputOf("minizinc --solver gecode --time-limit 20000 '" + file.string() + "' 2>&1");
    UNSCOPED_INFO(text);
    Answer answer;
    answer.isComplete = text.find("==========") != std::string::npos ||
                        text.find("UNSATISFIABLE") != std::string::npos;
    if (const auto at = text.rfind("arrival "); at != std::string::npos)
        answer.arrival = std::atoi(text.c_str() + at + 8);
    return answer;
}

}  // namespace

TEST_CASE("twenty small days have the optimum that a general-purpose solver finds") {
    if (outputOf("minizinc --version 2>/dev/null").find("MiniZinc") == std::string::npos) {
        WARN("skipped: minizinc is not installed");
        return;
    }
    const samples::Folder folder;
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Problem problem = smallDay(seed);
        const Answer answer =
            solvedByGecode(problem, folder.path() / ("day-" + std::to_string(seed) + ".mzn"));
        if (!answer.isComplete) {
            WARN("day " << seed << " not compared: not solved within 20 s");
            continue;
        }
        INFO("day " << seed);
        ++compared;
        const auto plan = makePlan(problem);
        REQUIRE(plan.has_value() == answer.arrival.has_value());
        if (!plan) continue;
        CHECK(check(problem, plan->schedule).empty());
        CHECK(plan->latestArrival.count() == *answer.arrival);
        CHECK(plan->arrivalBound.count() >= *answer.arrival);
    }
    CHECK(compared >= 15);
}
