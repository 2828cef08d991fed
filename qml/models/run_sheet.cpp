#include "run_sheet.h"

#include <algorithm>
#include <cmath>

#include "row_maker.h"

namespace cinder::face {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;

double toMinutes(Duration d) {
    // To a quarter of a minute, so that a projection that breathes does not redraw the chart.
    return std::round(static_cast<double>(d.count()) / 15000.0) / 4.0;
}

/// Puts blocks that overlap on different levels; returns how many levels there are.
int level(std::vector<BlockRow>& blocks) {
    std::stable_sort(blocks.begin(), blocks.end(),
                     [](const BlockRow& a, const BlockRow& b) { return a.begin < b.begin; });
    std::vector<double> ends;
    for (auto& block : blocks) {
        auto free = std::find_if(ends.begin(), ends.end(),
                                 [&](double end) { return end <= block.begin + 0.1; });
        if (free == ends.end()) free = ends.insert(ends.end(), 0);
        *free = block.begin + block.length;
        block.level = static_cast<int>(free - ends.begin());
    }
    return std::max(1, static_cast<int>(ends.size()));
}

BlockRow block(const app::TaskCard& card, Instant from, Instant to, Instant edge,
               const Words& words) {
    BlockRow row;
    row.begin = toMinutes(from - edge);
    row.length = std::max(0.5, toMinutes(to - from));
    row.name = words.title(card);
    row.times = words.clock(from) + QStringLiteral(" – ") + words.clock(to);
    row.mark = markOf(card.state);
    row.isLate = card.isLate;
    row.isCritical = card.isCritical;
    row.plannedLeft = row.begin;
    row.plannedWidth = row.length;
    return row;
}

void showLane(std::vector<LaneRow>& lanes, const ListOf<LaneRow>& before, QString key, QString name,
              std::vector<BlockRow> blocks) {
    LaneRow lane{std::move(key), std::move(name), level(blocks), nullptr};
    const auto* old = before.find(lane.key);
    lane.blocks = old != nullptr ? old->blocks : std::make_shared<ListOf<BlockRow>>();
    lane.blocks->show(std::move(blocks));
    lanes.push_back(std::move(lane));
}

}  // namespace

void RunSheet::show(const app::Snapshot& day, const Words& words) {
    Instant edge = std::min(day.arrival, day.now);
    Instant end = day.serve;
    for (const auto& card : day.tasks) {
        edge = std::min({edge, card.start, card.plannedStart});
        end = std::max({end, card.finish, card.plannedFinish});
    }
    const auto quarter = minutes(15);
    edge = Instant(edge.time_since_epoch() - edge.time_since_epoch() % quarter);
    end = std::max(end, day.now) + minutes(5);

    std::vector<LaneRow> people;
    for (const auto& person : day.people) {
        std::vector<BlockRow> blocks;
        for (const auto& card : day.tasks) {
            if (card.state == app::TaskState::Skipped) continue;
            for (std::size_t i = 0; i < card.work.size(); ++i) {
                const auto& work = card.work[i];
                if (std::find(work.people.begin(), work.people.end(), person.id) ==
                    work.people.end())
                    continue;
                auto row = block(card, work.start, work.finish, edge, words);
                row.key = toText(card.id.text()) + QLatin1Char('#') + QString::number(i);
                blocks.push_back(row);
            }
        }
        showLane(people, byPerson_, toText(person.id.text()), toText(person.name),
                 std::move(blocks));
    }
    std::vector<LaneRow> stations;
    for (std::size_t s = 0; s < day.stations.size(); ++s) {
        std::vector<BlockRow> blocks;
        for (const auto& card : day.tasks) {
            if (card.station != day.stations[s] || card.state == app::TaskState::Skipped) continue;
            auto row = block(card, card.start, card.finish, edge, words);
            row.key = toText(card.id.text());
            row.isStanding = card.work.empty();
            if (isOpen(card)) row.slack = std::max(0.0, toMinutes(card.slack));
            row.plannedLeft = toMinutes(card.plannedStart - edge);
            row.plannedWidth = std::max(0.5, toMinutes(card.plannedFinish - card.plannedStart));
            row.isMoved = std::abs(row.plannedLeft - row.begin) >= 1 ||
                          std::abs(row.plannedWidth - row.length) >= 1;
            blocks.push_back(row);
        }
        showLane(stations, byStation_, toText(day.stations[s].text()),
                 words.name(day.stationNames[s]), std::move(blocks));
    }
    const auto count = [](const std::vector<LaneRow>& lanes) {
        int levels = 0;
        for (const auto& lane : lanes)
            levels += lane.levels;
        return levels;
    };
    const int personLevels = count(people);
    const int stationLevels = count(stations);
    byPerson_.show(std::move(people));
    byStation_.show(std::move(stations));
    showAxis(day, words, edge, end);

    if (const double now = toMinutes(day.now - edge); now != now_) {
        now_ = now;
        Q_EMIT nowChanged();
    }
    const double span = std::ceil(toMinutes(end - edge));
    const double bell = toMinutes(day.serve - edge);
    if (span != span_ || bell != bell_ || personLevels != personLevels_ ||
        stationLevels != stationLevels_) {
        personLevels_ = personLevels;
        stationLevels_ = stationLevels;
        span_ = span;
        bell_ = bell;
        Q_EMIT changed();
    }
}

void RunSheet::showAxis(const app::Snapshot& day, const Words& words, Instant edge, Instant end) {
    std::vector<AxisRow> rows;
    for (Instant at = edge; at < end; at += minutes(15))
        rows.push_back(
            {words.clock(at), toMinutes(at - edge), words.clock(at), words.fromBell(at),
             (at.time_since_epoch() + minutes(day.offset)) % minutes(60) == Duration::zero()});
    axis_.show(std::move(rows));
}

}  // namespace cinder::face
