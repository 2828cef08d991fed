#include "plan/search/former_pass.h"

#include <algorithm>

namespace cinder::plan::search {

FormerPass::FormerPass(const Project& project)
    : project_(project),
      former_(project.size()),
      laid_(project.size()),
      freed_(project.horizon + 1) {
    // Room for every pass to come.
    for (Row<Member>* const order : {&formerOrder_, &order_}) {
        order->assign(project.size(), 0);
        order->clear();
    }
}

void FormerPass::begin() {
    std::fill(laid_.begin(), laid_.end(), Laying{});
    order_.clear();
    freed_.clear();
    firstMissed_ = 0;
    ++sought_;
}

Slot FormerPass::lay(Member j, Slot ready, const Timeline& timeline) {
    Slot start = former_[j].start;
    if (!keepsStart(j, ready, timeline)) {
        ++sought_;
        start = timeline.earliestFit(project_.demand.from(j * timeline.lanes().words), ready,
                                     project_.duration[j]);
    }
    laid_[j] = {order_.size(), ready, start};
    order_.add(j);
    if (former_[j].place >= 0) freed_.addLeft(former_[j].start, start, project_.duration[j]);
    return start;
}

bool FormerPass::keepsStart(Member j, Slot ready, const Timeline& timeline) {
    const Laying& was = former_[j];
    if (was.place < 0 || ready < was.ready || ready > was.start) return false;
    if (freed_.meets(ready, was.start)) return false;
    while (firstMissed_ < formerOrder_.size() && laid_[formerOrder_[firstMissed_]].place >= 0)
        ++firstMissed_;
    // Whoever was before it and is not yet laid has left its room.
    for (std::int32_t k = firstMissed_; ready < was.start && k < was.place; ++k) {
        const Member other = formerOrder_[k];
        if (laid_[other].place >= 0) continue;
        const Slot start = former_[other].start;
        if (start < was.start && start + project_.duration[other] > ready) return false;
    }
    return timeline.fits(project_.demand.from(j * timeline.lanes().words), was.start,
                         was.start + project_.duration[j]);
}

void FormerPass::end() {
    std::swap(former_, laid_);
    std::swap(formerOrder_, order_);
}

}  // namespace cinder::plan::search
