#pragma once

/// The search: two populations of schedules, one per direction of time, each bred from the other,
/// so that every new schedule is also a justification of its parents' stretches. Those that find a
/// place are justified once more. Stale populations are left behind and new ones raised from
/// samples; the best ever found is kept. Sources: D. Debels, M. Vanhoucke, LNCS 3483 (2005) for the
/// two populations; V. Valls, F. Ballestín, S. Quintanilla, EJOR 165 (2005) for justification;
/// from memory.

#include "plan/search/arena.h"
#include "plan/search/limits.h"
#include "plan/search/order_rules.h"

namespace cinder::plan::search {

class Evolution {
  public:
    /// Both must outlive the search.
    Evolution(const Problem& problem, const Arena& arena, std::uint64_t seed);

    /// Tries the order and the people of a known schedule first.
    void admit(const Schedule& schedule);

    /// Breeds until a limit is reached. May be called again to go on. Allocates only the first
    /// time.
    void run(const Limits& limits);

    /// The best draft, in the backward direction; null while every pass has failed.
    [[nodiscard]] const Draft* best() const { return hasBest_ ? &best_ : nullptr; }
    [[nodiscard]] std::int64_t passes() const;

  private:
    struct Individual {
        Draft draft;
        Row<std::uint8_t> taste;
        std::int64_t cost = 0;
    };
    using Population = std::vector<Individual>;

    static constexpr std::size_t kBackward = 0;
    static constexpr std::size_t kForward = 1;

    [[nodiscard]] bool hasEnded(const Limits& limits) const;
    void resize(std::int64_t schedules);
    void raise(const Limits& limits);
    void breed(std::size_t from, const Limits& limits);
    [[nodiscard]] const Individual& tournament(const Population& population);
    [[nodiscard]] bool isKnown(const Population& population, const Individual& child) const;
    [[nodiscard]] Individual& weaker(Population& population);
    bool generate(std::size_t direction, Individual& into, const Individual* rival = nullptr);
    bool justify(std::size_t direction, const Individual& from, Individual& into);
    void mixTaste(const Individual& father, const Individual& mother);
    void keepIfBest(const Individual& individual);
    [[nodiscard]] Slot floorOf(std::size_t direction) const;

    const Problem& problem_;
    const Arena& arena_;
    Rng rng_;
    std::vector<Generator> makers_;
    std::vector<OrderRules> rules_;
    std::vector<Population> populations_;
    std::size_t size_ = 0;
    Sequence sequence_;
    Individual child_;
    Individual spare_;
    Individual mirrored_;
    std::vector<Row<std::uint8_t>> skilledByMember_;  ///< who may be favoured
    Draft best_;
    std::int64_t bestCost_ = 0;
    bool hasBest_ = false;
    bool hasFormer_ = false;
    std::int32_t staleRounds_ = 0;
    double wildness_ = 1.0;  ///< of mutations; grows while children are there already
};

}  // namespace cinder::plan::search
