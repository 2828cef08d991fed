#include <algorithm>

#include <catch2/catch.hpp>

#include "base/rng.h"
#include "crowded_kitchen.h"
#include "orchard.h"
#include "plan/check.h"
#include "plan/planner.h"
#include "plan/search/order_rules.h"
#include "plan/search/window_search.h"

namespace cinder::plan::search {

namespace {

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

Row<Member> byStart(const Window& window, const Draft& draft) {
    Row<Member> order = window.ranked();
    std::stable_sort(order.begin(), order.end(),
                     [&](Member a, Member b) { return draft.start[a] < draft.start[b]; });
    return order;
}

/// Swaps neighbours that no link holds together, at so many places drawn at random.
void swapNeighbours(Rng& rng, const Project& project, Sequence& sequence, int tries) {
    for (int n = 0; n < tries; ++n) {
        const auto k = static_cast<std::int32_t>(
            rng.below(static_cast<std::uint32_t>(sequence.order.size() - 1)));
        Member& one = sequence.order[k];
        Member& other = sequence.order[k + 1];
        const Range into = project.arcsInto[other];
        const bool isLinked =
            std::any_of(project.arcs.from(into.begin), project.arcs.from(into.end),
                        [&](const Arc& arc) { return arc.from == one; });
        if (!isLinked) std::swap(one, other);
    }
}

}  // namespace

TEST_CASE("a walk through windows shortens a schedule and breaks no rule") {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Ground ground(test::crowdedKitchen(seed));
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
    const Ground ground(test::crowdedKitchen(7));
    Draft one = ground.draft;
    Draft other = ground.draft;
    WindowSearch(*ground.arena, 3).run({200, 0, {}}, one);
    WindowSearch(*ground.arena, 3).run({200, 0, {}}, other);
    CHECK(one == other);
}

TEST_CASE("a walk through windows ends at a bound and when it is told to") {
    const Ground ground(test::crowdedKitchen(8));
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
        const Ground ground(test::crowdedKitchen(seed));
        const Project& backward = ground.arena->backward;
        Window window(backward, ground.arena->forward);
        Window fresh(backward, ground.arena->forward);
        Generator maker(backward, nullptr);
        // A short schedule, which no window shortens at once.
        Draft draft = ground.draft;
        WindowSearch(*ground.arena, seed).run({300, 0, {}}, draft);
        Sequence sequence = ground.sequence;
        // Passes by start until nothing moves any more: then another one repeats the schedule.
        for (Draft before(backward); before.start != draft.start;) {
            before = draft;
            sequence.order = byStart(window, draft);
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
            Draft other = draft;
            for (std::int32_t place = range.begin; place < range.end; ++place) {
                const Member j = whole.order[place];
                other.start[j] = laid[j];
                other.finish[j] = laid[j] + backward.duration[j];
            }
            REQUIRE(fresh.open(whole.order, other, range));
            REQUIRE(window.clash() == fresh.clash());
            for (std::int32_t place = 0; place < range.end; ++place) {
                const Member j = whole.order[place];
                INFO("kitchen " << seed << ", move " << k << ", place " << place);
                REQUIRE(laid[j] == pass.start[j]);
                moved += pass.start[j] != draft.start[j] ? 1 : 0;
            }
        }
    }
    CHECK(moved > 1000);
}

TEST_CASE("a pass held against the last one lays what a pass alone would lay") {
    for (std::uint64_t seed = 50; seed < 60; ++seed) {
        const Ground ground(test::crowdedKitchen(seed));
        const Project& project = ground.arena->backward;
        Generator alone(project, nullptr);
        Generator remembering(project, nullptr);
        remembering.rememberPasses();
        Sequence sequence = ground.sequence;
        Rng rng(seed);
        Draft draft(project);
        Draft again(project);
        for (int k = 0; k < 200; ++k) {
            INFO("kitchen " << seed << ", pass " << k);
            // Every fifth pass is cut short where it would be longer than the last one.
            const Slot longest = k % 5 == 4 ? draft.makespan - 1 : kNoSlot;
            Draft whole(project);
            const bool isWhole = alone.generate(sequence, 0, whole, longest);
            REQUIRE(remembering.generate(sequence, 0, again, longest) == isWhole);
            if (isWhole) {
                REQUIRE(again.start == whole.start);
                draft = whole;
            }
            swapNeighbours(rng, project, sequence, k % 7 == 0 ? 500 : 2);
        }
        CHECK(remembering.placements() < alone.placements());
    }
}

TEST_CASE("a pass held against one of others lays what a pass alone would lay") {
    const Ground ground(test::crowdedKitchen(61));
    const Project& project = ground.arena->backward;
    FormerPass former(project);
    Rng rng(7);
    std::int64_t laid = 0;
    for (int k = 0; k < 300; ++k) {
        Timeline timeline = project.base;
        former.begin();
        for (const Member j : ground.sequence.order) {
            if (rng.below(20) == 0) continue;
            const std::uint64_t* const demand = project.demand.from(j * timeline.lanes().words);
            // Links are the caller's: here a start of its own, a little other each time.
            const Slot ready = ground.draft.start[j] / 2 + static_cast<Slot>(rng.below(2));
            const Slot length = project.duration[j];
            const Slot start = former.lay(j, ready, timeline);
            REQUIRE(start == timeline.earliestFit(demand, ready, length));
            timeline.occupy(demand, start, start + length);
            ++laid;
        }
        former.end();
    }
    CHECK(former.sought() < laid);
}

TEST_CASE("a walk through windows of tasks that cannot be moved ends all the same") {
    Problem problem = test::emptyKitchen(0);
    problem.resources = {{ResourceId("oven"), LocalText("Oven"), 1, {}}};
    for (int i = 0; i < 3; ++i) {
        problem.tasks.push_back(test::standing(std::to_string(i), HalfMinutes{4}));
        problem.tasks.back().uses = {{0, 1}};
        if (i > 0) problem.links.push_back(test::after(i - 1, i));
    }
    const Ground ground(problem);
    Draft draft = ground.draft;
    WindowSearch search(*ground.arena, 1);
    constexpr std::int64_t kSchedules = 500;
    search.run({kSchedules, 0, {}}, draft);
    CHECK(search.passes() == kSchedules);
    CHECK(draft.makespan == ground.draft.makespan);
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
    const Ground ground(test::crowdedKitchen(10));
    const Project& backward = ground.arena->backward;
    Draft draft = ground.draft;
    WindowSearch(*ground.arena, 3).run({300, 0, {}}, draft);
    const auto placementsWith = [&](std::int32_t patience) {
        Window window(backward, ground.arena->forward);
        REQUIRE(window.open(byStart(window, draft), draft, {40, 75}));
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
    const Ground ground(test::crowdedKitchen(9));
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
    const Problem problem = test::crowdedKitchen(11);
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
