#include "plan/search/exact.h"

#include <algorithm>
#include <bit>
#include <set>

namespace cinder::plan::search {

namespace {

/// A stretch during which a member holds units of one resource.
struct Use {
    Member member;
    Slot offset;
    Slot length;
    std::int32_t resource;
    std::int64_t units;
};

using Matrix = std::vector<Slot>;

class Tree {
  public:
    Tree(const Project& project, const ExactLimits& limits)
        : project_(project), limits_(limits), nodes_(project.size() + 1) {
        listUses();
        listConflicts();
    }

    ExactResult run() {
        Slot deadline = limits_.upper - 1;
        for (;;) {
            Matrix root;
            const bool isOpen = makeRoot(deadline, root);
            const Outcome outcome = isOpen ? explore(root, 0) : Outcome::Empty;
            if (outcome == Outcome::Found) {
                deadline = result_.least - 1;
                continue;
            }
            result_.isComplete = outcome == Outcome::Empty;
            if (result_.isComplete && result_.start.size() == 0) result_.least = limits_.upper;
            return std::move(result_);
        }
    }

  private:
    enum class Outcome { Found, Empty, GaveUp };

    std::size_t cell(std::int32_t a, std::int32_t b) const {
        return static_cast<std::size_t>(a) * static_cast<std::size_t>(nodes_) +
               static_cast<std::size_t>(b);
    }
    Slot& at(Matrix& d, std::int32_t a, std::int32_t b) const { return d[cell(a, b)]; }
    Slot at(const Matrix& d, std::int32_t a, std::int32_t b) const { return d[cell(a, b)]; }
    static std::int32_t node(Member j) { return j + 1; }  // node 0 is slot 0

    void listUses() {
        const Lanes& lanes = project_.base.lanes();
        const std::int32_t perWord = 64 / lanes.bits;
        const std::uint64_t mask = (std::uint64_t{1} << (lanes.bits - 1)) - 1;
        for (std::int32_t lane = 0; lane < lanes.words * perWord; ++lane) {
            capacity_.push_back(project_.base.mostFree(lane));
            for (Member j = 0; j < project_.size(); ++j) {
                const auto units =
                    static_cast<std::int64_t>(project_.demand[j * lanes.words + lane / perWord] >>
                                                  ((lane % perWord) * lanes.bits) &
                                              mask);
                if (units > 0 && project_.duration[j] > 0)
                    uses_.push_back({j, 0, project_.duration[j], lane, units});
            }
        }
        std::set<People> teams;
        for (const Segment& segment : project_.segments)
            teams.insert(segment.skilled);
        const std::set<People> single = teams;
        for (const People a : single)
            for (const People b : single)
                teams.insert(a | b);
        for (const People team : teams) {
            const auto resource = static_cast<std::int32_t>(capacity_.size());
            capacity_.push_back(std::popcount(team));
            for (Member j = 0; j < project_.size(); ++j) {
                if (project_.isSplit(j)) continue;
                const Range range = project_.segmentsOf[j];
                for (std::int32_t s = range.begin; s < range.end; ++s) {
                    const Segment& segment = project_.segments[s];
                    if ((segment.skilled & ~team) == 0 && segment.length > 0)
                        uses_.push_back(
                            {j, segment.offset, segment.length, resource, segment.people});
                }
            }
        }
    }

    /// Pairs that can never overlap.
    void listConflicts() {
        for (std::size_t a = 0; a < uses_.size(); ++a)
            for (std::size_t b = a + 1; b < uses_.size(); ++b)
                if (uses_[a].resource == uses_[b].resource && uses_[a].member != uses_[b].member &&
                    uses_[a].units + uses_[b].units >
                        capacity_[static_cast<std::size_t>(uses_[a].resource)])
                    conflicts_.push_back({a, b});
    }

    bool makeRoot(Slot deadline, Matrix& d) const {
        d.assign(static_cast<std::size_t>(nodes_) * static_cast<std::size_t>(nodes_), kUnrelated);
        for (std::int32_t v = 0; v < nodes_; ++v)
            at(d, v, v) = 0;
        for (Member j = 0; j < project_.size(); ++j) {
            const Slot latest =
                std::min({deadline, project_.deadline[j], project_.horizon}) - project_.duration[j];
            if (!add(d, 0, node(j), project_.earliest[j]) || !add(d, node(j), 0, -latest))
                return false;
        }
        for (const Arc& arc : project_.arcs) {
            if (arc.toFinish) continue;  // a finish that may come later bounds no start
            const Slot lag = arc.lag + (arc.fromFinish ? project_.duration[arc.from] : 0);
            if (!add(d, node(arc.from), node(arc.to), lag)) return false;
        }
        return orderForcedPairs(d);
    }

    /// start(b) >= start(a) + lag; false when that closes a cycle of positive length.
    bool add(Matrix& d, std::int32_t a, std::int32_t b, Slot lag) const {
        if (at(d, a, b) >= lag) return true;
        const Slot back = at(d, b, a);
        if (back != kUnrelated && back + lag > 0) return false;
        for (std::int32_t u = 0; u < nodes_; ++u) {
            const Slot toA = at(d, u, a);
            if (toA == kUnrelated || toA + lag <= at(d, u, b)) continue;
            for (std::int32_t v = 0; v < nodes_; ++v) {
                const Slot fromB = at(d, b, v);
                if (fromB != kUnrelated) at(d, u, v) = std::max(at(d, u, v), toA + lag + fromB);
            }
        }
        return true;
    }

