#include "plan/check.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace cinder::plan {

namespace {

/// Where one person is bound for a while.
struct Stay {
    FromBell from;
    FromBell until;
    TaskIndex task;
    StationIndex station;
};

class Judge {
  public:
    Judge(const Problem& problem, const Schedule& schedule)
        : problem_(problem), schedule_(schedule), isSound_(problem.tasks.size(), true) {}

    std::vector<Violation> verdict() {
        if (schedule_.tasks.size() != problem_.tasks.size()) {
            add({Rule::Shape,
                 0,
                 {},
                 {},
                 {},
                 FromBell{0},
                 std::abs(static_cast<std::int64_t>(schedule_.tasks.size()) -
                          static_cast<std::int64_t>(problem_.tasks.size()))});
            return std::move(found_);
        }
        forEachTask([this](TaskIndex i) { judgeShape(i); });
        forEachTask([this](TaskIndex i) { judgeDuration(i); });
        forEachTask([this](TaskIndex i) { judgeWindow(i); });
        for (const Link& link : problem_.links)
            judgeLag(link);
        for (std::size_t r = 0; r < problem_.resources.size(); ++r)
            judgeCapacity(static_cast<ResourceIndex>(r));
        forEachTask([this](TaskIndex i) { judgeSkill(i); });
        for (std::size_t p = 0; p < problem_.crew.size(); ++p)
            judgePerson(static_cast<PersonIndex>(p));
        std::stable_sort(found_.begin(), found_.end(), [](const Violation& a, const Violation& b) {
            return a.rule != b.rule ? a.rule < b.rule : a.task < b.task;
        });
        return std::move(found_);
    }

  private:
    template <class Do>
    void forEachTask(Do&& act) {
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i)
            act(static_cast<TaskIndex>(i));
    }
    const Task& task(TaskIndex i) const { return problem_.tasks[static_cast<std::size_t>(i)]; }
    const PlannedTask& planned(TaskIndex i) const {
        return schedule_.tasks[static_cast<std::size_t>(i)];
    }
    bool isSound(TaskIndex i) const { return isSound_[static_cast<std::size_t>(i)]; }
    void add(Violation violation) { found_.push_back(violation); }

    /// A task whose pieces cannot be read is left out of the rules about people.
    void judgeShape(TaskIndex i) {
        const auto wrong = [&](FromBell at, std::int64_t by) {
            add({Rule::Shape, i, {}, {}, {}, at, by});
            isSound_[static_cast<std::size_t>(i)] = false;
        };
        const auto& pieces = planned(i).pieces;
        const auto& hands = task(i).hands;
        const bool isSplit = task(i).shortestPiece.has_value();
        if (isSplit ? pieces.empty() : pieces.size() != hands.size()) {
            wrong(planned(i).start, std::abs(static_cast<std::int64_t>(pieces.size()) -
                                             static_cast<std::int64_t>(hands.size())));
            return;
        }
        for (std::size_t k = 0; k < pieces.size(); ++k) {
            const auto& people = pieces[k].people;
            const std::int32_t asked = isSplit ? 1 : hands[k].people;
            if (static_cast<std::int32_t>(people.size()) != asked)
                wrong(pieces[k].start, std::abs(static_cast<std::int64_t>(people.size()) - asked));
            for (std::size_t q = 0; q < people.size(); ++q) {
                const bool exists =
                    people[q] >= 0 && people[q] < static_cast<PersonIndex>(problem_.crew.size());
                if (!exists || (q > 0 && people[q] <= people[q - 1])) wrong(pieces[k].start, 1);
            }
            if (isSplit && people != pieces.front().people) wrong(pieces[k].start, 1);
        }
    }

    void judgeDuration(TaskIndex i) {
        const PlannedTask& plan = planned(i);
        const HalfMinutes asked = task(i).duration.usual;
        const auto wrong = [&](FromBell at, HalfMinutes by) {
            if (by.count() != 0)
                add({Rule::Duration, i, {}, {}, {}, at, std::abs(std::int64_t{by.count()})});
        };
        if (!task(i).shortestPiece) {
            wrong(plan.start, plan.finish - plan.start - asked);
            for (std::size_t k = 0; k < std::min(plan.pieces.size(), task(i).hands.size()); ++k) {
                wrong(plan.pieces[k].start,
                      plan.pieces[k].start - plan.start - task(i).hands[k].offset);
                wrong(plan.pieces[k].start, plan.pieces[k].length - task(i).hands[k].length);
            }
            return;
        }
        if (plan.pieces.empty()) return;
        HalfMinutes sum{0};
        FromBell cursor = plan.start;
        for (const Piece& piece : plan.pieces) {
            if (piece.start < cursor) wrong(piece.start, cursor - piece.start);
            const HalfMinutes least = std::min(*task(i).shortestPiece, asked);
            if (piece.length < least) wrong(piece.start, least - piece.length);
            sum += piece.length;
            cursor = piece.start + piece.length;
        }
        wrong(plan.start, sum - asked);
        wrong(plan.start, plan.pieces.front().start - plan.start);
        wrong(plan.finish, cursor - plan.finish);
    }

