#include "plan/explain.h"

#include <algorithm>

#include "plan/dispatch.h"

namespace cinder::plan {

namespace {

/// `problem` without the tasks that `isLeftOut`, their links and the gaps they leave in the count.
template <class Test>
Problem without(const Problem& problem, Test&& isLeftOut) {
    Problem rest = problem;
    rest.tasks.clear();
    rest.links.clear();
    std::vector<std::optional<TaskIndex>> place(problem.tasks.size());
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
        if (isLeftOut(problem.tasks[i])) continue;
        place[i] = static_cast<TaskIndex>(rest.tasks.size());
        rest.tasks.push_back(problem.tasks[i]);
    }
    for (Link link : problem.links) {
        const auto from = place[static_cast<std::size_t>(link.from)];
        const auto to = place[static_cast<std::size_t>(link.to)];
        if (!from || !to) continue;
        link.from = *from;
        link.to = *to;
        rest.links.push_back(link);
    }
    return rest;
}

class Adviser {
  public:
    Adviser(const Problem& problem, const Search& search, FromBell latest)
        : problem_(problem), search_(search), latest_(latest) {
        problem_.arrival.reset();
        missing_ = problem.arrival.value_or(latest) - latest;
    }

    std::vector<Remedy> run() {
        Remedy remedy;
        // A crew is told, and a client promised, a minute: never half of one.
        remedy.time = missing_ + HalfMinutes{missing_.count() % 2};
        remedy.gain = remedy.time;
        remedy.isEnough = true;
        for (const auto kind : {Remedy::Kind::EarlierArrival, Remedy::Kind::LaterServe}) {
            remedy.kind = kind;
            remedies_.push_back(remedy);
        }
        tryPeople();
        for (std::size_t r = 0; r < problem_.resources.size(); ++r)
            tryResource(static_cast<ResourceIndex>(r));
        tryDishes();
        std::stable_sort(remedies_.begin(), remedies_.end(), [](const Remedy& a, const Remedy& b) {
            if (a.isEnough != b.isEnough) return a.isEnough;
            return a.kind != b.kind ? a.kind < b.kind : a.gain > b.gain;
        });
        return std::move(remedies_);
    }

  private:
    /// Fills in what the change brings; false when it brings nothing.
    bool weigh(const Problem& changed, Remedy& remedy) const {
        const auto plan = makePlan(changed, search_);
        if (!plan) return false;
        remedy.gain = plan->latestArrival - latest_;
        remedy.isEnough = remedy.gain >= missing_;
        return remedy.gain.count() > 0;
    }

    void tryPeople() {
        std::vector<std::vector<SkillIndex>> sets;
        for (std::size_t s = 0; s < problem_.skills.size(); ++s)
            sets.push_back({static_cast<SkillIndex>(s)});
        if (sets.size() > 1) {
            sets.emplace_back();
            for (std::size_t s = 0; s < problem_.skills.size(); ++s)
                sets.back().push_back(static_cast<SkillIndex>(s));
        }
        for (const auto& skills : sets) {
            Problem changed = problem_;
            changed.crew.push_back({PersonId("one more"), "", skills});
            Remedy remedy;
            remedy.kind = Remedy::Kind::OnePersonMore;
            remedy.skills = skills;
            const bool isNeeded = skills.size() == 1 || !hasEnough(Remedy::Kind::OnePersonMore);
            if (isNeeded && weigh(changed, remedy)) remedies_.push_back(remedy);
        }
    }

    bool hasEnough(Remedy::Kind kind) const {
        return std::any_of(remedies_.begin(), remedies_.end(), [&](const Remedy& remedy) {
            return remedy.kind == kind && remedy.isEnough;
        });
    }

    /// The smallest tenth of a resource that is enough, up to twice what there is.
    void tryResource(ResourceIndex r) {
        const std::int32_t now = problem_.resources[static_cast<std::size_t>(r)].capacity;
        const std::int32_t step = std::max(1, now / 10);
        const auto with = [&](std::int32_t steps) {
            Remedy remedy;
            remedy.kind = Remedy::Kind::MoreOfResource;
            remedy.resource = r;
            remedy.units = steps * step;
            Problem changed = problem_;
            Resource& resource = changed.resources[static_cast<std::size_t>(r)];
            resource.capacity += remedy.units;
            for (CapacityStep& capacity : resource.steps)
                capacity.units += remedy.units;
            return std::pair(weigh(changed, remedy), remedy);
        };
        std::int32_t high = std::max(1, now / step);
        auto [helps, best] = with(high);
        if (!helps) return;
        std::int32_t low = 0;
        while (best.isEnough && high - low > 1) {
            const std::int32_t middle = (low + high) / 2;
            const auto [less, remedy] = with(middle);
            if (less && remedy.isEnough) {
                best = remedy;
                high = middle;
            } else {
                low = middle;
            }
        }
        remedies_.push_back(best);
    }

