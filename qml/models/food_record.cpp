#include "food_record.h"

#include <algorithm>
#include <map>

#include "cautions.h"
#include "safety/standing.h"
#include "safety/thermometer.h"
#include "settings.h"

namespace cinder::face {

namespace {

using safety::Control;

/// What lies further ahead is not read in three seconds.
constexpr int kMostWaiting = 6;

/// The checks still to do; of several that a dish has missed only the last, with how many before.
struct ToDo {
    const safety::PlannedCheck* check = nullptr;
    int missed = 0;
};

std::vector<ToDo> toDo(const app::Snapshot& day) {
    std::vector<ToDo> list;
    std::map<DishId, std::size_t> dueOf;
    for (const safety::PlannedCheck& check : day.food.checks) {
        if (check.isDone) {
            // A reading taken since then has answered for what was missed.
            if (const auto due = dueOf.find(check.dish); due != dueOf.end()) {
                list[due->second].check = nullptr;
                dueOf.erase(due);
            }
            continue;
        }
        const bool isDue = check.due <= day.now;
        const auto earlier = dueOf.find(check.dish);
        if (isDue && earlier != dueOf.end()) {
            list.push_back({&check, list[earlier->second].missed + 1});
            list[earlier->second].check = nullptr;
            earlier->second = list.size() - 1;
            continue;
        }
        list.push_back({&check, 0});
        if (isDue) dueOf[check.dish] = list.size() - 1;
    }
    std::erase_if(list, [](const ToDo& one) { return one.check == nullptr; });
    return list;
}

/// What one entry says, beside who and when.
struct Said {
    QString about, what, value;
};

class Teller {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::FoodRecord)

  public:
    Teller(const FoodWords& words, const app::Snapshot& day) : words_(words), day_(day) {}

    Said operator()(const safety::FoodMeasured& o) const {
        QString what = FoodWords::purpose(o.purpose);
        if (o.held) what = tr("%1, kept %2").arg(what, Words::span(*o.held));
        if (o.from) what = tr("%1, filled out of pan %2").arg(what).arg(*o.from);
        return {words_.pan(o.pan, day_), std::move(what), FoodWords::reading(o.reading)};
    }
    Said operator()(const safety::ActionTaken& o) const {
        return {tr("Corrective action"), FoodWords::action(o.action), {}};
    }
    Said operator()(const safety::ControlLeft& o) const {
        QString what = tr("Time control: %1").arg(FoodWords::rule(o.rule, day_.food.limits));
        if (o.from) what = tr("%1, filled out of pan %2").arg(what).arg(*o.from);
        return {words_.pan(o.pan, day_), std::move(what), FoodWords::reading(o.reading)};
    }
    Said operator()(const safety::CoolingBegun& o) const {
        return {words_.pan(o.pan, day_), tr("Cooling begun"), {}};
    }
    Said operator()(const safety::PanDiscarded& o) const {
        return {words_.pan(o.pan, day_), tr("Discarded"), {}};
    }
    Said operator()(const safety::PanKept& o) const {
        return {words_.pan(o.pan, day_), tr("Kept cold"), {}};
    }
    Said operator()(const safety::ThermometerTested& o) const {
        return {FoodWords::thermometer(o.thermometer),
                safety::isAccurate(o) ? tr("Ice point passed") : tr("Ice point FAILED"),
                FoodWords::reading(o.reading)};
    }
    Said operator()(const safety::FireItemReady& o) const {
        return {tr("Before the fire"), FoodWords::fireItem(o.item), {}};
    }
    Said operator()(const safety::FireItemSkipped& o) const {
        return {tr("Before the fire"), tr("SKIPPED: %1").arg(FoodWords::fireItem(o.item)), {}};
    }
    Said operator()(const safety::LocalRulesNamed& o) const {
        return {tr("Local authority"), toText(o.rules.authority), {}};
    }
    Said operator()(const safety::RecordSigned& o) const {
        return {tr("Signed"), toText(o.name), {}};
    }

  private:
    const FoodWords& words_;
    const app::Snapshot& day_;
};

}  // namespace

