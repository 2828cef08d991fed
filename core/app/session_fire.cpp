// What a person does and sees at the fire (session.h).

#include <algorithm>
#include <cmath>

#include "app/session.h"
#include "app/session_state.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

std::int64_t milliOf(Temperature temperature) {
    return std::llround((temperature - Temperature{}).kelvin() * 1000.0);
}

/// What was told of the laying of a batch.
std::optional<live::BatchFacts::Laid> laidOf(const Session::State& state, const TaskId& task) {
    const auto facts = state.open->day.batches.find(task);
    return facts == state.open->day.batches.end() ? std::nullopt : facts->second.laid;
}

/// A temperature no piece can have is a slip of the finger or of the unit.
Taken checkReading(std::optional<Temperature> start, Temperature shown) {
    const cook::ReadingRange possible = cook::possibleReadings(start);
    if (possible.holds(shown)) return {};
    const auto whole = [](Temperature t) { return std::to_string(std::lround(t.celsius())); };
    return refuse(Why::NotNow, "a probe in this meat shows " + whole(possible.least) + " to " +
                                   whole(possible.most) +
                                   " degrees Celsius: is it in the other unit?");
}

/// The batch of a task, which must lie on a grate.
Result<const live::BatchForecast*, Refusal> findBatch(const Session::State& state,
                                                      const TaskId& task) {
    if (const auto found = state.find(task); !found) return fail(found.error());
    const live::BatchForecast* batch = state.open->fire.find(task);
    if (!batch) return refuse(Why::UnknownTask, task.text() + " lies on no grate");
    return batch;
}

/// The piece of a batch that is on the grate.
Result<const live::PieceForecast*, Refusal> findPiece(const live::BatchForecast& batch,
                                                      std::int32_t number) {
    const auto piece =
        std::find_if(batch.pieces.begin(), batch.pieces.end(),
                     [&](const live::PieceForecast& one) { return one.number == number; });
    if (piece == batch.pieces.end())
        return refuse(Why::UnknownTask, "no piece " + std::to_string(number) + " in this batch");
    if (!batch.laid) return refuse(Why::NotNow, "the batch is not on the grate yet");
    if (piece->pulled)
        return refuse(Why::NotNow, "piece " + std::to_string(number) + " is off the grate");
    return &*piece;
}

/// All of them, each once, ascending.
Result<std::vector<std::int32_t>, Refusal> findPieces(const Session::State& state,
                                                      const TaskId& task,
                                                      std::vector<std::int32_t> pieces) {
    const auto batch = findBatch(state, task);
    if (!batch) return fail(batch.error());
    if (pieces.empty()) return refuse(Why::NotNow, "no piece was chosen");
    std::sort(pieces.begin(), pieces.end());
    pieces.erase(std::unique(pieces.begin(), pieces.end()), pieces.end());
    for (const std::int32_t number : pieces)
        if (const auto piece = findPiece(**batch, number); !piece) return fail(piece.error());
    return pieces;
}

Result<void, Refusal> checkGrate(const Session::State& state, const ResourceId& grate) {
    if (auto no = state.objection()) return fail(std::move(*no));
    if (!state.open->day.event || !plan::findGrate(*state.open->day.event, grate))
        return refuse(Why::UnknownTask, "no grate " + grate.text());
    return {};
}

}  // namespace

Taken Session::layPieces(const TaskId& task, Temperature start,
                         const std::vector<LaidPieces>& kinds) {
    const auto batch = findBatch(*state_, task);
    if (!batch) return fail(batch.error());
    if (laidOf(*state_, task))
        return refuse(Why::NotNow, "it is laid; take that back to change it");
    if ((*batch)->over) return refuse(Why::NotNow, "it is over");
    if (auto checked = checkReading({}, start); !checked) return checked;
    // Said only now that the meat is on: it has been there since the task was begun.
    journal::PiecesLaid laid{task, milliOf(start), {}, (*batch)->laid.value_or(state_->now())};
    for (const LaidPieces& kind : kinds) {
        const double thick = kind.thickness.millimetres();
        if (!(thick > 2 && thick < 300) || kind.pieces < 1 || kind.pieces > 500)
            return refuse(Why::NotNow, "a thickness is 3 to 299 mm, a count 1 to 500");
        laid.kinds.push_back({std::llround(thick * 1000.0), kind.pieces});
    }
    return state_->record(std::move(laid));
}

Taken Session::testByHand(const ResourceId& grate, Duration held) {
    if (auto known = checkGrate(*state_, grate); !known) return known;
    if (!cook::fireFromHandTest(held))
        return refuse(Why::NotNow, "a hand bears a grate for 1 to 14 seconds");
    return state_->record(journal::HandHeld{grate, held.count(), state_->now()});
}

Taken Session::readGrate(const ResourceId& grate, Temperature shown) {
    if (auto known = checkGrate(*state_, grate); !known) return known;
    if (!cook::fireFromGrateThermometer(shown))
        return refuse(Why::NotNow, "a grate over coals shows 120 to 450 degrees Celsius");
    return state_->record(journal::GrateRead{grate, milliOf(shown), state_->now()});
}

Taken Session::addCoal(const ResourceId& grate, Mass mass) {
    if (auto known = checkGrate(*state_, grate); !known) return known;
    if (mass <= Mass{} || mass > Mass::fromKilograms(200))
        return refuse(Why::NotNow, "coal is added by the kilogram, up to 200");
    return state_->record(journal::CoalAdded{grate, mass.grams(), state_->now()});
}

Taken Session::readPiece(const TaskId& task, std::int32_t piece, Temperature shown,
                         std::optional<Length> depth) {
    const auto batch = findBatch(*state_, task);
    if (!batch) return fail(batch.error());
    const auto found = findPiece(**batch, piece);
    if (!found) return fail(found.error());
    const auto laid = laidOf(*state_, task);
    const auto start = laid ? std::optional(laid->start) : std::nullopt;
    if (auto checked = checkReading(start, shown); !checked) return checked;
    journal::PieceRead read{task, piece, milliOf(shown), {}, state_->now()};
    if (depth) {
        const Length thick =
            (*batch)->batch.kinds[static_cast<std::size_t>((*found)->kind)].thickness;
        if (*depth < Length{} || (thick > Length{} && *depth > thick))
            return refuse(Why::NotNow, "the tip is not in the piece");
        read.depth = std::llround(depth->millimetres() * 1000.0);
    }
    return state_->record(std::move(read));
}

Taken Session::judgePiece(const TaskId& task, std::int32_t piece, bool isDone) {
    const auto known = findPieces(*state_, task, {piece});
    if (!known) return fail(known.error());
    return state_->record(journal::PieceJudged{task, piece, isDone, state_->now()});
}

Taken Session::pullPieces(const TaskId& task, const std::vector<std::int32_t>& pieces,
                          std::int32_t pan) {
    const auto known = findPieces(*state_, task, pieces);
    if (!known) return fail(known.error());
    if (pan < 1 || pan > kMostPans) return refuse(Why::NotNow, "pans are numbered from 1 to 99");
    return state_->record(journal::PiecesPulled{task, *known, pan, state_->now()});
}

Taken Session::movePieces(const TaskId& task, const std::vector<std::int32_t>& pieces,
                          bool isToCoolSide) {
    const auto known = findPieces(*state_, task, pieces);
    if (!known) return fail(known.error());
    return state_->record(journal::PiecesMoved{task, *known, isToCoolSide, state_->now()});
}

}  // namespace cinder::app
