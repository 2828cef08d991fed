#include "plan/search/settle.h"

#include <algorithm>
#include <limits>

#include "plan/bell_side.h"
#include "plan/order_graph.h"

namespace cinder::plan::search {

namespace {

constexpr std::int32_t kFar = 1 << 28;

/// moment(to) >= moment(from) + lag; moments are node starts in half-minutes.
struct Limit {
    std::size_t from;
    std::size_t to;
    std::int32_t lag;
};

/// A moment as a node and a distance from its start.
struct Moment {
    std::size_t node;
    std::int32_t offset;
};

class Settler {
  public:
    Settler(const Problem& problem, const Schedule& tight, const Settling& settling)
        : problem_(problem), tight_(tight), settling_(settling), sides_(bellSides(problem)) {}

    Schedule run() {
        makeNodes();
        limitByLinks();
        limitByPeople();
        limitByPlaces();
        const auto earliest = raised(windowsFrom());
        const auto latest = lowered(windowsUntil());
        if (!earliest || !latest) return tight_;
        std::vector<std::int32_t> wish(nodes_.size());
        for (std::size_t v = 0; v < nodes_.size(); ++v) {
            if ((*earliest)[v] > (*latest)[v]) return tight_;
            wish[v] = wishOf(v, (*earliest)[v], (*latest)[v]);
        }
        const auto times = raised(std::move(wish));
        if (!times) return tight_;
        for (std::size_t v = 0; v < nodes_.size(); ++v)
            if ((*times)[v] > (*latest)[v]) return tight_;
        return scheduleAt(*times);
    }

  private:
    /// A whole task, or one piece of an interrupted one.
    struct Node {
        std::size_t task;
        std::size_t piece;
        std::int32_t start;
        std::int32_t length;
    };

    bool isSplit(std::size_t i) const { return problem_.tasks[i].shortestPiece.has_value(); }
    bool isFixed(std::size_t i) const {
        return sides_[i] == BellSide::After || (!settling_.isFixed.empty() && settling_.isFixed[i]);
    }
    Moment moment(TaskIndex task, End end) const {
        const auto i = static_cast<std::size_t>(task);
        if (end == End::Start) return {firstNode_[i], 0};
        const std::size_t last = firstNode_[i + 1] - 1;
        return {last, nodes_[last].length};
    }
    void limit(Moment from, Moment to, std::int32_t lag) {
        limits_.push_back({from.node, to.node, from.offset + lag - to.offset});
    }

    void makeNodes() {
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i) {
            const PlannedTask& planned = tight_.tasks[i];
            firstNode_.push_back(nodes_.size());
            if (!isSplit(i) || planned.pieces.empty()) {
                nodes_.push_back(
                    {i, 0, planned.start.count(), (planned.finish - planned.start).count()});
                continue;
            }
            for (std::size_t k = 0; k < planned.pieces.size(); ++k) {
                const Piece& piece = planned.pieces[k];
                nodes_.push_back({i, k, piece.start.count(), piece.length.count()});
                if (k > 0)
                    limit({nodes_.size() - 2, nodes_[nodes_.size() - 2].length},
                          {nodes_.size() - 1, 0}, 0);
            }
        }
        firstNode_.push_back(nodes_.size());
    }

    void limitByLinks() {
        for (const Link& link : problem_.links) {
            const Moment from = moment(link.from, link.fromEnd);
            const Moment to = moment(link.to, link.toEnd);
            limit(from, to, link.minLag.count());
            if (link.maxLag) limit(to, from, -link.maxLag->count());
        }
    }

    void limitByPeople() {
        struct Stay {
            FromBell start;
            Moment begins;
            std::int32_t length;
            StationIndex station;
        };
        std::vector<std::vector<Stay>> days(problem_.crew.size());
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i) {
            const auto& pieces = tight_.tasks[i].pieces;
            for (std::size_t k = 0; k < pieces.size(); ++k) {
                if (pieces[k].length.count() == 0) continue;
                const Moment begins =
                    isSplit(i)
                        ? Moment{firstNode_[i] + k, 0}
                        : Moment{firstNode_[i], (pieces[k].start - tight_.tasks[i].start).count()};
                for (const PersonIndex p : pieces[k].people)
                    days[static_cast<std::size_t>(p)].push_back({pieces[k].start, begins,
                                                                 pieces[k].length.count(),
                                                                 problem_.tasks[i].station});
            }
        }
        for (auto& day : days) {
            std::stable_sort(day.begin(), day.end(),
                             [](const Stay& a, const Stay& b) { return a.start < b.start; });
            for (std::size_t k = 1; k < day.size(); ++k) {
                const Stay& a = day[k - 1];
                const Stay& b = day[k];
                if (a.begins.node == b.begins.node) continue;
                const HalfMinutes way = problem_.walk[static_cast<std::size_t>(a.station)]
                                                     [static_cast<std::size_t>(b.station)];
                limit(a.begins, b.begins, a.length + way.count());
            }
        }
    }

