#include "strike.h"

#include <algorithm>
#include <set>

#include "roles.h"
#include "row_maker.h"

namespace cinder::face {

namespace {

using plan::TaskKind;

/// Where coals burn: the stations at which the fire is made.
std::set<StationId> fireStations(const app::Snapshot& day) {
    std::set<StationId> stations;
    for (const app::TaskCard& card : day.tasks)
        if (card.kind == TaskKind::Fire) stations.insert(card.station);
    return stations;
}

const app::TaskCard* firstOpen(const app::Snapshot& day, const std::set<StationId>& stations,
                               bool isAtFire) {
    for (const app::TaskCard& card : day.tasks)
        if (card.kind == TaskKind::Strike && isOpen(card) &&
            (stations.count(card.station) > 0) == isAtFire)
            return &card;
    return nullptr;
}

bool hasStrike(const app::Snapshot& day, const std::set<StationId>& stations, bool isAtFire) {
    return std::any_of(day.tasks.begin(), day.tasks.end(), [&](const app::TaskCard& card) {
        return card.kind == TaskKind::Strike && (stations.count(card.station) > 0) == isAtFire;
    });
}

/// Nobody needs to have said so: what was left out is not done.
bool isLeftOut(const app::TaskCard& card) {
    return card.kind == TaskKind::Strike && card.state == app::TaskState::Skipped;
}

const app::TaskCard* firstLeftOut(const app::Snapshot& day, const std::set<StationId>& stations,
                                  bool isAtFire) {
    for (const app::TaskCard& card : day.tasks)
        if (isLeftOut(card) && (stations.count(card.station) > 0) == isAtFire) return &card;
    return nullptr;
}

void mark(LeavingRow& row, bool isDone) {
    row.mark = isDone ? QStringLiteral("done") : QStringLiteral("late");
}

}  // namespace

const std::vector<Role<LeavingRow>>& LeavingRow::roles() {
    static const std::vector<Role<LeavingRow>> all{
        CINDER_ROLE(LeavingRow, key),      CINDER_ROLE(LeavingRow, title),
        CINDER_ROLE(LeavingRow, standing), CINDER_ROLE(LeavingRow, mark),
        CINDER_ROLE(LeavingRow, place),    CINDER_ROLE(LeavingRow, verb),
    };
    return all;
}

Strike::Strike(Door& door, const Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings) {}

/// The fire is safe when somebody has done all that is to be done at it; a task left out is said.
LeavingRow Strike::fire(const app::Snapshot& day) const {
    LeavingRow row{QStringLiteral("fire"), tr("Fire"), {}, {}, {}, {}};
    const auto stations = fireStations(day);
    const auto* open = firstOpen(day, stations, true);
    // An event without fire has nothing to make safe; one whose plan says nothing of it has.
    const bool isAsked = stations.empty() || hasStrike(day, stations, true);
    const auto* skipped = firstLeftOut(day, stations, true);
    if (open != nullptr)
        row.standing = tr("Not yet: %1").arg(words_.title(*open));
    else if (skipped != nullptr)
        row.standing =
            tr("Left out: %1. Look at the coals before you go.").arg(words_.title(*skipped));
    else if (!isAsked)
        row.standing =
            tr("No step asks for it: look at the coals yourself. Ash counts as hot for 48 hours.");
    else
        row.standing = tr("All is done at the fire. Ash counts as hot for 48 hours.");
    mark(row, open == nullptr && skipped == nullptr);
    // Nobody can say here that it was done: the verdict asks for a look instead.
    if (!isAsked && open == nullptr) row.mark = QStringLiteral("waiting");
    return row;
}

/// Every pan that the record knows is discarded, cooling, or may be kept; the record is signed.
LeavingRow Strike::food(const app::Snapshot& day) {
    LeavingRow row{QStringLiteral("food"),   tr("Leftovers"),    {}, {},
                   QStringLiteral("record"), tr("To the record")};
    int keep = 0, cool = 0, discard = 0;
    for (const app::FoodPanCard& card : day.food.pans) {
        if (card.standing.control == safety::Control::Discarded) continue;
        keep += card.standing.leftover == safety::Leftover::Keep ? 1 : 0;
        cool += card.standing.leftover == safety::Leftover::Cool ? 1 : 0;
        discard += card.standing.leftover == safety::Leftover::Discard ? 1 : 0;
    }
    QStringList parts;
    const auto pans = [](int count) { return count == 1 ? tr("1 pan") : tr("%1 pans").arg(count); };
    if (keep > 0) parts << tr("%1 may be kept").arg(pans(keep));
    if (cool > 0) parts << tr("%1 to cool").arg(pans(cool));
    if (discard > 0) parts << tr("%1 to discard").arg(pans(discard));
    const bool isSigned = day.food.signature.has_value();
    parts << (isSigned ? tr("record signed") : tr("record not signed"));
    row.standing = parts.join(QStringLiteral(", "));
    mark(row, discard == 0 && isSigned);
    return row;
}

LeavingRow Strike::van() const {
    LeavingRow row{QStringLiteral("van"),  tr("Van"),       {}, {},
                   QStringLiteral("load"), tr("To the van")};
    int back = 0, all = 0;
    if (const auto lists = door_.lists().lists())
        for (const app::PackCard& card : lists->pack) {
            if (!card.comesBack) continue;
            ++all;
            back += card.home >= (card.out > 0 ? card.out : card.wanted) ? 1 : 0;
        }
    row.standing = tr("%1 of %2 back in the van").arg(back).arg(all);
    mark(row, back == all);
    return row;
}

LeavingRow Strike::site(const app::Snapshot& day) const {
    LeavingRow row{QStringLiteral("site"), tr("Site"), {}, {}, {}, {}};
    const auto stations = fireStations(day);
    const auto* open = firstOpen(day, stations, false);
    const bool isAsked = hasStrike(day, stations, false);
    const auto* skipped = firstLeftOut(day, stations, false);
    row.standing = open != nullptr ? tr("Not yet: %1").arg(words_.title(*open))
                   : skipped != nullptr
                       ? tr("Left out: %1. Look around before you go.").arg(words_.title(*skipped))
                   : isAsked ? tr("Everything is done")
                             : tr("No step asks for it: look around yourself.");
    mark(row, open == nullptr && skipped == nullptr);
    if (open == nullptr && !isAsked) row.mark = QStringLiteral("waiting");
    return row;
}

void Strike::show(const std::shared_ptr<const app::Snapshot>& day) {
    std::vector<LeavingRow> rows;
    QStringList missing;
    if (day) {
        rows = {fire(*day), food(*day), van(), site(*day)};
        for (const LeavingRow& row : rows)
            if (row.mark == QLatin1String("late")) missing << row.title.toLower();
    }
    const bool isDone = day && missing.isEmpty();
    const bool isUnasked = isDone && rows.front().mark == QLatin1String("waiting");
    const bool mayLeave = isDone && !isUnasked;
    const QString verdict =
        isUnasked ? tr("All that was asked is done. No step asks for the fire: look at the coals "
                       "before you leave.")
        : mayLeave
            ? tr("The site may be left.")
            : tr("Do not leave yet. Still to do: %1.").arg(missing.join(QStringLiteral(", ")));
    lines_.show(std::move(rows));
    if (mayLeave == mayLeave_ && verdict == verdict_) return;
    mayLeave_ = mayLeave;
    verdict_ = verdict;
    Q_EMIT changed();
}

}  // namespace cinder::face
