#include "live/cook_batch.h"

#include <algorithm>

namespace cinder::live {

namespace {

/// A piece sorted into a class, and one that was measured; see cook::PieceOnGrate.
constexpr double kSortedSpread = 0.08;
constexpr double kMeasuredSpread = 0.04;

std::vector<cook::CoolSpan> coolSpans(const std::map<Instant, bool>& moves, Instant laid) {
    std::vector<cook::CoolSpan> spans;
    bool isCool = false;
    for (const auto& [at, toCool] : moves) {
        if (toCool == isCool) continue;
        isCool = toCool;
        const Instant moment = std::max(at, laid);
        if (toCool)
            spans.push_back({moment, {}});
        else
            spans.back().until = moment;
    }
    return spans;
}

/// Turns of the batch since it was laid, ascending.
std::vector<Instant> turnsOf(const TaskFacts& task, Instant laid) {
    std::vector<Instant> turns;
    for (const auto& [number, at] : task.turns)
        if (at > laid) turns.push_back(at);
    std::sort(turns.begin(), turns.end());
    turns.erase(std::unique(turns.begin(), turns.end()), turns.end());
    return turns;
}

cook::PieceOnGrate pieceOf(const LaidBatch& known, const plan::GratePiece& described) {
    const OnGrate& batch = known.batch;
    cook::PieceOnGrate piece;
    piece.number = {described.number};
    piece.thickness = batch.kinds[static_cast<std::size_t>(described.kind)].thickness;
    piece.thicknessSpread = batch.isMeasured ? kMeasuredSpread : kSortedSpread;
    piece.length = batch.footprint.length;
    piece.width = Length::fromMillimetres(
        (batch.footprint.width + batch.footprint.narrowWidth).millimetres() / 2);
    piece.start = known.facts.laid->start;
    piece.laid = known.laid;
    piece.turns = turnsOf(known.task, known.laid);
    piece.pulled = known.over;
    return piece;
}

/// Adds what was told of one piece.
void addFacts(const PieceFacts& facts, cook::PieceOnGrate& piece, CookBatch& made) {
    piece.cool = coolSpans(facts.moves, piece.laid);
    if (facts.pulled) piece.pulled = std::max(*facts.pulled, piece.laid);
    for (const auto& [at, reading] : facts.readings) {
        const Length depth =
            reading.depth.value_or(Length::fromMillimetres(piece.thickness.millimetres() / 2));
        const bool isPossible =
            at >= piece.laid && depth >= Length{} && depth <= piece.thickness &&
            cook::possibleReadings(piece.start, made.batch.boiling).holds(reading.temperature);
        if (isPossible)
            made.batch.probes.push_back({piece.number, at, depth, reading.temperature});
        else
            ++made.setAside;
    }
    for (const auto& [at, isDone] : facts.judgements) {
        using Verdict = cook::Judgement::Verdict;
        if (at >= piece.laid)
            made.batch.judgements.push_back(
                {piece.number, at, isDone ? Verdict::Done : Verdict::NotYet});
        else
            ++made.setAside;
    }
}

}  // namespace

std::optional<MeatModel> meatModelOf(const OnGrate& batch) {
    const auto meat = meatOf(batch.food, batch.meat);
    if (!meat) return std::nullopt;
    switch (*meat) {
        case cook::Meat::IntactBeef:
        case cook::Meat::IntactLamb:
            return MeatModel{cook::kLeanBeef, *meat};
        case cook::Meat::IntactPork:
            return MeatModel{cook::kPorkLoin, *meat};
        case cook::Meat::GroundMeat:
            return MeatModel{cook::kFattyMeat, *meat};
        case cook::Meat::Poultry:
            return MeatModel{cook::kChickenBreast, *meat};
        case cook::Meat::Fish:
            break;
    }
    return MeatModel{cook::kWhiteFish, *meat};
}

Temperature pullTargetOf(const OnGrate& batch) {
    return pullTargetOf(batch.food, batch.meat, batch.doneness, batch.pullAt);
}

std::vector<cook::FireReading> handReadings(const GrateFacts& grate) {
    std::vector<cook::FireReading> readings;
    readings.reserve(grate.handTests.size());
    for (const auto& [at, held] : grate.handTests)
        if (const auto belief = cook::fireFromHandTest(held)) readings.push_back({at, *belief});
    return readings;
}

std::vector<cook::FireReading> thermometerReadings(const GrateFacts& grate) {
    std::vector<cook::FireReading> readings;
    readings.reserve(grate.readings.size());
    for (const auto& [at, shown] : grate.readings)
        if (const auto belief = cook::fireFromGrateThermometer(shown))
            readings.push_back({at, *belief});
    return readings;
}

std::vector<cook::FireReading> fireReadings(const GrateFacts& grate) {
    std::vector<cook::FireReading> readings = handReadings(grate);
    const auto shown = thermometerReadings(grate);
    readings.insert(readings.end(), shown.begin(), shown.end());
    std::stable_sort(
        readings.begin(), readings.end(),
        [](const cook::FireReading& a, const cook::FireReading& b) { return a.at < b.at; });
    return readings;
}

CookBatch cookBatchOf(const LaidBatch& known, std::vector<cook::FireReading> fire) {
    CookBatch made;
    // Compositions of this file are whole, so properties always exist.
    made.batch.food = *cook::meatProperties(meatModelOf(known.batch)->composition);
    made.batch.fire = std::move(fire);
    made.batch.pullAt = pullTargetOf(known.batch);
    if (known.batch.turnEvery >= std::chrono::seconds(10))
        made.batch.turnEvery = known.batch.turnEvery;
    for (const plan::GratePiece& described : known.batch.pieces) {
        cook::PieceOnGrate piece = pieceOf(known, described);
        if (const auto facts = known.facts.pieces.find(described.number);
            facts != known.facts.pieces.end())
            addFacts(facts->second, piece, made);
        made.batch.pieces.push_back(std::move(piece));
    }
    return made;
}

}  // namespace cinder::live