    void limitByPlaces() {
        for (const Order& order : resourceOrders(problem_, tight_))
            limit(moment(order.before, End::Finish), moment(order.after, End::Start), 0);
    }

    std::vector<std::int32_t> windowsFrom() const {
        std::vector<std::int32_t> from;
        for (const Node& node : nodes_) {
            const auto& early = problem_.tasks[node.task].earliestStart;
            from.push_back(isFixed(node.task) ? node.start
                                              : std::max(settling_.arrival.count(),
                                                         early ? early->count() : -kFar));
        }
        return from;
    }

    std::vector<std::int32_t> windowsUntil() const {
        std::vector<std::int32_t> until;
        for (const Node& node : nodes_) {
            const FromBell limit = problem_.tasks[node.task].latestFinish.value_or(FromBell{0});
            until.push_back(isFixed(node.task) ? node.start : limit.count() - node.length);
        }
        return until;
    }

    std::int32_t wishOf(std::size_t v, std::int32_t earliest, std::int32_t latest) const {
        const std::size_t i = nodes_[v].task;
        if (settling_.former != nullptr) {
            const auto& former = settling_.former->tasks[i];
            const bool isPiece = isSplit(i) && nodes_[v].piece < former.pieces.size();
            const FromBell was = isPiece ? former.pieces[nodes_[v].piece].start : former.start;
            return std::clamp(was.count(), earliest, latest);
        }
        if (problem_.tasks[i].lean == Lean::Early) return earliest;
        return std::max(earliest, latest - settling_.margin.count());
    }

    /// The least moments at or above `times` that keep all limits; nothing when there are none.
    std::optional<std::vector<std::int32_t>> raised(std::vector<std::int32_t> times) const {
        for (std::size_t round = 0; round <= nodes_.size() + 1; ++round) {
            bool hasMoved = false;
            for (const Limit& l : limits_)
                if (times[l.from] + l.lag > times[l.to]) {
                    times[l.to] = times[l.from] + l.lag;
                    hasMoved = true;
                }
            if (!hasMoved) return times;
        }
        return std::nullopt;
    }

    /// The greatest moments at or below `times` that keep all limits.
    std::optional<std::vector<std::int32_t>> lowered(std::vector<std::int32_t> times) const {
        for (std::size_t round = 0; round <= nodes_.size() + 1; ++round) {
            bool hasMoved = false;
            for (auto l = limits_.rbegin(); l != limits_.rend(); ++l)
                if (times[l->to] - l->lag < times[l->from]) {
                    times[l->from] = times[l->to] - l->lag;
                    hasMoved = true;
                }
            if (!hasMoved) return times;
        }
        return std::nullopt;
    }

    Schedule scheduleAt(const std::vector<std::int32_t>& times) const {
        Schedule schedule = tight_;
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i) {
            PlannedTask& planned = schedule.tasks[i];
            const bool inPieces = isSplit(i) && !planned.pieces.empty();
            for (std::size_t k = 0; k < planned.pieces.size(); ++k) {
                Piece& piece = planned.pieces[k];
                piece.start = inPieces ? FromBell{times[firstNode_[i] + k]}
                                       : FromBell{times[firstNode_[i]]} +
                                             (piece.start - tight_.tasks[i].start);
            }
            planned.start = FromBell{times[firstNode_[i]]};
            const Moment end = moment(static_cast<TaskIndex>(i), End::Finish);
            planned.finish = FromBell{times[end.node] + end.offset};
            if (inPieces) join(planned.pieces);
        }
        return schedule;
    }

    static void join(std::vector<Piece>& pieces) {
        std::vector<Piece> joined;
        for (Piece& piece : pieces) {
            if (!joined.empty() && joined.back().start + joined.back().length == piece.start)
                joined.back().length += piece.length;
            else
                joined.push_back(std::move(piece));
        }
        pieces = std::move(joined);
    }

    const Problem& problem_;
    const Schedule& tight_;
    const Settling& settling_;
    std::vector<BellSide> sides_;
    std::vector<Node> nodes_;
    std::vector<std::size_t> firstNode_;
    std::vector<Limit> limits_;
};

}  // namespace

Schedule settle(const Problem& problem, const Schedule& tight, const Settling& settling) {
    return Settler(problem, tight, settling).run();
}

}  // namespace cinder::plan::search
