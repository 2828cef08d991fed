#include "plan/search/distances.h"

#include <algorithm>

namespace cinder::plan::search {

std::optional<Distances> Distances::of(const Project& project) {
    Distances result;
    std::int32_t nodes = project.size();
    result.finishNode_.assign(project.size(), 0);
    for (Member j = 0; j < project.size(); ++j)
        result.finishNode_[j] = project.isSplit(j) ? nodes++ : j;
    result.nodes_ = nodes;
    result.d_.assign(nodes * nodes, kUnrelated);
    const auto raise = [&](std::int32_t a, std::int32_t b, Slot lag) {
        Slot& cell = result.d_[a * nodes + b];
        cell = std::max(cell, lag);
    };
    for (std::int32_t v = 0; v < nodes; ++v)
        raise(v, v, 0);
    for (Member j = 0; j < project.size(); ++j)
        if (project.isSplit(j)) raise(j, result.finishNode_[j], project.duration[j]);
    for (const Arc& arc : project.arcs)
        raise(arc.fromFinish ? result.finishNode_[arc.from] : arc.from,
              arc.toFinish ? result.finishNode_[arc.to] : arc.to, arc.lag);
    for (std::int32_t k = 0; k < nodes; ++k)
        for (std::int32_t a = 0; a < nodes; ++a) {
            const Slot first = result.d_[a * nodes + k];
            if (first == kUnrelated) continue;
            for (std::int32_t b = 0; b < nodes; ++b)
                if (const Slot second = result.d_[k * nodes + b]; second != kUnrelated)
                    raise(a, b, first + second);
        }
    for (std::int32_t v = 0; v < nodes; ++v)
        if (result.d_[v * nodes + v] > 0) return std::nullopt;
    return result;
}

}  // namespace cinder::plan::search
