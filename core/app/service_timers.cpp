#include <algorithm>
#include <tuple>

#include "app/snapshot.h"

namespace cinder::app {

void addServiceTimers(const live::Day& day, Snapshot& snapshot) {
    if (!snapshot.service.isOpen || snapshot.service.isOver) return;
    for (const LinePanCard& card : snapshot.service.pans) {
        if (!card.outlook.startNextBy) continue;
        live::Timer timer;
        timer.kind = live::TimerKind::StartNow;
        timer.occasion = live::TimerOccasion::NextPan;
        timer.dish = card.dish;
        timer.pan = card.outlook.pan + 1;
        // Not by its instant, which moves with every guest: one call for one pan.
        timer.name = "pan:" + card.dish.text() + "#" + std::to_string(*timer.pan);
        timer.due = *card.outlook.startNextBy;
        const auto heard = day.acknowledged.find(timer.name);
        if (heard != day.acknowledged.end()) timer.acknowledged = heard->second;
        snapshot.timers.push_back(std::move(timer));
    }
    std::sort(snapshot.timers.begin(), snapshot.timers.end(),
              [](const live::Timer& a, const live::Timer& b) {
                  return std::tie(a.due, a.name) < std::tie(b.due, b.name);
              });
}

}  // namespace cinder::app
