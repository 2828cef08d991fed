#include "plan/search/evolution.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

namespace cinder::plan::search {

namespace {

constexpr std::int64_t kHopeless = std::numeric_limits<std::int64_t>::max();

Direction directionOf(std::size_t index) {
    return index == 0 ? Direction::Backward : Direction::Forward;
}

}  // namespace

Evolution::Evolution(const Problem& problem, const Arena& arena, std::uint64_t seed)
    : problem_(problem), arena_(arena), rng_(seed) {
    for (const Direction d : {Direction::Backward, Direction::Forward}) {
        makers_.emplace_back(arena.project(d), arena.distances(d));
        rules_.emplace_back(arena.project(d), arena.distances(d),
                            std::max(arena.backward.horizon, arena.forward.horizon));
    }
    const std::int32_t members = arena.backward.size();
    sequence_.order.assign(members, 0);
    sequence_.taste.assign(members, 0);
    child_ = {Draft(arena.backward), sequence_.taste, kHopeless};
    spare_ = child_;
    mirrored_ = child_;
    best_ = child_.draft;
    for (Member j = 0; j < members; ++j) {
        Row<std::uint8_t> able;
        const Range range = arena.backward.segmentsOf[j];
        if (range.end > range.begin)
            for (People rest = arena.backward.segments[range.begin].skilled; rest != 0;
                 rest &= rest - 1)
                able.add(static_cast<std::uint8_t>(std::countr_zero(rest) + 1));
        skilledByMember_.push_back(std::move(able));
    }
}

std::int64_t Evolution::passes() const {
    return (makers_[kBackward].placements() + makers_[kForward].placements()) /
           std::max(1, arena_.backward.size());
}

bool Evolution::hasEnded(const Limits& limits) const {
    if (passes() >= limits.schedules) return true;
    if (hasBest_ && best_.lateness == 0 && best_.makespan <= limits.bound) return true;
    return limits.endNow && limits.endNow();
}

/// Forward, a problem that nothing ties to the clock may lie anywhere; with windows and a bell, the
/// crew is there when the best plan so far says.
Slot Evolution::floorOf(std::size_t direction) const {
    if (direction == kBackward) return 0;
    if (arena_.forward.isSlidable || !hasBest_) return 0;
    return arena_.forward.slot(arena_.backward.real(best_.makespan));
}

void Evolution::keepIfBest(const Individual& individual) {
    if (hasBest_ && individual.cost >= bestCost_) return;
    best_ = individual.draft;
    bestCost_ = individual.cost;
    hasBest_ = true;
    staleRounds_ = 0;
}

/// One pass with `sequence_`. A backward result may become the best, and so may a forward one that
/// can be slid to end at the bell. A pass that is bound to be longer than a rival is cut short.
bool Evolution::generate(std::size_t direction, Individual& into, const Individual* rival) {
    const Slot floor = floorOf(direction);
    into.taste = sequence_.taste;
    into.cost = kHopeless;
    const Slot length = rival == nullptr ? kNoSlot : lengthOf(rival->cost);
    const Slot longest = length == kNoSlot ? kNoSlot : floor + length;
    if (!makers_[direction].generate(sequence_, floor, into.draft, longest)) return false;
    if (direction == kForward && arena_.forward.isSlidable) {
        mirror(arena_.forward, into.draft, mirrored_.draft);
        mirrored_.cost = costOf(problem_, arena_.backward, mirrored_.draft, 0);
        into.cost = mirrored_.cost;
        keepIfBest(mirrored_);
        return true;
    }
    into.cost = costOf(problem_, arena_.project(directionOf(direction)), into.draft, floor);
    if (direction == kBackward) keepIfBest(into);
    return true;
}

bool Evolution::justify(std::size_t direction, const Individual& from, Individual& into) {
    rules_[direction].byFinish(from.draft, sequence_);
    sequence_.taste = from.taste;
    return generate(direction, into);
}

void Evolution::admit(const Schedule& schedule) {
    hasFormer_ = true;
    const Project& forward = arena_.forward;
    Draft known(forward);
    for (Member j = 0; j < forward.size(); ++j) {
        const PlannedTask& planned = schedule.tasks[static_cast<std::size_t>(forward.task[j])];
        known.start[j] = forward.slot(planned.start.count());
        known.finish[j] = forward.slot(planned.finish.count());
        const bool hasPeople = !planned.pieces.empty() && !planned.pieces.front().people.empty();
        sequence_.taste[j] =
            hasPeople ? static_cast<std::uint8_t>(planned.pieces.front().people.front() + 1)
                      : std::uint8_t{0};
    }
    rules_[kBackward].byFinish(known, sequence_);
    generate(kBackward, spare_);
}

/// A schedule that is there already would only crowd out others.
bool Evolution::isKnown(const Population& population, const Individual& child) const {
    return std::any_of(population.begin(), population.end(), [&](const Individual& other) {
        return other.cost == child.cost && other.draft.start == child.draft.start;
    });
}

void Evolution::resize(std::int64_t schedules) {
    // Thirty schedules to a place of both populations while there are few; with more of them the
    // size that paid best on the public benchmark grew as their root.
    // With maximum lags, where many passes fail, half the size serves a short search better.
    const auto count = static_cast<double>(schedules);
    const double wanted =
        arena_.backward.hasMaxLags ? count / 60.0 : std::min(count / 30.0, 1.2 * std::sqrt(count));
    if (size_ != 0) return;
    size_ = static_cast<std::size_t>(std::clamp(wanted, 10.0, 300.0));
    populations_.assign(2, Population(size_, child_));
}

void Evolution::raise(const Limits& limits) {
    // From any order at all to a marked preference: samples that all lean one way leave out what a
    // few instances need. A re-plan, with maximum lags and few schedules, has no time for orders
    // that lean nowhere: they mostly cost repairs.
    const bool isHurried = hasFormer_ && arena_.backward.hasMaxLags;
    const double leastEager = isHurried ? 1.0 : 0.0;
    const double spread = isHurried ? 1.0 : 2.0;
    for (std::size_t i = 0; i < size_ && !hasEnded(limits); ++i) {
        rules_[kBackward].sample(rng_, i == 0 ? 40.0 : leastEager + spread * rng_.unit(),
                                 sequence_);
        std::fill(sequence_.taste.begin(), sequence_.taste.end(), std::uint8_t{0});
        Individual& mine = populations_[kBackward][i];
        if (!generate(kBackward, mine)) continue;
        Individual& other = populations_[kForward][i];
        if (!justify(kForward, mine, other)) continue;
        if (justify(kBackward, other, spare_) && spare_.cost <= mine.cost) std::swap(mine, spare_);
    }
}

const Evolution::Individual& Evolution::tournament(const Population& population) {
    const auto count = static_cast<std::uint32_t>(size_);
    const Individual& a = population[rng_.below(count)];
    const Individual& b = population[rng_.below(count)];
    return a.cost <= b.cost ? a : b;
}

/// The weakest of four: their places are the ones to fight for.
Evolution::Individual& Evolution::weaker(Population& population) {
    const auto count = static_cast<std::uint32_t>(size_);
    Individual* weakest = &population[rng_.below(count)];
    for (int k = 1; k < 4; ++k) {
        Individual& other = population[rng_.below(count)];
        if (other.cost > weakest->cost) weakest = &other;
    }
    return *weakest;
}

void Evolution::mixTaste(const Individual& father, const Individual& mother) {
    if (arena_.backward.segments.size() == 0) return;
    for (Member j = 0; j < sequence_.taste.size(); ++j) {
        const auto& able = skilledByMember_[static_cast<std::size_t>(j)];
        if (able.size() < 2) continue;
        sequence_.taste[j] = rng_.below(2) == 0 ? father.taste[j] : mother.taste[j];
        if (rng_.below(50) == 0)
            sequence_.taste[j] = able[static_cast<std::int32_t>(
                rng_.below(static_cast<std::uint32_t>(able.size())))];
    }
}

/// Every schedule of population `from` fathers one of the other population; a child that finds a
/// place there is justified back at once and may find a place among its parents too.
void Evolution::breed(std::size_t from, const Limits& limits) {
    const std::size_t to = 1 - from;
    const double mutation = 1.0 / std::max(1, arena_.backward.size());
    constexpr double kWilder = 1.2;
    constexpr double kTamer = 0.9;
    // With maximum lags a wild order mostly costs repairs.
    const bool hasMaxLags = arena_.backward.hasMaxLags;
    const double wildest = hasMaxLags ? 1.0 : 8.0;
    for (std::size_t i = 0; i < size_ && !hasEnded(limits); ++i) {
        const Individual& father = populations_[from][i];
        const Individual& mother = tournament(populations_[from]);
        if (father.cost == kHopeless || mother.cost == kHopeless) continue;
        if (&father == &mother)
            rules_[to].byFinish(father.draft, sequence_);
        else
            rules_[to].crossPeak(rng_, father.draft, mother.draft, sequence_);
        rules_[to].mutate(rng_, mutation * wildness_, sequence_);
        mixTaste(father, mother);
        // With maximum lags no pass can be cut short; a rival is drawn once there is a child.
        Individual* rival = hasMaxLags ? nullptr : &weaker(populations_[to]);
        if (!generate(to, child_, rival)) continue;
        if (isKnown(populations_[to], child_)) {
            wildness_ = std::min(wildness_ * kWilder, wildest);
            continue;
        }
        wildness_ = std::max(wildness_ * kTamer, 1.0);
        if (rival == nullptr) rival = &weaker(populations_[to]);
        if (child_.cost > rival->cost) continue;
        std::swap(child_, *rival);
        if (hasEnded(limits) || !justify(from, *rival, spare_)) continue;
        Individual& elder = weaker(populations_[from]);
        if (spare_.cost <= elder.cost && !isKnown(populations_[from], spare_))
            std::swap(spare_, elder);
    }
}

void Evolution::run(const Limits& limits) {
    if (arena_.backward.size() == 0) {
        hasBest_ = true;
        return;
    }
    resize(limits.schedules);
    constexpr std::int32_t kPatience = 25;
    raise(limits);
    while (!hasEnded(limits)) {
        breed(kBackward, limits);
        breed(kForward, limits);
        if (++staleRounds_ <= kPatience) continue;
        staleRounds_ = 0;
        raise(limits);
    }
}

}  // namespace cinder::plan::search
