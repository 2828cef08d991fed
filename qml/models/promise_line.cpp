#include "promise_line.h"

#include <algorithm>
#include <cmath>

#include "roles.h"

namespace cinder::face {

namespace {

using What = service::Change::What;

// As many bars as a phone can show apart, and as many changes as are read.
constexpr std::size_t kMostBars = 30;
constexpr std::size_t kMostChanges = 3;
constexpr std::size_t kLabelEvery = 5;

QString stopName(const app::Promise& promise, std::size_t stop, const Words& words) {
    QStringList names;
    for (const LocalText& name : app::dishesAt(promise.line, promise.event, stop))
        names << words.name(name);
    return names.isEmpty() ? Words::tr("plates and cutlery") : names.join(QStringLiteral(", "));
}

QString changeText(const app::Promise& promise, const service::Change& change, const Words& words) {
    const QString stop = stopName(promise, change.stop, words);
    switch (change.what) {
        case What::SecondServer:
            return Words::tr("A second server at: %1").arg(stop);
        case What::SecondSide:
            return Words::tr("Guests along both sides of the tables");
        case What::SideAndServer:
            return Words::tr("Both sides, and a second server at: %1").arg(stop);
        case What::MoveToTheEnd:
            return Words::tr("Moved to the end of the line: %1").arg(stop);
        case What::TableOfItsOwn:
            return Words::tr("A table of its own for: %1").arg(stop);
    }
    return {};
}

}  // namespace

const std::vector<Role<QueueBar>>& QueueBar::roles() {
    static const std::vector<Role<QueueBar>> all{
        CINDER_ROLE(QueueBar, key),
        CINDER_ROLE(QueueBar, share),
        CINDER_ROLE(QueueBar, label),
        CINDER_ROLE(QueueBar, count),
    };
    return all;
}

PromiseLine promiseLine(const app::Promise& promise, const Words& words) {
    const service::Flow& flow = promise.line.flow;
    PromiseLine line;
    if (promise.line.guests == 0 || flow.usual <= Duration::zero()) return line;
    line.through =
        Words::tr("All %1 are through in about %2.")
            .arg(promise.line.guests == 1 ? Words::tr("1 guest")
                                          : Words::tr("%1 guests").arg(promise.line.guests),
                 Words::span(flow.usual));
    line.band = Words::tr("8 times in 10 between %1 and %2.")
                    .arg(Words::span(flow.early), Words::span(flow.late));
    line.wait = Words::tr("All let go at once, the longest wait is about %1.")
                    .arg(Words::span(flow.longestWait));
    line.byTable =
        Words::tr(
            "Called table by table, the next when %1 stand in line: through in about %2, "
            "the longest wait %3.")
            .arg(app::kTableByTable.waiting)
            .arg(Words::span(promise.byTable.usual), Words::span(promise.byTable.longestWait));
    if (flow.bottleneck)
        line.bottleneck =
            Words::tr("What holds them up: %1").arg(stopName(promise, *flow.bottleneck, words));
    line.queueTitle = Words::tr("Guests waiting, by minutes since the first steps up");
    return line;
}

std::vector<QueueBar> queueBars(const service::Flow& flow) {
    std::vector<QueueBar> bars;
    if (flow.queue.empty()) return bars;
    const auto highest = std::max_element(flow.queue.begin(), flow.queue.end());
    if (*highest < 0.5) return bars;
    const std::size_t perMinute = std::chrono::minutes{1} / service::kQueueEvery;
    std::size_t step = perMinute;
    while (flow.queue.size() / step >= kMostBars)
        step += perMinute;
    // The highest of the bars shown, which may lie beside the highest of all.
    std::size_t top = 0;
    for (std::size_t at = 0; at < flow.queue.size(); at += step)
        if (flow.queue[at] > flow.queue[top]) top = at;
    for (std::size_t at = 0; at < flow.queue.size(); at += step) {
        QueueBar bar;
        const std::size_t number = at / step;
        bar.key = QString::number(number);
        bar.share = flow.queue[at] / *highest;
        if (number % kLabelEvery == 0) bar.label = QString::number(at / perMinute);
        if (at == top) bar.count = QString::number(std::lround(flow.queue[at]));
        bars.push_back(std::move(bar));
    }
    return bars;
}

std::vector<OptionRow> shorterLine(const app::Promise& promise, const Words& words) {
    std::vector<OptionRow> rows;
    for (const service::Gain& gain : promise.shorter) {
        if (rows.size() == kMostChanges) break;
        OptionRow row;
        row.key = QString::number(rows.size());
        row.text = changeText(promise, gain.change, words);
        row.note = Words::tr("all through %1 sooner, the longest wait %2")
                       .arg(Words::span(gain.saved), Words::span(gain.flow.longestWait));
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace cinder::face