    void tryDishes() {
        std::vector<DishId> dishes;
        for (const Task& task : problem_.tasks)
            if (task.dish && std::find(dishes.begin(), dishes.end(), *task.dish) == dishes.end())
                dishes.push_back(*task.dish);
        for (const DishId& dish : dishes) {
            const auto isCold = [&](const Task& task) {
                return task.dish == dish && task.kind == TaskKind::Prep;
            };
            Remedy remedy;
            remedy.dish = dish;
            remedy.kind = Remedy::Kind::PrepareAhead;
            const bool hasColdWork =
                std::any_of(problem_.tasks.begin(), problem_.tasks.end(), isCold);
            if (hasColdWork && weigh(without(problem_, isCold), remedy))
                remedies_.push_back(remedy);
            remedy.kind = Remedy::Kind::DropDish;
            const auto isOfDish = [&](const Task& task) { return task.dish == dish; };
            if (weigh(without(problem_, isOfDish), remedy)) remedies_.push_back(remedy);
        }
    }

    Problem problem_;
    const Search& search_;
    FromBell latest_;
    HalfMinutes missing_{0};
    std::vector<Remedy> remedies_;
};

void gradeSlack(const Problem& problem, Explanation& explanation) {
    const Dispatch dispatch(problem, explanation.plan.schedule);
    const Duration arrival = firstStart(explanation.plan.schedule);
    const auto day = dispatch.project({}, arrival);
    const auto spread = [&](std::size_t i) {
        return problem.tasks[i].duration.high - problem.tasks[i].duration.usual;
    };
    for (std::size_t i = 0; i < day.size(); ++i) {
        explanation.slack.push_back(day[i].slack);
        if (!day[i].isCritical) continue;
        if (!explanation.weakest ||
            spread(i) > spread(static_cast<std::size_t>(*explanation.weakest)))
            explanation.weakest = static_cast<TaskIndex>(i);
    }
    explanation.criticalChain = dispatch.criticalChain(day);
}

std::string inMinutes(HalfMinutes span) {
    return std::to_string(span.count() / 2) + (span.count() % 2 != 0 ? ".5 min" : " min");
}

}  // namespace

Result<Explanation, NoPlan> explain(const Problem& problem, const Search& search) {
    Problem open = problem;
    open.arrival.reset();
    auto plan = makePlan(open, search);
    if (!plan) return fail(std::move(plan.error()));
    Explanation explanation;
    explanation.plan = std::move(*plan);
    explanation.missing =
        problem.arrival.value_or(explanation.plan.latestArrival) - explanation.plan.latestArrival;
    if (explanation.missing.count() > 0) {
        explanation.remedies = Adviser(problem, search, explanation.plan.latestArrival).run();
    } else if (problem.arrival) {
        if (auto kept = makePlan(problem, search)) explanation.plan = std::move(*kept);
    }
    gradeSlack(problem, explanation);
    return explanation;
}

std::string describe(const Problem& problem, const Remedy& remedy) {
    std::string text;
    switch (remedy.kind) {
        case Remedy::Kind::EarlierArrival:
            return "come " + inMinutes(remedy.time) + " earlier";
        case Remedy::Kind::LaterServe:
            return "serve " + inMinutes(remedy.time) + " later";
        case Remedy::Kind::PrepareAhead:
            text = "do the cold work on \"" + remedy.dish->text() + "\" before leaving";
            break;
        case Remedy::Kind::DropDish:
            text = "leave out \"" + remedy.dish->text() + "\"";
            break;
        case Remedy::Kind::MoreOfResource:
            text = "have " + std::to_string(remedy.units) + " units more of \"" +
                   problem.resources[static_cast<std::size_t>(*remedy.resource)].id.text() + "\"";
            break;
        case Remedy::Kind::OnePersonMore:
            text = "bring one person more who can do";
            for (const SkillIndex skill : remedy.skills)
                text += " \"" + problem.skills[static_cast<std::size_t>(skill)].id.text() + "\"";
            break;
    }
    return text + ": gains " + inMinutes(remedy.gain) + (remedy.isEnough ? ", enough" : "");
}

}  // namespace cinder::plan
