#include "food_closing.h"

#include <algorithm>
#include <cmath>

#include "safety/standing.h"
#include "settings.h"

namespace cinder::face {

namespace {

using safety::Purpose;
using safety::TimeRule;

/// What food may be measured at in degrees Celsius; a slip of the finger lies outside.
constexpr double kColdest = -17.7;
/// What a thermometer in ice water may show.
constexpr double kHottestTest = 150;
constexpr double kHottestLimit = 120;

/// Whether the way back that is offered takes back that entry: it is one of the record, and nothing
/// was written there since.
bool isTakenBackNext(const safety::EntryId& entry, const app::Snapshot& day) {
    if (!day.undo || day.undo->what != app::UndoOffer::What::Record) return false;
    const auto& all = day.food.entries;
    const auto newest = std::find_if(all.rbegin(), all.rend(),
                                     [](const safety::Entry& one) { return !one.isTakenBack; });
    return newest != all.rend() && newest->id == entry;
}

}  // namespace

QString keyOf(const safety::Pan& pan) {
    return toText(pan.dish.text()) + QLatin1Char('#') + QString::number(pan.number);
}

safety::Pan panOf(const QString& key) {
    const auto cut = key.lastIndexOf(QLatin1Char('#'));
    return {DishId(key.left(cut).toStdString()), key.mid(cut + 1).toInt()};
}

QString keyOf(const safety::EntryId& entry) {
    return toText(entry.device.text()) + QLatin1Char('#') + QString::number(entry.sequence);
}

safety::EntryId entryOf(const QString& key) {
    const auto cut = key.lastIndexOf(QLatin1Char('#'));
    return {DeviceId(key.left(cut).toStdString()), key.mid(cut + 1).toULongLong()};
}

FoodEntry::FoodEntry(FoodDoor& door, Settings& settings, const FoodWords& words, QObject* parent)
    : QObject(parent), door_(door), settings_(settings), words_(words) {}

void FoodEntry::show(std::shared_ptr<const app::Snapshot> day) {
    day_ = std::move(day);
    if (!day_) step_ = Step::Closed;
    // Taken back, or answered on another device: nothing is asked any more.
    if (step_ == Step::Act && !open()) step_ = Step::Closed;
    tell();
}

const app::FoodPanCard* FoodEntry::card() const {
    if (!day_) return nullptr;
    for (const app::FoodPanCard& card : day_->food.pans)
        if (card.pan == pan_) return &card;
    return nullptr;
}

const safety::OpenReading* FoodEntry::open() const {
    const app::FoodPanCard* card = this->card();
    if (!card) return nullptr;
    for (const safety::OpenReading& open : card->standing.open)
        if (!open.taken) return &open;
    return nullptr;
}

// --- what opens the sheet ------------------------------------------------------------------------

void FoodEntry::begin(Mode mode) {
    mode_ = mode;
    refusal_.clear();
    from_.reset();
    const double hottest = mode == Mode::IcePoint ? kHottestTest : safety::kHottestFood.celsius();
    number_.begin(NumberEntry::Kind::Temperature, kColdest, hottest, settings_.isFahrenheit());
    go(Step::Keys);
}

void FoodEntry::measureCheck(const QString& name) {
    if (!day_) return;
    for (const safety::PlannedCheck& check : day_->food.checks) {
        if (toText(check.name) != name) continue;
        pan_ = panToRead(check);
        purpose_ = check.purpose;
        // What was cooled is not hot again because the plan says so.
        const app::FoodPanCard* card = this->card();
        const bool isHold = check.purpose == Purpose::HoldHot || check.purpose == Purpose::HoldCold;
        // Nor is what is being reheated, chilled or cooked on read as held.
        const bool isMended = card && !card->standing.open.empty();
        if (isMended || (card && isHold && card->standing.cooling)) purpose_ = card->nextPurpose;
        return begin(Mode::Measure);
    }
}

void FoodEntry::openPan(const QString& key) {
    pan_ = panOf(key);
    refusal_.clear();
    if (card()) go(open() ? Step::Act : Step::Deeds);
}

void FoodEntry::answer(const QString& key) {
    pan_ = panOf(key);
    refusal_.clear();
    if (open()) go(Step::Act);
}

void FoodEntry::correct(const QString& key) {
    entry_ = entryOf(key);
    if (!day_) return;
    for (const safety::Entry& entry : day_->food.entries) {
        const auto* measured = std::get_if<safety::FoodMeasured>(&entry.fact);
        if (entry.id != entry_ || !measured) continue;
        pan_ = measured->pan;
        purpose_ = measured->purpose;
        thermometer_ = measured->thermometer;
        begin(Mode::Correct);
    }
}

void FoodEntry::testThermometer(const QString& thermometer) {
    if (!thermometer.isEmpty()) thermometer_ = safety::ThermometerId(thermometer.toStdString());
    begin(Mode::IcePoint);
}

void FoodEntry::makeStricter(const QString& limit) {
    if (!day_) return;
    limit_ = limit.toStdString();
    const safety::Limits& limits = day_->food.limits;
    begin(Mode::Rule);
    for (const safety::DegreeLimit& one : safety::publishedDegrees()) {
        if (one.field != limit_) continue;
        const double figure = limits.figure(one.degree, words_.scale()).celsius();
        const bool isLeast = one.sense == safety::Sense::AtLeast;
        number_.begin(NumberEntry::Kind::Temperature, isLeast ? figure : kColdest,
                      isLeast ? kHottestLimit : figure, settings_.isFahrenheit());
    }
    for (const safety::SpanLimit& one : safety::publishedSpans())
        if (one.field == limit_)
            number_.begin(
                NumberEntry::Kind::Minutes, 1,
                std::chrono::duration<double, std::ratio<60>>(limits.length(one.span)).count(),
                settings_.isFahrenheit());
    tell();
}

safety::LocalRules FoodEntry::stricter(const std::string& authority) const {
    safety::LocalRules rules = day_->food.limits.rules();
    rules.authority = authority;
    std::erase_if(rules.limits, [&](const auto& one) { return one.field == limit_; });
    const bool isDegree =
        std::any_of(safety::publishedDegrees().begin(), safety::publishedDegrees().end(),
                    [&](const auto& one) { return one.field == limit_; });
    if (isDegree)
        rules.limits.push_back({limit_, typed()});
    else
        rules.limits.push_back(
            {limit_, Duration(std::chrono::minutes(std::lround(number_.value())))});
    return rules;
}

// --- on the sheet --------------------------------------------------------------------------------

void FoodEntry::go(Step step) {
    if (step == Step::Keys) meant_.reset();
    if (step == Step::Closed || step == Step::Deeds || step == Step::Act) from_.reset();
    step_ = step;
    tell();
}

void FoodEntry::askPan() {
    go(Step::Pans);
}
void FoodEntry::askPurpose() {
    go(Step::Purposes);
}
void FoodEntry::askThermometer() {
    go(Step::Thermometers);
}

void FoodEntry::close() {
    if (open() && step_ == Step::Act) return;
    const bool isAside = step_ == Step::Pans || step_ == Step::Origins || step_ == Step::Purposes ||
                         step_ == Step::Thermometers || step_ == Step::Scale ||
                         step_ == Step::Held || step_ == Step::Reasons;
    go(isAside ? Step::Keys : Step::Closed);
}

void FoodEntry::leave() {
    go(Step::Closed);
}

void FoodEntry::choose(const QString& key) {
    switch (step_) {
        case Step::Pans:
            return choosePan(panOf(key));
        case Step::Origins:
            from_.reset();
            if (const int number = panOf(key).number; number > 0) from_ = number;
            return go(Step::Keys);
        case Step::Purposes:
            if (mode_ == Mode::Leave)
                rule_ = static_cast<TimeRule>(key.toInt());
            else
                purpose_ = static_cast<Purpose>(key.toInt());
            return go(Step::Keys);
        case Step::Thermometers:
            thermometer_ = safety::ThermometerId(key.toStdString());
            return go(Step::Keys);
        case Step::Scale:
            meant_ = key == QLatin1String("other") ? otherScale() : typed();
            return writeOrAskHeld();
        case Step::Held:
            return take(write({}, key == QLatin1String("kept") ? std::optional(rowToKeep()->hold)
                                                               : std::nullopt));
        case Step::Reasons:
            return take(write(key.toStdString()));
        case Step::Deeds:
            return doDeed(key);
        case Step::Act:
            if (const auto* reading = open())
                take(door_.takeAction(reading->entry, static_cast<safety::Action>(key.toInt())));
            return;
        default:
            return;
    }
}

void FoodEntry::sayInWords(const QString& words) {
    if (step_ != Step::Reasons || words.trimmed().isEmpty()) return;
    take(write(words.trimmed().toStdString()));
}

safety::Reading FoodEntry::typed() const {
    if (meant_) return *meant_;
    const bool isFahrenheit = number_.unitWord().endsWith(QLatin1Char('F'));
    return {Temperature::fromCelsius(number_.value()),
            isFahrenheit ? safety::Scale::Fahrenheit : safety::Scale::Celsius};
}

Taken FoodEntry::write(const std::string& reason, std::optional<Duration> held) {
    switch (mode_) {
        case Mode::Measure:
            return door_.measure(pan_, purpose_, typed(), thermometer_, held, from_);
        case Mode::Leave:
            return door_.leaveControl(pan_, rule_, typed(), thermometer_, from_);
        case Mode::IcePoint:
            return door_.testThermometer(thermometer_, typed());
        case Mode::Correct:
            return door_.correct(entry_, typed(), reason);
        case Mode::Rule:
            return door_.nameLocalRules(stricter(reason));
    }
    return {};
}

void FoodEntry::save() {
    if (step_ != Step::Keys || !number_.isReady()) return;
    if (mode_ == Mode::Correct || mode_ == Mode::Rule) return go(Step::Reasons);
    if (otherScale()) return go(Step::Scale);
    writeOrAskHeld();
}

void FoodEntry::writeOrAskHeld() {
    // A lower temperature is enough where it was kept for the time of a published row.
    if (rowToKeep()) return go(Step::Held);
    take(write({}));
}

void FoodEntry::take(const Taken& taken) {
    refusal_ = taken ? QString() : Words::refusal(taken.error());
    if (!taken) return tell();
    // The scale of the thermometer in hand is the one it will be read on next time.
    if (step_ == Step::Keys || step_ == Step::Scale)
        settings_.setFahrenheit(typed().scale == safety::Scale::Fahrenheit);
    step_ = Step::Closed;
    Q_EMIT noted();
    settle();
}

/// After an entry: a reading out of limit is not left without its action.
void FoodEntry::settle() {
    if (mode_ == Mode::IcePoint || mode_ == Mode::Rule) return tell();
    // What is said of the dish as a whole may be out of limit for any of its pans.
    if (day_ && !open() && pan_.number == 0)
        for (const app::FoodPanCard& card : day_->food.pans)
            if (card.pan.dish == pan_.dish && !card.standing.withoutAction.empty()) pan_ = card.pan;
    go(open() ? Step::Act : Step::Closed);
}

// --- what it says --------------------------------------------------------------------------------

void FoodEntry::tell() {
    choices_.show(rows());
    if (Asking next = asking(); !(next == ask_)) {
        ask_ = std::move(next);
        Q_EMIT asked();
    }
}

Asking FoodEntry::asking() const {
    Asking ask;
    if (step_ == Step::Closed || !day_) return ask;
    ask.step = step_ == Step::Keys  ? QStringLiteral("keys")
               : step_ == Step::Act ? QStringLiteral("act")
                                    : QStringLiteral("choose");
    const bool isIce = mode_ == Mode::IcePoint && step_ != Step::Deeds && step_ != Step::Act;
    ask.title = isIce ? tr("Ice and water, stirred") : words_.pan(pan_, *day_);
    if (from_) ask.title = tr("%1, out of pan %2").arg(ask.title).arg(*from_);
    ask.pan = FoodWords::panNumber(pan_.number);
    ask.thermometer = FoodWords::thermometer(thermometer_);
    if (mode_ == Mode::Rule) ask.title = nameOfLimit(limit_);
    ask.hasThermometer = mode_ != Mode::Rule;
    ask.hasPan = !isIce && mode_ != Mode::Correct && mode_ != Mode::Rule;
    ask.hasPurpose = ask.hasPan;
    ask.refusal = refusal_;
    sayLimit(ask);
    switch (step_) {
        case Step::Pans:
            ask.question = tr("Which pan?");
            break;
        case Step::Origins:
            ask.question = tr("Out of which pan was it filled?");
            break;
        case Step::Purposes:
            ask.question =
                mode_ == Mode::Leave ? tr("Which time control?") : tr("What does it show?");
            break;
        case Step::Thermometers:
            ask.question = tr("Which thermometer?");
            break;
        case Step::Scale:
            ask.question =
                tr("%1: is that the scale it was read on?").arg(FoodWords::reading(typed()));
            break;
        case Step::Held:
            ask.question = tr("%1 is below the limit. Was it kept there long enough?")
                               .arg(FoodWords::reading(typed()));
            break;
        case Step::Reasons:
            ask.takesWords = true;
            ask.question = mode_ == Mode::Rule ? tr("Whose rule is it?") : tr("Why is it amended?");
            break;
        case Step::Deeds:
            ask.question = card() ? words_.standing(card()->standing) : QString();
            break;
        default:
            break;
    }
    if (const auto* reading = open(); reading && step_ == Step::Act) {
        ask.mayClose = false;
        ask.isOwnUndo = isTakenBackNext(reading->entry, *day_);
        ask.finding = tr("%1 is out of limit.").arg(FoodWords::reading(reading->reading));
        ask.question = tr("What will you do?");
        ask.purpose = FoodWords::purpose(reading->purpose);
        if (const auto degree =
                safety::limitOf(reading->purpose, card()->food, card()->standing.isRoast))
            ask.limit = words_.limit(*degree, day_->food.limits);
    }
    return ask;
}

void FoodEntry::sayLimit(Asking& ask) const {
    const safety::Limits& limits = day_->food.limits;
    if (mode_ == Mode::IcePoint) {
        ask.purpose = tr("Ice point");
        ask.limit = words_.icePoint();
        return;
    }
    if (mode_ == Mode::Rule) {
        ask.purpose = tr("Stricter than published");
        for (const safety::DegreeLimit& one : safety::publishedDegrees())
            if (one.field == limit_) ask.limit = words_.limit(one.degree, limits);
        return;
    }
    if (mode_ == Mode::Leave) {
        ask.purpose = FoodWords::rule(rule_, limits);
        ask.limit = words_.limit(safety::startOf(rule_), limits);
        return;
    }
    ask.purpose = mode_ == Mode::Correct ? tr("Amends: %1").arg(FoodWords::purpose(purpose_))
                                         : FoodWords::purpose(purpose_);
    const app::FoodPanCard* card = this->card();
    const auto food = card ? card->food : event::Food::Plant;
    if (purpose_ == Purpose::Cooling && card && card->standing.cooling)
        ask.limit = words_.limit(card->standing.cooling->next, limits);
    else if (const auto degree = safety::limitOf(purpose_, food, card && card->standing.isRoast))
        ask.limit = words_.limit(*degree, limits);
}

}  // namespace cinder::face