FoodRecord::FoodRecord(FoodDoor& door, Settings& settings, QObject* parent)
    : QObject(parent),
      door_(door),
      words_(settings),
      food_(settings, words_),
      entry_(door, settings, food_),
      closing_(door, food_, words_) {
    connect(&entry_, &FoodEntry::noted, this, &FoodRecord::noted);
    connect(&closing_, &FoodClosing::noted, this, &FoodRecord::noted);
}

void FoodRecord::show(const std::shared_ptr<const app::Snapshot>& day) {
    day_ = day;
    if (day) {
        words_.setPlace(day->offset, day->serve);
        auto checks = checkRows(*day);
        auto due = checks;
        std::erase_if(due, [](const CheckRow& row) { return !row.isAtFire || !row.isDue; });
        auto soon = checks;
        std::erase_if(soon, [](const CheckRow& row) {
            return !row.isAtFire || row.isDue || row.mark == QLatin1String("waiting");
        });
        checks_.show(std::move(checks));
        dueAtFire_.show(std::move(due));
        soonAtFire_.show(std::move(soon));
        fireItems_.show(fireRows(*day));
        pans_.show(panRows(*day));
        forecasts_.show(forecastRows(*day));
        entries_.show(entryRows(*day));
        if (FoodTally tally = tallyOf(*day); !(tally == tally_)) {
            tally_ = std::move(tally);
            Q_EMIT tallied();
        }
    }
    closing_.show(day);
    entry_.show(day);
}

void FoodRecord::take(const Taken& taken) {
    Q_EMIT refused(taken ? QString() : Words::refusal(taken.error()));
    Q_EMIT noted();
}

void FoodRecord::readyBeforeFire(const QString& item) {
    take(door_.readyBeforeFire(static_cast<safety::FireItem>(item.toInt())));
}

void FoodRecord::skipBeforeFire(const QString& item) {
    take(door_.skipBeforeFire(static_cast<safety::FireItem>(item.toInt())));
}

void FoodRecord::setPart(const QString& part) {
    if (part == part_) return;
    part_ = part;
    Q_EMIT parted();
}

void FoodRecord::answerCall(const QString& dish, int pan) {
    if (!day_) return;
    setPart(QStringLiteral("checks"));
    const DishId id(dish.toStdString());
    const auto isMeant = [&](const safety::PlannedCheck& check) {
        if (check.dish != id || check.due > day_->now) return false;
        const auto& missing = check.missing;
        return pan == 0 || (!missing.empty() && missing.front() == safety::Pan{id, pan});
    };
    for (const ToDo& one : toDo(*day_))
        if (isMeant(*one.check)) return entry_.measureCheck(toText(one.check->name));
    if (pan > 0) return entry_.openPan(keyOf(safety::Pan{id, pan}));
    entry_.openPan(keyOf(safety::Pan{id, 0}));
}

std::vector<FireRow> FoodRecord::fireRows(const app::Snapshot& day) {
    std::vector<FireRow> rows;
    for (const safety::FireAnswer& answer : day.food.beforeFire)
        rows.push_back({QString::number(static_cast<int>(answer.item)),
                        FoodWords::fireItem(answer.item), answer.ready.has_value(),
                        !answer.ready && answer.skipped.has_value()});
    return rows;
}