    void judgeWindow(TaskIndex i) {
        const auto notBefore = [&](std::optional<FromBell> limit) {
            if (limit && planned(i).start < *limit)
                add({Rule::Window,
                     i,
                     {},
                     {},
                     {},
                     planned(i).start,
                     (*limit - planned(i).start).count()});
        };
        notBefore(problem_.arrival);
        notBefore(task(i).earliestStart);
        const auto limit = task(i).latestFinish;
        if (limit && planned(i).finish > *limit)
            add({Rule::Window,
                 i,
                 {},
                 {},
                 {},
                 planned(i).finish,
                 (planned(i).finish - *limit).count()});
    }

    void judgeLag(const Link& link) {
        const auto moment = [this](TaskIndex i, End end) {
            return end == End::Start ? planned(i).start : planned(i).finish;
        };
        const FromBell to = moment(link.to, link.toEnd);
        const HalfMinutes lag = to - moment(link.from, link.fromEnd);
        if (lag < link.minLag)
            add({Rule::Lag, link.from, link.to, {}, {}, to, (link.minLag - lag).count()});
        if (link.maxLag && lag > *link.maxLag)
            add({Rule::Lag, link.from, link.to, {}, {}, to, (lag - *link.maxLag).count()});
    }

    std::int64_t capacityAt(const Resource& resource, FromBell at) const {
        std::int64_t units = resource.capacity;
        std::optional<FromBell> latest;
        for (const CapacityStep& step : resource.steps) {
            if (step.from > at || (latest && step.from < *latest)) continue;
            latest = step.from;
            units = step.units;
        }
        return units;
    }

    void judgeCapacity(ResourceIndex r) {
        const Resource& resource = problem_.resources[static_cast<std::size_t>(r)];
        std::set<FromBell> moments;
        for (const CapacityStep& step : resource.steps)
            moments.insert(step.from);
        for (const PlannedTask& plan : schedule_.tasks)
            moments.insert(plan.start);
        bool wasOver = false;
        for (const FromBell at : moments) {
            std::int64_t used = 0;
            std::optional<TaskIndex> last;
            forEachTask([&](TaskIndex i) {
                if (planned(i).start > at || planned(i).finish <= at) return;
                for (const ResourceUse& use : task(i).uses) {
                    if (use.resource != r || use.units == 0) continue;
                    used += use.units;
                    if (!last || planned(i).start >= planned(*last).start) last = i;
                }
            });
            const std::int64_t over = used - capacityAt(resource, at);
            if (over > 0 && !wasOver) add({Rule::Capacity, last.value_or(0), {}, r, {}, at, over});
            wasOver = over > 0;
        }
    }

    void judgeSkill(TaskIndex i) {
        if (!isSound(i) || task(i).hands.empty()) return;
        for (std::size_t k = 0; k < planned(i).pieces.size(); ++k) {
            const HandsOn& asked = task(i).hands[task(i).shortestPiece ? 0 : k];
            for (const PersonIndex p : planned(i).pieces[k].people) {
                const auto& has = problem_.crew[static_cast<std::size_t>(p)].skills;
                if (std::find(has.begin(), has.end(), asked.skill) == has.end())
                    add({Rule::Skill, i, {}, {}, p, planned(i).pieces[k].start, 1});
            }
        }
    }

    void judgePerson(PersonIndex p) {
        std::vector<Stay> stays;
        forEachTask([&](TaskIndex i) {
            if (!isSound(i)) return;
            for (const Piece& piece : planned(i).pieces) {
                const auto& people = piece.people;
                if (piece.length.count() > 0 &&
                    std::find(people.begin(), people.end(), p) != people.end())
                    stays.push_back({piece.start, piece.start + piece.length, i, task(i).station});
            }
        });
        std::sort(stays.begin(), stays.end(), [](const Stay& a, const Stay& b) {
            return a.from != b.from ? a.from < b.from : a.task < b.task;
        });
        for (std::size_t k = 1; k < stays.size(); ++k) {
            const Stay& a = stays[k - 1];
            const Stay& b = stays[k];
            const HalfMinutes way =
                problem_
                    .walk[static_cast<std::size_t>(a.station)][static_cast<std::size_t>(b.station)];
            if (b.from < a.until)
                add({Rule::DoubleBook, a.task, b.task, {}, p, b.from, (a.until - b.from).count()});
            else if (b.from < a.until + way)
                add({Rule::Walk, a.task, b.task, {}, p, b.from, (a.until + way - b.from).count()});
        }
    }

    const Problem& problem_;
    const Schedule& schedule_;
    std::vector<bool> isSound_;
    std::vector<Violation> found_;
};

}  // namespace

std::vector<Violation> check(const Problem& problem, const Schedule& schedule) {
    return Judge(problem, schedule).verdict();
}

std::vector<Violation> check(const Problem& problem, const Schedule& schedule,
                             const std::vector<bool>& isFixed) {
    auto found = check(problem, schedule);
    if (isFixed.empty()) return found;
    const auto hasHappened = [&](TaskIndex i) { return isFixed[static_cast<std::size_t>(i)]; };
    std::erase_if(found, [&](const Violation& broken) {
        return hasHappened(broken.task) && (!broken.other || hasHappened(*broken.other));
    });
    return found;
}

}  // namespace cinder::plan
