#include "wick.h"

#include <algorithm>
#include <cmath>

namespace cinder::face {

namespace {
using std::chrono::minutes;
constexpr Duration kStretch = minutes(8);
constexpr Duration kLeastSpan = minutes(10);
constexpr Duration kBurntSpan = minutes(45);
/// Marks move in steps of this; less is not seen.
constexpr Duration kStep = std::chrono::seconds(15);

double fold(Duration length) {
    return std::log1p(static_cast<double>(length.count()) / static_cast<double>(kStretch.count()));
}
}  // namespace

double Wick::place(Duration ahead, Duration span) {
    if (ahead < Duration::zero()) return -std::min(1.0, fold(-ahead) / fold(kBurntSpan));
    return std::min(1.0, fold(ahead) / fold(std::max(span, kLeastSpan)));
}

void Wick::show(const app::Snapshot& day, const Words& words) {
    const Instant now = std::chrono::floor<Duration>(day.now - day.now.time_since_epoch() % kStep);
    Instant end = day.serve;
    const bool isBellAhead = end > day.now;
    if (!isBellAhead)
        for (const auto& card : day.tasks)
            end = std::max(end, card.finish);
    const Duration span = end - now;

    std::vector<Mark> marks;
    for (const auto& card : day.tasks) {
        const auto at = std::find(day.stations.begin(), day.stations.end(), card.station);
        const int lane = static_cast<int>(at - day.stations.begin());
        if (card.start >= end || card.state == app::TaskState::Skipped) continue;
        marks.push_back({place(card.start - now, span), place(card.finish - now, span), lane,
                         card.state, card.isLate});
    }
    std::vector<Hour> hours;
    for (const auto every : {minutes(60), minutes(30), minutes(15), minutes(5)}) {
        const auto first = std::chrono::ceil<minutes>(now).time_since_epoch();
        auto at = Instant(first - (first + minutes(day.offset)) % every);
        for (; at < end; at += every)
            if (at > now + minutes(2)) hours.push_back({place(at - now, span), words.clock(at)});
    }
    const QString summary = words.fromBell(day.now) + QStringLiteral(", ") + words.clock(day.serve);
    const QString clock = words.clock(day.now);
    if (marks == marks_ && hours == hours_ && clock == clock_ && isBellAhead == isBellAhead_)
        return;
    marks_ = std::move(marks);
    hours_ = std::move(hours);
    clock_ = clock;
    isBellAhead_ = isBellAhead;
    summary_ = summary;
    Q_EMIT changed();
}

}  // namespace cinder::face