std::vector<CheckRow> FoodRecord::checkRows(const app::Snapshot& day) const {
    std::vector<CheckRow> rows;
    int waiting = 0;
    for (const ToDo& one : toDo(day)) {
        if (one.check->due - safety::kCheckAhead > day.now && ++waiting > kMostWaiting) break;
        const safety::PlannedCheck& check = *one.check;
        CheckRow row;
        row.key = toText(check.name);
        row.dish = food_.pans(check, day);
        row.what = FoodWords::occasion(check.occasion) + QStringLiteral(" · ") +
                   FoodWords::purpose(check.purpose);
        for (const app::FoodPanCard& card : day.food.pans)
            if (const auto degree =
                    safety::limitOf(check.purpose, card.food, card.standing.isRoast);
                card.pan.dish == check.dish && degree)
                row.limit = food_.limit(*degree, day.food.limits);
        row.isAtFire = check.occasion == safety::Occasion::Cooked;
        row.due = words_.clockAndBell(check.due);
        const TimeLeft left = Words::timeLeft(check.due - day.now);
        row.countdown = left.figure;
        row.unit = left.unit;
        row.isDue = check.due <= day.now;
        row.mark = row.isDue                                    ? QStringLiteral("over")
                   : check.due - safety::kCheckAhead <= day.now ? QStringLiteral("ready")
                                                                : QStringLiteral("waiting");
        if (one.missed > 0) row.missed = tr("%n missed before it", nullptr, one.missed);
        rows.push_back(std::move(row));
    }
    return rows;
}

PanRow FoodRecord::panRow(const app::FoodPanCard& card, const app::Snapshot& day) const {
    const safety::Standing& standing = card.standing;
    PanRow row;
    row.key = keyOf(card.pan);
    row.title = food_.pan(card.pan, day);
    row.standing = food_.standing(standing);
    row.isOver = standing.control == Control::Discarded;
    row.isBad = !row.isOver && (standing.lost || !standing.withoutAction.empty());
    if (standing.lastReading && standing.lastMeasured)
        row.last = tr("last %1 at %2")
                       .arg(FoodWords::reading(*standing.lastReading),
                            words_.clock(*standing.lastMeasured));
    const bool isAfter = day.now > day.serve && !row.isOver && standing.control != Control::None;
    if (isAfter) row.leftover = tr("Left over: %1").arg(FoodWords::leftover(standing.leftover));
    for (const safety::Entry& entry : day.food.entries)
        if (const auto* kept = std::get_if<safety::PanKept>(&entry.fact);
            kept && kept->pan == card.pan && !entry.isTakenBack)
            row.leftover = tr("Kept at %1").arg(words_.clock(kept->at));
    row.mark = row.isOver                                              ? QStringLiteral("skipped")
               : standing.lost                                         ? QStringLiteral("late")
               : !standing.open.empty()                                ? QStringLiteral("over")
               : standing.control == Control::None                     ? QStringLiteral("waiting")
               : standing.time || standing.control == Control::Cooling ? QStringLiteral("running")
                                                                       : QStringLiteral("done");
    if (row.isOver || standing.lost) return row;
    const auto count = [&](Instant until, const QString& clock) {
        const TimeLeft left = Words::timeLeft(until - day.now);
        row.countdown = left.figure;
        row.unit = left.unit;
        row.clock = clock;
    };
    if (standing.control == Control::Time) {
        row.isClock = true;
        count(standing.time->discardAt, tr("to discard"));
    } else if (!standing.open.empty()) {
        count(standing.open.front().by, tr("to put it right"));
    } else if (standing.control == Control::Cooling) {
        row.isClock = true;
        count(standing.cooling->by,
              tr("to be at %1").arg(food_.figure(standing.cooling->next, day.food.limits)));
    } else if (standing.measureBy) {
        count(*standing.measureBy, tr("to the last moment to measure"));
    }
    return row;
}

std::vector<PanRow> FoodRecord::panRows(const app::Snapshot& day) const {
    std::vector<PanRow> rows;
    rows.reserve(day.food.pans.size());
    for (const app::FoodPanCard& card : day.food.pans)
        rows.push_back(panRow(card, day));
    std::stable_sort(rows.begin(), rows.end(), [](const PanRow& a, const PanRow& b) {
        const auto rank = [](const PanRow& row) { return row.isOver ? 2 : row.isBad ? 0 : 1; };
        return rank(a) < rank(b);
    });
    return rows;
}

std::vector<ForecastRow> FoodRecord::forecastRows(const app::Snapshot& day) const {
    std::vector<ForecastRow> rows;
    for (const live::HoldingWarning& warning : day.food.warnings)
        rows.push_back(
            {keyOf(warning.pan), food_.pan(warning.pan, day), food_.forecast(warning, day.now)});
    return rows;
}

