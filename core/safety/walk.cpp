#include "safety/walk.h"

#include <algorithm>

#include "safety/cooked.h"

namespace cinder::safety {

namespace {

bool isHotPurpose(Purpose purpose) {
    return purpose == Purpose::ArriveHot || purpose == Purpose::HoldHot;
}
bool isReheat(Purpose purpose) {
    return purpose == Purpose::Reheat || purpose == Purpose::ReheatPacked;
}
bool isColdPurpose(Purpose purpose) {
    return purpose == Purpose::ArriveCold || purpose == Purpose::HoldCold;
}

bool isHeating(Purpose purpose) {
    return isReheat(purpose) || purpose == Purpose::Cook;
}

}  // namespace

Standing Walk::run(Instant now) {
    for (const Moment& moment : history_.moments) {
        runDownTo(moment.at);
        std::visit(*this, moment.step);
        close(moment.at);
    }
    runDownTo(now);
    close(now);
    conclude(now);
    return std::move(standing_);
}

// --- time passes ---------------------------------------------------------------------------------

void Walk::lose(Lost::Why why, Instant at, std::optional<EntryId> entry) {
    if (!isOver()) standing_.lost = Lost{why, at, std::move(entry)};
}

std::optional<Instant> Walk::measureBy() const {
    const Duration gap = length(isRaw() ? Span::TimeControl : Span::HoldGap);
    switch (standing_.control) {
        case Control::None:
            for (const auto& since : {standing_.lastMeasured, rule_.since, seen_})
                if (since) return *since + gap;
            return std::nullopt;
        case Control::Cold:
        case Control::Hot:
            return *standing_.lastMeasured + gap;
        case Control::Time:
            if (standing_.time->rule != TimeRule::ColdLong) return std::nullopt;
            return *standing_.lastMeasured + gap;
        default:
            return std::nullopt;
    }
}

/// Loses the food at the first deadline that passed before `moment`.
void Walk::runDownTo(Instant moment) {
    close(moment);
    if (isOver()) return;
    std::optional<Lost> first;
    const auto pass = [&](Lost::Why why, Instant by, std::optional<EntryId> entry = {}) {
        if (moment > by && (!first || by < first->at)) first = Lost{why, by, std::move(entry)};
    };
    for (const OpenReading& open : standing_.open)
        pass(Lost::Why::OutOfControl, open.by, open.entry);
    if (const auto by = measureBy()) pass(Lost::Why::Gap, *by);
    if (standing_.control == Control::Cooling) pass(Lost::Why::CoolingSlow, standing_.cooling->by);
    // At the very moment the clock shows the food is out.
    if (standing_.control == Control::Time)
        pass(Lost::Why::TimeOver, standing_.time->discardAt - Duration{1});
    if (!first) return;
    if (first->why == Lost::Why::TimeOver) first->at = standing_.time->discardAt;
    standing_.lost = std::move(first);
}

// --- readings ------------------------------------------------------------------------------------

bool Walk::meetsAll(Degree degree, const Measured& measured) const {
    return std::all_of(measured.values.begin(), measured.values.end(),
                       [&](const Reading& value) { return limits_.meets(degree, value); });
}

bool Walk::isGood(Purpose purpose, const Reading& reading, std::optional<Duration> held) const {
    if (purpose == Purpose::Cook) return cookedBy(rule_.food, limits_, reading, held) != Cooked::No;
    const auto degree = limitOf(purpose, rule_.food, standing_.isRoast);
    return degree && limits_.meets(*degree, reading);
}

bool Walk::isGood(Purpose purpose, const Measured& measured) const {
    return std::all_of(measured.values.begin(), measured.values.end(),
                       [&](const Reading& value) { return isGood(purpose, value, measured.held); });
}

/// What a reading has to show: food that was raw until now must be cooked, food that was cold must
/// be reheated, whatever the person at the keypad called it; and only the first heating of a
/// sealed pack is one (3-403.11(C)). For food that does not cool.
Purpose Walk::meant(const Measured& measured) const {
    Purpose said = measured.purpose;
    // Nothing cools here. What is cold is held cold; anything else would have been hot before.
    if (said == Purpose::Cooling)
        said = standing_.control == Control::Cold ? Purpose::HoldCold : Purpose::HoldHot;
    if ((isHotPurpose(said) || isHeating(said)) && isRaw()) return Purpose::Cook;
    if (said == Purpose::ReheatPacked && !mayHeatPacked(standing_, rule_)) return Purpose::Reheat;
    const bool wasCold = standing_.control == Control::Cold;
    if (wasCold && (isHotPurpose(said) || said == Purpose::Cook)) return Purpose::Reheat;
    return said;
}

std::vector<Action> Walk::allowed(Purpose purpose, Instant at) const {
    if (purpose == Purpose::Cook) return {Action::CookOn, Action::Discard};
    if (isReheat(purpose)) return {Action::Reheat, Action::Discard};
    const bool isInTime = lastGood_ && at - *lastGood_ <= length(Span::TimeControl) - out_;
    if (!isInTime) return {Action::Discard};
    return {isColdPurpose(purpose) ? Action::Chill : Action::Reheat, Action::Discard};
}

void Walk::operator()(const Measured& measured) {
    standing_.lastReading = measured.values.back();
    if (isOver()) return;
    if (standing_.control == Control::Cooling) return cool(measured);
    if (standing_.control == Control::Time) return takeInTime(measured);
    if (!seen_) seen_ = measured.at;
    const Purpose purpose = meant(measured);
    if (isGood(purpose, measured)) {
        loseIfUnshown(purpose, measured);
        if (measured.isTrusted && !isOver()) takeGood(purpose, measured);
        return;
    }
    const auto bad =
        std::find_if(measured.values.begin(), measured.values.end(),
                     [&](const Reading& value) { return !isGood(purpose, value, measured.held); });
    takeBad(purpose, measured.entry, measured.at, *bad, allowed(purpose, measured.at));
    if (measured.isTrusted) standing_.lastMeasured = measured.at;
}

void Walk::takeInTime(const Measured& measured) {
    if (hasWarmest(standing_.time->rule) && !meetsAll(Degree::TimeWarmest, measured))
        return lose(Lost::Why::TooWarm, measured.at, measured.entry);
    if (!measured.isTrusted) return;
    standing_.lastMeasured = measured.at;
    if (isRaw() && meant(measured) == Purpose::Cook && isGood(Purpose::Cook, measured))
        standing_.isCooked = true;
}

void Walk::takeBad(Purpose purpose, const EntryId& entry, Instant at, const Reading& reading,
                   std::vector<Action> actions) {
    isOut_ = isOut_ || isOutOfHolding(purpose, reading);
    Instant by = at + length(Span::ReheatWithin);
    if (lastGood_) by = std::min(by, *lastGood_ + leftOut());
    standing_.open.push_back({entry, at, purpose, reading, std::move(actions), {}, by});
}

/// What is still being cooked or heated is on its way, with two hours of its own; food that was
/// held and is found below or above its holding has been out of limit.
bool Walk::isOutOfHolding(Purpose purpose, const Reading& reading) const {
    if (!isHeating(purpose)) return true;
    return isReheat(purpose) && standing_.control == Control::Hot &&
           !limits_.meets(hotHold(), reading);
}

/// Against food a reading speaks whether its thermometer is trusted or not.
void Walk::loseIfUnshown(Purpose purpose, const Measured& measured) {
    if (isColdPurpose(purpose) && standing_.control == Control::Hot)
        return lose(Lost::Why::CoolingUnrecorded, measured.at, measured.entry);
    const bool isSlow = isReheat(purpose) && standing_.control == Control::Cold && lastGood_ &&
                        measured.at - *lastGood_ > length(Span::ReheatWithin);
    if (isSlow) lose(Lost::Why::OutOfControl, measured.at, measured.entry);
}

void Walk::takeGood(Purpose purpose, const Measured& measured) {
    if (purpose == Purpose::Cook) {
        standing_.isCooked = true;
        standing_.isRoast =
            std::any_of(measured.values.begin(), measured.values.end(), [&](const Reading& value) {
                return cookedBy(rule_.food, limits_, value, measured.held) == Cooked::ByRoastChart;
            });
    }
    standing_.lastMeasured = measured.at;
    standing_.control = isColdPurpose(purpose) ? Control::Cold : Control::Hot;
    if (standing_.control == Control::Hot && (!lastHot_ || meetsAll(coolStart(), measured)))
        lastHot_ = measured.at;
    answer(purpose, measured);
    close(measured.at);
    if (standing_.open.empty()) lastGood_ = measured.at;
}

// --- corrective action ---------------------------------------------------------------------------

/// Whether a good reading shows that an action worked. Hot is hot: what it was called at the
/// keypad does not make it less.
bool Walk::shows(Action action, Purpose good, const Measured& measured) const {
    const bool isHot = isHotPurpose(good) || isHeating(good);
    switch (action) {
        case Action::CookOn:
            return good == Purpose::Cook || (isHot && isGood(Purpose::Cook, measured));
        case Action::Reheat:
            return isReheat(good) || (isHot && meetsAll(Degree::Reheat, measured));
        case Action::Chill:
            return isColdPurpose(good);
        case Action::Discard:
            return false;
    }
    return false;
}

void Walk::answer(Purpose purpose, const Measured& measured) {
    for (const OpenReading& open : standing_.open)
        for (const Action action : open.allowed)
            if (shows(action, purpose, measured)) answered_.emplace(open.entry, measured.at);
}

void Walk::close(Instant now) {
    for (OpenReading& open : standing_.open) {
        const auto [first, last] = history_.actions.equal_range(open.entry);
        for (auto one = first; one != last; ++one) {
            const auto& [action, at] = std::pair(one->second.action, one->second.at);
            const bool isAllowed =
                std::find(open.allowed.begin(), open.allowed.end(), action) != open.allowed.end();
            if (!isAllowed || at > now) continue;
            if (action == Action::Discard) standing_.control = Control::Discarded;
            if (open.taken && action != Action::Discard) continue;
            open.taken = action;
            acted_[open.entry] = at;
        }
    }
    if (isOver()) return;
    std::optional<Instant> last;
    const auto isClosed = [&](const OpenReading& open) {
        const auto answered = answered_.find(open.entry);
        if (!open.taken || answered == answered_.end() || acted_.at(open.entry) > open.by)
            return false;
        last = std::max(last.value_or(answered->second), answered->second);
        return true;
    };
    standing_.open.erase(std::remove_if(standing_.open.begin(), standing_.open.end(), isClosed),
                         standing_.open.end());
    if (!standing_.open.empty() || !last) return;
    // Time out of limit is never given back: total, then discard (USDA FSIS, 2-hour rule; FDA Food
    // Code 2022, 3-501.19 for the four hours).
    if (isOut_ && lastGood_ && *last > *lastGood_) out_ += *last - *lastGood_;
    isOut_ = false;
    lastGood_ = std::max(lastGood_.value_or(*last), *last);
}

// --- time control and cooling --------------------------------------------------------------------

bool Walk::isGoodStart(const TimeStart& start) const {
    const Reading& reading = start.left.reading;
    const bool isFresh = start.left.rule == TimeRule::Fresh;
    // What was kept cold, and all meat, fish and egg, starts as cold food does.
    const bool mustBeCold =
        isFresh && (standing_.control != Control::None || !mayBeFresh(rule_.food));
    return start.isTrusted && limits_.meets(startOf(start.left.rule), reading) &&
           (!isFresh || limits_.meets(Degree::TimeWarmest, reading)) &&
           (!mustBeCold || limits_.meets(Degree::TimeStartCold, reading));
}

void Walk::operator()(const TimeStart& start) {
    const ControlLeft& left = start.left;
    standing_.lastReading = left.reading;
    if (isOver()) return;
    const Instant discardAt = left.at + length(spanOf(left.rule));
    if (standing_.control == Control::Time) {  // the clock runs already; it can only get shorter
        const bool isTooWarm =
            hasWarmest(standing_.time->rule) && !limits_.meets(Degree::TimeWarmest, left.reading);
        if (isTooWarm) return lose(Lost::Why::TooWarm, left.at, start.entry);
        standing_.time->discardAt = std::min(standing_.time->discardAt, discardAt);
        return;
    }
    if (left.rule == TimeRule::Hot && isRaw())
        return lose(Lost::Why::CookUnrecorded, left.at, start.entry);
    if (left.rule == TimeRule::Hot && standing_.control == Control::Cold)
        return lose(Lost::Why::ReheatUnrecorded, left.at, start.entry);
    const bool wasHot = standing_.control == Control::Hot || standing_.control == Control::Cooling;
    if (left.rule != TimeRule::Hot && wasHot)
        return lose(Lost::Why::CoolingUnrecorded, left.at, start.entry);
    if (standing_.control == Control::Cooling)
        return lose(Lost::Why::CoolingSlow, left.at, start.entry);
    if (!isGoodStart(start))
        takeBad(left.rule == TimeRule::Hot ? Purpose::HoldHot : Purpose::HoldCold, start.entry,
                left.at, left.reading, {Action::Discard});
    standing_.control = Control::Time;
    standing_.time = TimeClock{left.rule, left.at, discardAt};
    standing_.lastMeasured = left.at;
}

void Walk::operator()(const CoolingBegun& begun) {
    if (isOver()) return;
    const bool isHot = standing_.control == Control::Hot;
    if (!isHot && standing_.control != Control::None) return;
    const bool isAmbient = begun.route == CoolingRoute::Ambient && !isHot;
    CoolingClock clock;
    clock.route = isAmbient ? CoolingRoute::Ambient : CoolingRoute::Cooked;
    clock.started = isHot ? *lastHot_ : begun.at;
    clock.next = isAmbient ? Degree::CoolEnd : Degree::CoolMiddle;
    clock.by = clock.started + length(isAmbient ? Span::CoolAmbientWithin : Span::CoolMiddleWithin);
    hasFallen_ = false;
    standing_.cooling = clock;
    standing_.control = Control::Cooling;
}

void Walk::cool(const Measured& measured) {
    if (!measured.isTrusted) return;
    CoolingClock& clock = *standing_.cooling;
    standing_.lastMeasured = measured.at;
    if (clock.route == CoolingRoute::Cooked) {
        const bool isAbove = meetsAll(coolStart(), measured);
        if (isAbove && !hasFallen_) {
            lastHot_ = clock.started = measured.at;
            clock.by = measured.at + length(Span::CoolMiddleWithin);
            return;
        }
        const bool isWarmer = clock.hasPassedMiddle && !meetsAll(Degree::CoolMiddle, measured);
        // Nothing shows how long food that was never seen hot has been on its way down.
        if (isAbove || isWarmer || !lastHot_)
            return lose(Lost::Why::CoolingSlow, measured.at, measured.entry);
        hasFallen_ = true;
        if (!clock.hasPassedMiddle && meetsAll(Degree::CoolMiddle, measured)) {
            clock.hasPassedMiddle = true;
            clock.next = Degree::CoolEnd;
            clock.by = clock.started + length(Span::CoolEndWithin);
        }
    }
    if (meetsAll(Degree::CoolEnd, measured)) endCooling(measured.at);
}

void Walk::endCooling(Instant at) {
    standing_.cooling->ended = at;
    standing_.control = Control::Cold;
    if (standing_.open.empty()) lastGood_ = at;
}

void Walk::operator()(const PanDiscarded&) {
    standing_.control = Control::Discarded;
}

// --- the end -------------------------------------------------------------------------------------

void Walk::conclude(Instant now) {
    Standing& s = standing_;
    for (const OpenReading& open : s.open)
        if (!open.taken) s.withoutAction.push_back(open.entry);
    if (!isOver()) s.measureBy = measureBy();
    const bool isSound = !s.lost && s.open.empty();
    if (isSound && s.control == Control::Cold) s.leftover = Leftover::Keep;
    // Begun later than the first stage lasts it would be lost at once.
    const bool mayCool =
        s.control == Control::Hot && now <= *lastHot_ + length(Span::CoolMiddleWithin);
    // Nor does anything show that food nobody saw hot is on its way down.
    const bool isCooling =
        s.control == Control::Cooling && (lastHot_ || s.cooling->route == CoolingRoute::Ambient);
    if (isSound && (mayCool || isCooling)) s.leftover = Leftover::Cool;
    s.mayServe = isSound && !isRaw() &&
                 (s.control == Control::Cold || s.control == Control::Hot ||
                  (s.control == Control::Time && now < s.time->discardAt));
}

}  // namespace cinder::safety
