#include <algorithm>

#include <catch2/catch.hpp>

#include "base/rng.h"
#include "orchard.h"
#include "plan/check.h"
#include "plan/planner.h"
#include "plan/search/order_rules.h"
#include "plan/search/window_search.h"

namespace cinder::plan::search {

namespace {

/// A hundred tasks without hands that share two resources; each waits for up to two earlier ones.
Problem crowdedKitchen(std::uint64_t seed) {
    Rng rng(seed);
    const auto draw = [&](int low, int high) {
        return low + static_cast<int>(rng.below(static_cast<std::uint32_t>(high - low + 1)));
    };
    Problem problem = test::emptyKitchen(0);
    problem.resources = {{ResourceId("oven"), LocalText("Oven"), 9, {}},
                         {ResourceId("bench"), LocalText("Bench"), 12, {}}};
    constexpr int kTasks = 100;
    for (int i = 0; i < kTasks; ++i) {
        problem.tasks.push_back(test::standing(std::to_string(i), HalfMinutes{draw(1, 20)}));
        problem.tasks.back().uses = {{0, draw(0, 6)}, {1, draw(1, 8)}};
        for (int k = draw(0, 2); k > 0 && i > 0; --k)
            problem.links.push_back(test::after(draw(std::max(0, i - 15), i - 1), i));
    }
    return problem;
}

/// All tasks are members; `draft` is what a random order comes to.
struct Ground {
    explicit Ground(const Problem& given) : problem(given) {
        division.isMember.assign(problem.tasks.size(), true);
        division.fixed.tasks.resize(problem.tasks.size());
        arena = makeArena(problem, division);
        REQUIRE(arena.has_value());
        REQUIRE(arena->backward.isPlain);
        sequence.order.assign(arena->backward.size(), 0);
        Rng rng(1);
        OrderRules(arena->backward, nullptr, arena->forward.horizon).sample(rng, 0.0, sequence);
        draft = Draft(arena->backward);
        REQUIRE(Generator(arena->backward, nullptr).generate(sequence, 0, draft));
    }

    Problem problem;
    Division division;
    std::optional<Arena> arena;
    Sequence sequence;
    Draft draft;
};

}  // namespace

TEST_CASE("a walk through windows shortens a schedule and breaks no rule") {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Ground ground(crowdedKitchen(seed));
        const Project& backward = ground.arena->backward;
        Draft draft = ground.draft;
        WindowSearch search(*ground.arena, seed);
        constexpr std::int64_t kSchedules = 400;
        search.run({kSchedules, 0, {}}, draft);
        // The last window may open, make one move and be followed by passes both ways.
        CHECK(search.passes() >= kSchedules);
        CHECK(search.passes() <= kSchedules + 5);
        CHECK(draft.makespan < ground.draft.makespan);
        const Schedule schedule =
            toSchedule(ground.problem, backward, draft, ground.division.fixed);
        for (const Violation& violation : check(ground.problem, schedule))
            FAIL("kitchen " << seed << ": " << describe(ground.problem, violation));
    }
}

TEST_CASE("a walk through windows is the same for a seed") {
    const Ground ground(crowdedKitchen(7));
    Draft one = ground.draft;
    Draft other = ground.draft;
    WindowSearch(*ground.arena, 3).run({200, 0, {}}, one);
    WindowSearch(*ground.arena, 3).run({200, 0, {}}, other);
    CHECK(one == other);
}

TEST_CASE("a walk through windows ends at a bound and when it is told to") {
    const Ground ground(crowdedKitchen(8));
    Draft draft = ground.draft;
    WindowSearch search(*ground.arena, 3);
    search.run({1000, draft.makespan, {}}, draft);
    CHECK(search.passes() <= 1);
    search.run({1000, 0, [] { return true; }}, draft);
    CHECK(search.passes() <= 2);
    CHECK(draft == ground.draft);
}

TEST_CASE("a window that keeps the starts nothing has touched lays what a pass would lay") {
    int moved = 0;
    for (std::uint64_t seed = 20; seed < 40; ++seed) {
        const Ground ground(crowdedKitchen(seed));
        const Project& backward = ground.arena->backward;
        Window window(backward, ground.arena->forward);
        Generator maker(backward, nullptr);
        Draft draft = ground.draft;
        Sequence sequence = ground.sequence;
        // Passes by start until nothing moves any more: then another one repeats the schedule.
        for (Draft before(backward); before.start != draft.start;) {
            before = draft;
            std::sort(sequence.order.begin(), sequence.order.end(), [&](Member a, Member b) {
                return draft.start[a] != draft.start[b] ? draft.start[a] < draft.start[b]
                                                        : window.rank()[a] < window.rank()[b];
            });
            REQUIRE(maker.generate(sequence, 0, draft));
        }
        const Range range{30, 70};
        if (!window.open(sequence.order, draft, range)) continue;
        Rng rng(seed);
        for (int k = 0; k < 50 && !window.isShorter(); ++k) {
            window.improve(rng, 1, 0);
            Row<Slot> laid = draft.start;
            window.readStarts(laid);
            Sequence whole = sequence;
            window.readOrder(whole.order);
            Draft pass(backward);
            REQUIRE(maker.generate(whole, 0, pass));
            for (std::int32_t place = 0; place < range.end; ++place) {
                const Member j = whole.order[place];
                INFO("kitchen " << seed << ", move " << k << ", place " << place);
                REQUIRE(laid[j] == pass.start[j]);
                moved += pass.start[j] != draft.start[j] ? 1 : 0;
            }
        }
    }
    CHECK(moved > 0);
}

