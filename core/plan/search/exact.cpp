#include "plan/search/exact.h"

#include <algorithm>

#include "plan/search/exact_model.h"

namespace cinder::plan::search {

namespace {

/// Luby's sequence 1 1 2 1 1 2 4 …: how long to go on before starting over. Source: M. Luby,
/// A. Sinclair, D. Zuckerman, Information Processing Letters 47 (1993).
std::int64_t luby(std::int64_t k) {
    for (std::int64_t power = 1;; power *= 2) {
        if (k == 2 * power - 1) return power;
        if (k < 2 * power - 1) return luby(k - power + 1);
    }
}

class ExactSearch {
  public:
    ExactSearch(const Project& project, const ExactLimits& limits)
        : project_(project), limits_(limits), model_(project, limits.upper - 1) {}

    ExactResult run() {
        if (model_.isRefuted()) return finish(true);
        constexpr std::int64_t kRound = 40;
        for (std::int64_t round = 1;; ++round) {
            const Outcome outcome = explore(round, kRound * luby(round));
            if (outcome != Outcome::Round) return finish(outcome == Outcome::Empty);
            model_.store().restart();
        }
    }

  private:
    enum class Outcome { Empty, Round, GaveUp };

    Outcome explore(std::int64_t round, std::int64_t contradictions) {
        const std::int64_t until = result_.contradictions + contradictions;
        BoundsStore& store = model_.store();
        for (;;) {
            if (!model_.propagate()) {
                ++result_.contradictions;
                if (!store.learn()) return Outcome::Empty;
                continue;
            }
            if (store.depth() == 0) result_.bound = std::max(result_.bound, leastMakespan());
            if (result_.contradictions >= limits_.contradictions) return Outcome::GaveUp;
            if (limits_.endNow && limits_.endNow()) return Outcome::GaveUp;
            if (result_.contradictions >= until) return Outcome::Round;
            if (decide(round)) continue;
            keep();
            if (limits_.wantsRefutation) return Outcome::GaveUp;
            store.restart();
            if (!store.raise({model_.makespan() ^ 1, 1 - result_.least})) return Outcome::Empty;
        }
    }

    Slot leastMakespan() { return model_.store().least(model_.makespan()); }

    /// Rounds take turns: by time, so that something like a schedule comes about; from below, to
    /// raise the bound; and near the best schedule known. With one to begin with, every fourth
    /// round, all of them short ones, is for the bound.
    enum class Manner { ByTime, FromBelow, NearBest };
    [[nodiscard]] Manner mannerOf(std::int64_t round) const {
        const bool isBestKnown = bestKnown().size() > 0;
        if (round % 4 == (isBestKnown ? 1 : 2)) return Manner::FromBelow;
        return isBestKnown || round % 4 == 0 ? Manner::NearBest : Manner::ByTime;
    }

    /// Takes the next decision: what the lessons ask for comes first. False when all is fixed.
    bool decide(std::int64_t round) {
        BoundsStore& store = model_.store();
        const Manner manner = mannerOf(round);
        const Side makespan = model_.makespan();
        if (manner == Manner::FromBelow && store.depth() == 0 && !store.isFixed(makespan)) {
            store.decide({makespan ^ 1, -store.least(makespan)});
            return true;
        }
        if (const auto wanted = store.mostWanted()) {
            store.decide(isWished(*wanted) ? *wanted : opposite(*wanted));
            return true;
        }
        const Side next = choose(round);
        if (next < 0) return false;
        const Slot least = store.least(next);
        const Slot most = store.most(next);
        Slot split = manner == Manner::ByTime ? least : least + (most - least) / 2;
        const Row<Slot>& best = bestKnown();
        const bool isLater =
            manner == Manner::NearBest && best.size() > 0 && best[next >> 1] > split;
        store.decide(isLater ? Bound{next, split + 1} : Bound{next ^ 1, -split});
        return true;
    }

    [[nodiscard]] const Row<Slot>& bestKnown() const {
        return result_.start.size() > 0 ? result_.start : limits_.hint;
    }

    /// Whether a bound agrees with the best schedule; the makespan is to be short.
    [[nodiscard]] bool isWished(Bound bound) const {
        const Row<Slot>& best = bestKnown();
        if (best.size() == 0) return true;
        const Slot start = bound.side < model_.makespan() ? best[bound.side >> 1] : 0;
        return (bound.side & 1) == 0 ? start >= bound.value : -start >= bound.value;
    }

    /// The number to split next: the earliest, or the one with a part in most recent
    /// contradictions. Negative when all are fixed.
    Side choose(std::int64_t round) {
        const BoundsStore& store = model_.store();
        const bool isByTime = mannerOf(round) == Manner::ByTime;
        Side best = -1;
        for (Member j = 0; j < project_.size(); ++j) {
            const Side side = model_.start(j);
            if (store.isFixed(side)) continue;
            if (best < 0 || (isByTime ? store.least(side) < store.least(best)
                                      : store.heat(side) > store.heat(best)))
                best = side;
        }
        return best;
    }

    void keep() {
        result_.start.assign(project_.size(), 0);
        result_.least = 0;
        for (Member j = 0; j < project_.size(); ++j) {
            result_.start[j] = model_.store().least(model_.start(j));
            result_.least = std::max(result_.least, result_.start[j] + project_.duration[j]);
        }
    }

    ExactResult finish(bool isComplete) {
        result_.isComplete = isComplete;
        if (isComplete && result_.start.size() == 0) result_.least = limits_.upper;
        if (isComplete) result_.bound = result_.least;
        return std::move(result_);
    }

    const Project& project_;
    const ExactLimits& limits_;
    ExactModel model_;
    ExactResult result_;
};

}  // namespace

bool isExactFor(const Project& project) {
    return project.segments.size() == 0;
}

ExactResult solveExactly(const Project& project, const ExactLimits& limits) {
    return ExactSearch(project, limits).run();
}

}  // namespace cinder::plan::search
