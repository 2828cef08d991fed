#include <catch2/catch.hpp>

#include "cook/forecast.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;

namespace {

Batch onePiece(std::vector<CoolSpan> cool) {
    Batch batch;
    batch.food = meatProperties(kLeanBeef).value();
    batch.fire = {{Instant{}, fireFromHandTest(4s).value()}};
    batch.pullAt = Temperature::fromCelsius(54);
    PieceOnGrate piece;
    piece.number = {1};
    piece.thickness = Length::fromMillimetres(45);
    piece.laid = Instant{};
    piece.cool = std::move(cool);
    batch.pieces = {piece};
    return batch;
}

Duration pullOf(const Batch& batch) {
    const auto fitted = FittedBatch::fit(batch);
    REQUIRE(fitted);
    const auto pull = fitted->forecast().pieces[0].pull;
    REQUIRE(pull);
    return pull->likely - Instant{};
}

}  // namespace

TEST_CASE("time on the cool side puts the pull off, less than by itself") {
    const Duration straight = pullOf(onePiece({}));
    const Duration rested = pullOf(onePiece({{Instant{} + 8min, Instant{} + 14min}}));
    const Duration longer = pullOf(onePiece({{Instant{} + 8min, Instant{} + 20min}}));
    CHECK(rested > straight);
    CHECK(rested < straight + 6min);
    CHECK(longer > rested);
    CHECK(pullOf(onePiece({{Instant{} + 8min, {}}})) > longer);
}

TEST_CASE("a move between two turns takes effect at once") {
    // A minute before the turn and half a minute after it are different times on the coals.
    const Duration early = pullOf(onePiece({{Instant{} + 6min, Instant{} + 9min}}));
    const Duration same = pullOf(
        onePiece({{Instant{} + 6min, Instant{} + 7min}, {Instant{} + 7min, Instant{} + 9min}}));
    const Duration shorter = pullOf(onePiece({{Instant{} + 6min, Instant{} + 7min}}));
    // A move that changes nothing only cuts a step of the solver in two. Steps of up to 60 s are
    // out by 0.6 s (computed for the reference case E01, see slab.h), so two runs differ by twice
    // that.
    CHECK(std::chrono::abs(early - same) < 1200ms);
    CHECK(shorter < early);
}

TEST_CASE("spans on the cool side that run backwards or overlap are refused by name") {
    const auto refused = [](std::vector<CoolSpan> cool) {
        const auto fitted = FittedBatch::fit(onePiece(std::move(cool)));
        REQUIRE_FALSE(fitted);
        return fitted.error();
    };
    const CookError wanted{CookError::Kind::OutOfOrder, "cool"};
    CHECK(refused({{Instant{} + 8min, Instant{} + 7min}}) == wanted);
    CHECK(refused({{Instant{} + 8min, {}}, {Instant{} + 9min, {}}}) == wanted);
    CHECK(refused({{Instant{} + 5min, Instant{} + 9min}, {Instant{} + 7min, {}}}) == wanted);
}