EntryRow FoodRecord::entryRow(const safety::Entry& entry, const app::Snapshot& day) const {
    Said said = std::visit(Teller(food_, day), entry.fact);
    EntryRow row;
    row.key = keyOf(entry.id);
    row.when = words_.clock(safety::instantOf(entry.fact));
    row.about = std::move(said.about);
    row.what = std::move(said.what);
    row.value = std::move(said.value);
    for (const app::PersonCard& person : day.people)
        if (entry.person && person.id == *entry.person) row.by = toText(person.name);
    const auto* measured = std::get_if<safety::FoodMeasured>(&entry.fact);
    row.canCorrect = measured && !entry.isTakenBack && !day.isReadOnly;
    const auto later =
        std::find_if(day.food.entries.begin(), day.food.entries.end(), [&](const auto& other) {
            const auto* amended = std::get_if<safety::FoodMeasured>(&other.fact);
            return amended && !other.isTakenBack && amended->corrects == entry.id;
        });
    if (entry.isTakenBack) {
        row.note = tr("taken back at once; does not count");
    } else if (later != day.food.entries.end()) {
        row.canCorrect = false;
        row.note =
            tr("replaced by %1; does not count")
                .arg(FoodWords::reading(std::get<safety::FoodMeasured>(later->fact).reading));
    } else if (measured && measured->corrects) {
        row.note = tr("corrects an earlier entry: %1").arg(toText(measured->reason));
    }
    return row;
}

std::vector<EntryRow> FoodRecord::entryRows(const app::Snapshot& day) const {
    std::vector<EntryRow> rows;
    for (auto entry = day.food.entries.rbegin(); entry != day.food.entries.rend(); ++entry)
        rows.push_back(entryRow(*entry, day));
    return rows;
}

FoodTally FoodRecord::tallyOf(const app::Snapshot& day) const {
    FoodTally tally;
    tally.whoDecides = deference();
    tally.authority = toText(day.food.limits.authority());
    const auto open = toDo(day);
    for (const ToDo& one : open)
        if (one.check->due <= day.now) ++tally.dueCount;
    if (tally.dueCount > 0)
        tally.due = tr("%n due", nullptr, tally.dueCount);
    else if (!open.empty())
        tally.due = tr("next at %1").arg(words_.clock(open.front().check->due));
    for (const auto& row : checks_.rows())
        if (tally.band.isEmpty() && row.isDue && !row.isAtFire) {
            tally.band = tr("Measure: %1").arg(row.dish) + QStringLiteral(" · ") + row.limit;
            tally.bandCheck = row.key;
        }
    const bool isToLight = std::any_of(day.tasks.begin(), day.tasks.end(), [](const auto& card) {
        return card.kind == plan::TaskKind::Fire &&
               (card.state == app::TaskState::Waiting || card.state == app::TaskState::Ready);
    });
    const auto& asked = day.food.beforeFire;
    tally.asksFire = isToLight && std::any_of(asked.begin(), asked.end(), [](const auto& answer) {
                         return !answer.isAnswered();
                     });
    const auto done = std::count_if(day.food.checks.begin(), day.food.checks.end(),
                                    [](const auto& check) { return check.isDone; });
    tally.done = tr("%1 of %2 done").arg(done).arg(day.food.checks.size());
    if (day.food.withoutAction > 0) {
        for (const app::FoodPanCard& card : day.food.pans) {
            if (card.standing.withoutAction.empty()) continue;
            const QString pan = food_.pan(card.pan, day);
            tally.owedPan = keyOf(card.pan);
            tally.owed = card.standing.lastReading
                             ? tr("%1: %2, out of limit. Say what you do.")
                                   .arg(pan, FoodWords::reading(*card.standing.lastReading))
                             : tr("%1: out of limit. Say what you do.").arg(pan);
            break;
        }
        if (day.food.withoutAction > 1)
            tally.owed +=
                QLatin1Char(' ') + tr("And %n more.", nullptr, day.food.withoutAction - 1);
    }
    return tally;
}

}  // namespace cinder::face