    static Slot lagBetween(const Use& first, const Use& second) {
        return first.offset + first.length - second.offset;
    }
    bool canPrecede(const Matrix& d, const Use& first, const Use& second) const {
        const Slot back = at(d, node(second.member), node(first.member));
        return back == kUnrelated || back + lagBetween(first, second) <= 0;
    }
    bool order(Matrix& d, const Use& first, const Use& second) const {
        return add(d, node(first.member), node(second.member), lagBetween(first, second));
    }
    /// `first` does not end before `second` begins.
    bool forbid(Matrix& d, const Use& first, const Use& second) const {
        return add(d, node(second.member), node(first.member), 1 - lagBetween(first, second));
    }

    bool orderForcedPairs(Matrix& d) const {
        bool hasChanged = true;
        while (hasChanged) {
            hasChanged = false;
            for (const auto& [i, k] : conflicts_) {
                const Use& a = uses_[i];
                const Use& b = uses_[k];
                const bool ab = canPrecede(d, a, b);
                const bool ba = canPrecede(d, b, a);
                if (!ab && !ba) return false;
                if (ab && ba) continue;
                const Use& first = ab ? a : b;
                const Use& second = ab ? b : a;
                if (at(d, node(first.member), node(second.member)) >= lagBetween(first, second))
                    continue;
                if (!order(d, first, second)) return false;
                hasChanged = true;
            }
        }
        return true;
    }

    Slot startOf(const Matrix& d, const Use& use) const {
        return at(d, 0, node(use.member)) + use.offset;
    }

    /// A minimal set of uses that overload their resource at the earliest moment at which the
    /// earliest starts do; empty when they never do.
    std::vector<std::size_t> findOverload(const Matrix& d) const {
        std::vector<std::size_t> byStart(uses_.size());
        for (std::size_t k = 0; k < byStart.size(); ++k)
            byStart[k] = k;
        std::stable_sort(byStart.begin(), byStart.end(), [&](std::size_t a, std::size_t b) {
            return startOf(d, uses_[a]) < startOf(d, uses_[b]);
        });
        for (const std::size_t k : byStart) {
            const Slot moment = startOf(d, uses_[k]);
            std::vector<std::size_t> active;
            std::int64_t sum = 0;
            for (std::size_t m = 0; m < uses_.size(); ++m) {
                const Slot start = startOf(d, uses_[m]);
                if (uses_[m].resource != uses_[k].resource || start > moment ||
                    start + uses_[m].length <= moment)
                    continue;
                active.push_back(m);
                sum += uses_[m].units;
            }
            const std::int64_t capacity = capacity_[static_cast<std::size_t>(uses_[k].resource)];
            if (sum <= capacity) continue;
            std::stable_sort(active.begin(), active.end(), [&](std::size_t a, std::size_t b) {
                return uses_[a].units > uses_[b].units;
            });
            std::size_t count = 0;
            for (std::int64_t units = 0; units <= capacity; ++count)
                units += uses_[active[count]].units;
            active.resize(count);
            return active;
        }
        return {};
    }

    void keep(const Matrix& d) {
        result_.start.assign(project_.size(), 0);
        result_.least = 0;
        for (Member j = 0; j < project_.size(); ++j) {
            result_.start[j] = at(d, 0, node(j));
            result_.least = std::max(result_.least, result_.start[j] + project_.duration[j]);
        }
    }

    Outcome explore(Matrix& d, std::int32_t depth) {
        if (++result_.nodes > limits_.nodes || depth > kDeepest) return Outcome::GaveUp;
        if (result_.nodes % 64 == 0 && limits_.endNow && limits_.endNow()) return Outcome::GaveUp;
        const auto overload = findOverload(d);
        if (overload.empty()) {
            keep(d);
            return Outcome::Found;
        }
        struct Branch {
            std::size_t first;
            std::size_t second;
            Slot push;
        };
        std::vector<Branch> branches;
        for (const std::size_t a : overload)
            for (const std::size_t b : overload)
                if (a != b && uses_[a].member != uses_[b].member &&
                    canPrecede(d, uses_[a], uses_[b]))
                    branches.push_back(
                        {a, b, startOf(d, uses_[a]) + uses_[a].length - startOf(d, uses_[b])});
        std::stable_sort(branches.begin(), branches.end(),
                         [](const Branch& a, const Branch& b) { return a.push < b.push; });
        for (const Branch& branch : branches) {
            Matrix child = d;
            if (order(child, uses_[branch.first], uses_[branch.second]) &&
                orderForcedPairs(child)) {
                const Outcome outcome = explore(child, depth + 1);
                if (outcome != Outcome::Empty) return outcome;
            }
            if (!forbid(d, uses_[branch.first], uses_[branch.second])) break;
        }
        return Outcome::Empty;
    }

    static constexpr std::int32_t kDeepest = 400;

    const Project& project_;
    const ExactLimits& limits_;
    std::int32_t nodes_;
    std::vector<Use> uses_;
    std::vector<std::int64_t> capacity_;
    std::vector<std::pair<std::size_t, std::size_t>> conflicts_;
    ExactResult result_;
};

}  // namespace

bool isExactFor(const Project& project) {
    return project.segments.size() == 0 && !project.isUneven;
}

ExactResult solveExactly(const Project& project, const ExactLimits& limits) {
    return Tree(project, limits).run();
}

}  // namespace cinder::plan::search