TEST_CASE("a pass keeps what is known and finds the same for the rest") {
    const Ground ground(crowdedKitchen(12));
    Generator maker(ground.arena->backward, nullptr);
    constexpr std::int32_t kKnown = 60;
    Draft draft = ground.draft;
    for (std::int32_t k = kKnown; k < ground.sequence.order.size(); ++k)
        draft.start[ground.sequence.order[k]] = draft.finish[ground.sequence.order[k]] = 0;
    REQUIRE(maker.generate(ground.sequence, 0, draft, kNoSlot, kKnown));
    CHECK(draft == ground.draft);
    CHECK(maker.placements() == ground.sequence.order.size() - kKnown);
}

TEST_CASE("a set of slots knows which of them are in it") {
    Rng rng(5);
    constexpr Slot kHorizon = 300;
    const auto draw = [&](Slot from) {
        return from + static_cast<Slot>(rng.below(static_cast<std::uint32_t>(kHorizon - from)));
    };
    SlotSet set(kHorizon);
    for (int round = 0; round < 50; ++round) {
        set.clear();
        std::vector<bool> wanted(kHorizon, false);
        for (int k = 0; k < 4; ++k) {
            const Slot from = draw(0);
            const Slot until = std::min(kHorizon, from + draw(0) / 4);
            set.add(from, until);
            for (Slot t = from; t < until; ++t)
                wanted[static_cast<std::size_t>(t)] = true;
            const Slot low = draw(0);
            const Slot high = draw(low);
            const auto slot = [&](Slot t) { return wanted.begin() + t; };
            CHECK(set.meets(low, high) == (std::find(slot(low), slot(high), true) != slot(high)));
        }
    }
}

TEST_CASE("a window never adds to a clash, and without patience it is soon left") {
    const Ground ground(crowdedKitchen(10));
    const Project& backward = ground.arena->backward;
    Draft draft = ground.draft;
    WindowSearch(*ground.arena, 3).run({300, 0, {}}, draft);
    Row<Member> order(backward.size());
    const auto placementsWith = [&](std::int32_t patience) {
        Window window(backward, ground.arena->forward);
        for (Member j = 0; j < backward.size(); ++j)
            order[j] = j;
        std::sort(order.begin(), order.end(), [&](Member a, Member b) {
            return draft.start[a] != draft.start[b] ? draft.start[a] < draft.start[b]
                                                    : window.rank()[a] < window.rank()[b];
        });
        REQUIRE(window.open(order, draft, {40, 75}));
        std::int64_t clash = window.clash();
        Rng rng(1);
        for (int k = 0; k < 20 && !window.isShorter(); ++k) {
            window.improve(rng, 10, patience);
            CHECK(window.clash() <= clash);
            clash = window.clash();
        }
        const std::int64_t before = window.placements();
        window.improve(rng, 10'000, patience);
        return window.placements() - before;
    };
    CHECK(placementsWith(2) < placementsWith(200));
    CHECK(placementsWith(200) < 10'000);
}

TEST_CASE("a pass is cut short when it is bound to be too long") {
    const Ground ground(crowdedKitchen(9));
    Generator maker(ground.arena->backward, nullptr);
    const Draft& whole = ground.draft;
    Draft same(ground.arena->backward);
    CHECK(maker.generate(ground.sequence, 0, same, whole.makespan));
    CHECK(same == whole);
    CHECK(maker.placements() == ground.arena->backward.size());
    const std::int64_t before = maker.placements();
    CHECK_FALSE(maker.generate(ground.sequence, 0, same, whole.makespan - 1));
    CHECK(maker.placements() - before <= ground.arena->backward.size());
    const std::int64_t cut = maker.placements();
    CHECK_FALSE(maker.generate(ground.sequence, 0, same, whole.makespan / 4));
    CHECK(maker.placements() - cut < ground.arena->backward.size());
}

TEST_CASE("a large plan without hands keeps to its schedules and to the rules") {
    const Problem problem = crowdedKitchen(11);
    Search search;
    search.budget.exactNodes = 0;
    search.budget.schedules = 1;
    const auto first = makePlan(problem, search);
    search.budget.schedules = 2000;
    const auto plan = makePlan(problem, search);
    REQUIRE(first.has_value());
    REQUIRE(plan.has_value());
    CHECK(check(problem, plan->schedule).empty());
    CHECK(plan->latestArrival > first->latestArrival);
    CHECK(plan->latestArrival <= plan->arrivalBound);
    CHECK(plan->schedulesTried <= search.budget.schedules + 10);
}

}  // namespace cinder::plan::search
