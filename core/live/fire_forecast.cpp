#include "live/fire_forecast.h"

#include <algorithm>
#include <set>

#include "live/cook_batch.h"

namespace cinder::live {

namespace {

constexpr Duration kCurveEvery = std::chrono::minutes(1);
/// The picture goes on past the likely pull, so that its band can be seen.
constexpr Duration kCurveBeyond = std::chrono::minutes(10);

const TaskFacts& factsOf(const Day& day, const TaskId& task) {
    static const TaskFacts none;
    const auto found = day.tasks.find(task);
    return found == day.tasks.end() ? none : found->second;
}

const BatchFacts& batchFactsOf(const Day& day, const TaskId& task) {
    static const BatchFacts none;
    const auto found = day.batches.find(task);
    return found == day.batches.end() ? none : found->second;
}

const GrateFacts& grateFactsOf(const Day& day, const ResourceId& grate) {
    static const GrateFacts none;
    const auto found = day.grates.find(grate);
    return found == day.grates.end() ? none : found->second;
}

/// Facts and estimate of a batch, before any model.
BatchForecast reportOf(const Day& day, OnGrate batch) {
    const TaskFacts& task = factsOf(day, batch.task);
    const BatchFacts& facts = batchFactsOf(day, batch.task);
    BatchForecast made;
    made.laid = facts.laid ? std::optional(facts.laid->at) : task.started;
    made.over = task.finished;
    if (!made.over && task.skipped) made.over = task.skipped;
    if (made.laid && made.over) made.over = std::max(*made.over, *made.laid);
    const auto model = meatModelOf(batch);
    made.missing.notMeat = !model;
    made.missing.fire = fireReadings(grateFactsOf(day, batch.grate)).empty();
    made.missing.start = !facts.laid;
    made.missing.thickness = batch.kinds.front().thickness <= Length{};
    if (model) made.minimum = cook::safeMinimum(model->minimumOf);
    made.pullAt = pullTargetOf(batch);

    for (const plan::GratePiece& described : batch.pieces) {
        PieceForecast piece;
        piece.number = described.number;
        piece.kind = described.kind;
        piece.pulled = made.over;
        if (const auto found = facts.pieces.find(described.number); found != facts.pieces.end()) {
            const PieceFacts& told = found->second;
            if (told.pulled) piece.pulled = told.pulled;
            piece.pan = told.pan;
            if (!told.moves.empty()) piece.isOnCoolSide = told.moves.rbegin()->second;
            if (!told.readings.empty()) {
                piece.lastReadAt = told.readings.rbegin()->first;
                piece.lastReading = told.readings.rbegin()->second.temperature;
            }
            if (!told.judgements.empty()) piece.lastJudgement = told.judgements.rbegin()->second;
        }
        if (made.laid && !piece.pulled) {
            const auto at = [&](Duration lasts) {
                return *made.laid + std::max(lasts - batch.takeOff, Duration{0});
            };
            const event::Estimate& estimate = batch.duration;
            piece.pull =
                cook::Band<Instant>{at(estimate.low), at(estimate.usual), at(estimate.high)};
        }
        made.pieces.push_back(piece);
    }
    made.batch = std::move(batch);
    return made;
}

/// Half of a turning interval, in whole minutes where it is more than one.
Duration halfOf(Duration every) {
    const auto whole = std::chrono::floor<std::chrono::minutes>(every / 2);
    return whole.count() > 0 ? Duration(whole) : every / 2;
}

/// The piece that stands for its class in the picture.
std::optional<std::int32_t> drawnPieceOf(const BatchForecast& made, const BatchFacts& facts,
                                         std::int32_t kind) {
    std::optional<std::int32_t> drawn;
    std::size_t most = 0;
    for (const PieceForecast& piece : made.pieces) {
        if (piece.kind != kind) continue;
        const auto told = facts.pieces.find(piece.number);
        const std::size_t read = told == facts.pieces.end() ? 0 : told->second.readings.size();
        if (!drawn || read > most) {
            drawn = piece.number;
            most = read;
        }
    }
    return drawn;
}

void addKinds(const BatchFacts& facts, const cook::FittedBatch* fitted, BatchForecast& made) {
    for (std::size_t k = 0; k < made.batch.kinds.size(); ++k) {
        KindForecast kind;
        kind.kind = static_cast<std::int32_t>(k);
        for (const PieceForecast& piece : made.pieces) {
            if (piece.kind != kind.kind) continue;
            ++kind.pieces;
            if (piece.pulled) ++kind.pulled;
            if (!kind.pull) kind.pull = piece.pull;
        }
        kind.drawnPiece = drawnPieceOf(made, facts, kind.kind);
        if (fitted && kind.drawnPiece) {
            const Instant until =
                kind.pull ? kind.pull->high + kCurveBeyond : *made.laid + made.batch.duration.high;
            if (auto curve = fitted->coreCurve({*kind.drawnPiece}, until, kCurveEvery))
                kind.curve = std::move(*curve);
            const Duration every = made.batch.turnEvery;
            const Duration intervals[] = {halfOf(every), every, every * 2};
            if (auto turning = fitted->turningEffect({*kind.drawnPiece}, intervals))
                kind.turning = std::move(*turning);
        }
        made.kinds.push_back(std::move(kind));
    }
}

/// From laying to the last pull as drawn for the whole batch, and the time to take off.
cook::Band<Duration> lengthOf(const cook::Band<Instant>& last, Instant laid, Duration takeOff) {
    return {last.low - laid + takeOff, last.likely - laid + takeOff, last.high - laid + takeOff};
}

void setLasting(BatchForecast& made) {
    const std::optional<Instant> last = made.lastPull();
    if (!made.isForecast || !last || !made.laid || !made.spread) return;
    made.lasts = lengthOf(made.spread->last, *made.laid, made.batch.takeOff);
}

/// Whether the model brings a piece that is still on the grate to its target; when none is, there
/// is nothing to bring.
bool reachesAny(const cook::BatchForecast& forecast, const BatchForecast& made) {
    bool isOnGrate = false;
    for (std::size_t i = 0; i < made.pieces.size() && i < forecast.pieces.size(); ++i) {
        if (made.pieces[i].pulled) continue;
        if (forecast.pieces[i].pull) return true;
        isOnGrate = true;
    }
    return !isOnGrate;
}

/// Puts the model's word in place of the estimate.
void takeOver(const cook::BatchForecast& forecast, BatchForecast& made) {
    made.isForecast = true;
    made.spread = forecast.spread;
    made.fireFactor = forecast.fireFactor;
    for (std::size_t i = 0; i < made.pieces.size() && i < forecast.pieces.size(); ++i) {
        if (!made.pieces[i].pulled) made.pieces[i].pull = forecast.pieces[i].pull;
        made.pieces[i].carryOver = forecast.pieces[i].carryOver;
    }
}

void forecastLaid(const Day& day, BatchForecast& made) {
    const BatchFacts& facts = batchFactsOf(day, made.batch.task);
    std::optional<cook::FittedBatch> fitted;
    if (made.laid && !made.missing.any()) {
        CookBatch cooked =
            cookBatchOf({made.batch, facts, factsOf(day, made.batch.task), *made.laid, made.over},
                        fireReadings(grateFactsOf(day, made.batch.grate)));
        made.readingsSetAside = cooked.setAside;
        if (auto fit = cook::FittedBatch::fit(std::move(cooked.batch)); !fit) {
            made.missing.refused = fit.error();
        } else if (const auto forecast = fit->forecast(); reachesAny(forecast, made)) {
            takeOver(forecast, made);
            fitted.emplace(std::move(*fit));
        } else {
            made.missing.isNeverReached = true;
        }
    }
    addKinds(facts, fitted ? &*fitted : nullptr, made);
    setLasting(made);
}

/// A batch to come lasts as its brother on the same kind of fire does: the same meat, and the fire
/// as the brother's readings have shown it.
void forecastToCome(const Day& day, const BatchForecast& brother, BatchForecast& made) {
    if (made.laid || made.missing.fire || made.missing.thickness || made.missing.notMeat) return;
    BatchFacts assumed;
    assumed.laid = batchFactsOf(day, brother.batch.task).laid;
    if (!assumed.laid) return;
    cook::FireReading fire = fireReadings(grateFactsOf(day, made.batch.grate)).back();
    fire.belief.atHundred.wattsPerSquareMetre *= brother.fireFactor.likely;
    const CookBatch cooked =
        cookBatchOf({made.batch, assumed, TaskFacts{}, fire.at, std::nullopt}, {fire});
    const auto fit = cook::FittedBatch::fit(cooked.batch);
    if (!fit) return;
    const cook::BatchForecast forecast = fit->forecast();
    const bool isReached = std::all_of(forecast.pieces.begin(), forecast.pieces.end(),
                                       [](const auto& piece) { return piece.pull.has_value(); });
    if (isReached && forecast.spread)
        made.lasts = lengthOf(forecast.spread->last, fire.at, made.batch.takeOff);
}

/// The batch of the same dish that was laid last and is forecast.
const BatchForecast* brotherOf(const BatchForecast& batch,
                               const std::vector<BatchForecast>& batches) {
    const BatchForecast* brother = nullptr;
    for (const BatchForecast& other : batches) {
        if (!other.isForecast || other.batch.dish != batch.batch.dish) continue;
        if (!brother || *other.laid > *brother->laid) brother = &other;
    }
    return brother;
}

/// Where each batch begins: at the first stretch that was free when it was laid. With none free the
/// crew has made room somehow; it is drawn at the far end.
void setBeginnings(const Day& day, std::vector<BatchForecast>& batches) {
    std::vector<BatchForecast*> laid;
    for (BatchForecast& batch : batches)
        if (batch.laid) laid.push_back(&batch);
    std::stable_sort(laid.begin(), laid.end(), [](const BatchForecast* a, const BatchForecast* b) {
        return *a->laid < *b->laid;
    });
    for (std::size_t i = 0; i < laid.size(); ++i) {
        BatchForecast& mine = *laid[i];
        const event::Grate* grate = plan::findGrate(*day.event, mine.batch.grate);
        const Length room = grate->length - grate->coolSide;
        std::vector<std::pair<Length, Length>> taken;
        for (std::size_t k = 0; k < i; ++k) {
            const BatchForecast& other = *laid[k];
            const bool isThere = !other.over || *other.over > *mine.laid;
            if (isThere && other.batch.grate == mine.batch.grate)
                taken.emplace_back(other.begin, other.begin + other.batch.usedLength + grate->gap);
        }
        std::sort(taken.begin(), taken.end());
        Length begin;
        for (const auto& [from, to] : taken)
            if (begin + mine.batch.usedLength + grate->gap > from) begin = std::max(begin, to);
        if (begin + mine.batch.usedLength > room)
            begin = std::max(room - mine.batch.usedLength, Length{});
        mine.begin = begin;
    }
}

/// Nothing new was said that could change the forecast of this batch.
bool isUnchanged(const Day& day, const Day& before, const OnGrate& batch) {
    return factsOf(day, batch.task) == factsOf(before, batch.task) &&
           batchFactsOf(day, batch.task) == batchFactsOf(before, batch.task) &&
           grateFactsOf(day, batch.grate) == grateFactsOf(before, batch.grate);
}

}  // namespace

std::optional<Instant> BatchForecast::nextPull() const {
    std::optional<Instant> next;
    for (const PieceForecast& piece : pieces)
        if (piece.pull) next = std::min(next.value_or(piece.pull->likely), piece.pull->likely);
    return next;
}

std::optional<Instant> BatchForecast::lastPull() const {
    std::optional<Instant> last;
    for (const PieceForecast& piece : pieces) {
        // A piece the fire will not bring to its target has no instant, and so has the batch.
        if (!piece.pull && !piece.pulled) return std::nullopt;
        const Instant at = piece.pulled ? *piece.pulled : piece.pull->likely;
        last = std::max(last.value_or(at), at);
    }
    return last;
}

const BatchForecast* FireForecast::find(const TaskId& task) const {
    for (const BatchForecast& batch : batches)
        if (batch.batch.task == task) return &batch;
    return nullptr;
}

FireForecast forecastFire(const Day& day, const Day* dayBefore, const FireForecast* before) {
    FireForecast made;
    const bool isSameEvent = dayBefore && before && dayBefore->event == day.event;
    std::set<TaskId> unchanged;
    for (OnGrate& batch : onGrates(day)) {
        const BatchForecast* known = isSameEvent ? before->find(batch.task) : nullptr;
        if (known && isUnchanged(day, *dayBefore, batch)) {
            made.batches.push_back(*known);
            unchanged.insert(known->batch.task);
            continue;
        }
        made.batches.push_back(reportOf(day, std::move(batch)));
        forecastLaid(day, made.batches.back());
    }
    for (BatchForecast& batch : made.batches) {
        if (batch.laid) continue;
        const BatchForecast* brother = brotherOf(batch, made.batches);
        if (unchanged.count(batch.batch.task) > 0) {
            const BatchForecast* former = brotherOf(batch, before->batches);
            const bool isSame = brother && former && brother->batch.task == former->batch.task &&
                                unchanged.count(brother->batch.task) > 0;
            if (isSame || (!brother && !former)) continue;
        }
        batch.lasts.reset();
        if (brother) forecastToCome(day, *brother, batch);
    }
    if (day.event) setBeginnings(day, made.batches);
    return made;
}

}  // namespace cinder::live
