#include <catch2/catch.hpp>

#include "cook/forecast.h"

using namespace cinder;
using namespace cinder::cook;
using namespace std::chrono_literals;

namespace {

const Instant kLaid = Instant{} + 1000h;

Batch batchOf(std::vector<PieceOnGrate> pieces) {
    Batch batch;
    batch.food = meatProperties(kLeanBeef).value();
    batch.fire = {{kLaid, fireFromHandTest(3s).value()}};
    batch.pullAt = Temperature::fromCelsius(52);
    batch.pieces = std::move(pieces);
    return batch;
}

PieceOnGrate piece(int number, double millimetres) {
    PieceOnGrate made;
    made.number = {number};
    made.thickness = Length::fromMillimetres(millimetres);
    made.laid = kLaid;
    return made;
}

ProbeReading probe(int number, Duration at, double depth, double celsius) {
    return {
        {number}, kLaid + at, Length::fromMillimetres(depth), Temperature::fromCelsius(celsius)};
}

BatchForecast forecastOf(Batch batch) {
    auto fitted = FittedBatch::fit(std::move(batch));
    REQUIRE(fitted);
    return fitted->forecast();
}

double minutes(Duration d) {
    return std::chrono::duration<double>(d).count() / 60;
}
double width(const Band<Instant>& band) {
    return minutes(band.high - band.low);
}

}  // namespace

TEST_CASE("the roast of common practice lies inside the forecast") {
    // common practice - no source: tapered beef roast over a three-second fire, 20 to 30 min on the
    // grate, turned every 5 min. Thickness and plan size plausible, from memory.
    for (const double thick : {40.0, 46.0, 52.0}) {
        PieceOnGrate roast = piece(1, thick);
        roast.width = Length::fromMillimetres(110);
        roast.length = Length::fromMillimetres(250);
        roast.start = Temperature::fromCelsius(10);
        const auto made = forecastOf(batchOf({roast}));
        REQUIRE(made.pieces[0].pull);
        INFO(thick << " mm: " << minutes(made.pieces[0].pull->low - kLaid) << " to "
                   << minutes(made.pieces[0].pull->high - kLaid));
        CHECK(made.pieces[0].pull->low - kLaid < 30min);
        CHECK(made.pieces[0].pull->high - kLaid > 20min);
    }
}

TEST_CASE("a thicker piece is done later and the batch says by how much") {
    const auto made = forecastOf(batchOf({piece(1, 40), piece(2, 50), piece(3, 60)}));
    CHECK(made.pieces[0].pull->likely < made.pieces[1].pull->likely);
    CHECK(made.pieces[1].pull->likely < made.pieces[2].pull->likely);
    REQUIRE(made.spread);
    CHECK(made.spread->first.likely < made.spread->last.likely);
    CHECK(made.spread->between.low > 0min);
}

TEST_CASE("a reading moves its piece, its neighbours and the width of the band") {
    const Batch before = batchOf({piece(1, 50), piece(2, 50)});
    Batch warm = before;
    // Far warmer than expected at 15 min.
    warm.probes = {probe(1, 15min, 25, 40)};
    const auto asBelieved = forecastOf(before);
    const auto asRead = forecastOf(warm);
    CHECK(asRead.pieces[0].pull->likely < asBelieved.pieces[0].pull->likely);
    CHECK(asRead.pieces[1].pull->likely < asBelieved.pieces[1].pull->likely);
    CHECK(asRead.pieces[1].pull->likely > asRead.pieces[0].pull->likely);
    CHECK(width(*asRead.pieces[0].pull) < width(*asBelieved.pieces[0].pull));
    CHECK(asRead.fireFactor.likely > 1.0);
}

TEST_CASE("a judgement moves the forecast the way it says, less than a probe does") {
    Batch none = batchOf({piece(1, 50)});
    Batch notYet = none;
    Batch done = none;
    notYet.judgements = {{{1}, kLaid + 25min, Judgement::Verdict::NotYet}};
    done.judgements = {{{1}, kLaid + 15min, Judgement::Verdict::Done}};
    // The same words from a thermometer in the middle: it is at the target, or still under it.
    const double target = none.pullAt.celsius();
    Batch measuredDone = none;
    Batch measuredUnder = none;
    measuredDone.probes = {probe(1, 15min, 25, target)};
    measuredUnder.probes = {probe(1, 25min, 25, target - 12)};
    const auto pull = [](Batch b) { return *forecastOf(std::move(b)).pieces[0].pull; };
    const auto likely = [&](const Batch& b) { return pull(b).likely; };
    CHECK(likely(notYet) > likely(none));
    CHECK(likely(done) < likely(none));
    CHECK(likely(measuredDone) < likely(done));
    CHECK(width(pull(measuredDone)) < width(pull(done)));
    CHECK(width(pull(measuredUnder)) < width(pull(notYet)));
}

TEST_CASE("carry-over stays between the pull and where the piece would level out") {
    const auto made = forecastOf(batchOf({piece(1, 50)}));
    const CarryOver& over = made.pieces[0].carryOver.value();
    CHECK(over.peak.low >= Temperature::fromCelsius(54));
    CHECK(over.peak.low <= over.peak.likely);
    CHECK(over.peak.likely <= over.peak.high);
    CHECK(over.peak.high <= over.limit);
    CHECK(over.peakAt > made.pieces[0].pull->likely);
}

TEST_CASE("a pulled piece has no pull to wait for and still climbs") {
    PieceOnGrate off = piece(1, 45);
    off.pulled = kLaid + 24min;
    const auto made = forecastOf(batchOf({off}));
    CHECK_FALSE(made.pieces[0].pull);
    CHECK(made.pieces[0].carryOver->peakAt > *off.pulled);
    CHECK_FALSE(made.spread);
}

TEST_CASE("turning more often helps a little and never as much as it is said to") {
    const auto fitted = FittedBatch::fit(batchOf({piece(1, 50)}));
    REQUIRE(fitted);
    const Duration intervals[] = {1min, 5min, 10min};
    const auto effects = fitted->turningEffect({1}, intervals).value();
    CHECK(*effects[0].toPull < *effects[1].toPull);
    CHECK(*effects[1].toPull < *effects[2].toPull);
    // Even one turn alone takes no more than 29 percent longer than turning without end. Source:
    // J.-L. Thiffeault, "The mathematics of burger flipping", Physica D 439, 133410 (2022).
    CHECK(1.29 * minutes(*effects[0].toPull) > minutes(*effects[2].toPull));
}

TEST_CASE("another interval is told from the laying on, whatever turns were made since") {
    const auto before = FittedBatch::fit(batchOf({piece(1, 50)}));
    PieceOnGrate turned = piece(1, 50);
    turned.turns = {kLaid + 5min, kLaid + 10min, kLaid + 15min};
    const auto after = FittedBatch::fit(batchOf({turned}));
    REQUIRE(before);
    REQUIRE(after);
    const Duration intervals[] = {2min + 30s, 5min, 10min};
    const auto told = before->turningEffect({1}, intervals).value();
    const auto now = after->turningEffect({1}, intervals).value();
    for (std::size_t i = 0; i < told.size(); ++i)
        CHECK(now[i].toPull == told[i].toPull);
    CHECK(now[0].toPull != now[2].toPull);
}

TEST_CASE("the core curve passes the target when the forecast says") {
    const auto fitted = FittedBatch::fit(batchOf({piece(1, 50)}));
    REQUIRE(fitted);
    const Instant pull = fitted->forecast().pieces[0].pull->likely;
    const auto curve = fitted->coreCurve({1}, pull + 1min, 1min).value();
    REQUIRE(curve.size() > 10);
    CHECK(curve.front().core.likely == Temperature::fromCelsius(5));
    CHECK(curve.back().core.likely > Temperature::fromCelsius(51.5));
    CHECK(curve[curve.size() - 3].core.likely < Temperature::fromCelsius(52));
    CHECK(curve.back().core.low < curve.back().core.high);
    CHECK_FALSE(fitted->coreCurve({7}, pull, 1min));
}

TEST_CASE("the same batch gives the same forecast to the millisecond") {
    Batch batch = batchOf({piece(1, 45), piece(2, 55)});
    batch.probes = {probe(2, 16min, 27, 20)};
    const auto one = forecastOf(batch);
    const auto other = forecastOf(batch);
    CHECK(one.pieces[0].pull->low == other.pieces[0].pull->low);
    CHECK(one.spread->last.high == other.spread->last.high);
}

TEST_CASE("pieces of a class share one forecast and spread like a class") {
    Batch batch = batchOf(
        piecesOf({Length::fromMillimetres(48), Temperature::fromCelsius(6), 12}, {10}, kLaid));
    const auto made = forecastOf(batch);
    REQUIRE(made.pieces.size() == 12);
    CHECK(made.pieces[11].number == PieceNumber{21});
    CHECK(made.pieces[0].pull->likely == made.pieces[11].pull->likely);
    // Measured one by one, the same pieces are known to be more alike.
    for (PieceOnGrate& measured : batch.pieces)
        measured.thicknessSpread = 0.04;
    CHECK(made.spread->between.likely > forecastOf(batch).spread->between.likely);
}

TEST_CASE("bad input is refused with the name of its field") {
    const auto field = [](Batch batch) { return FittedBatch::fit(std::move(batch)).error().field; };
    Batch thin = batchOf({piece(1, 1)});
    CHECK(field(thin) == "thickness");
    Batch cold = batchOf({piece(1, 40)});
    cold.fire.clear();
    CHECK(field(cold) == "fire");
    Batch early = batchOf({piece(1, 40)});
    early.probes = {probe(1, -2min, 20, 20)};
    CHECK(field(early) == "probe");
    Batch deep = batchOf({piece(1, 40)});
    deep.probes = {probe(1, 12min, 60, 20)};
    CHECK(field(deep) == "depth");
    Batch hot = batchOf({piece(1, 40)});
    hot.pieces[0].start = Temperature::fromCelsius(70);
    CHECK(field(hot) == "start");
    // Fahrenheit typed as Celsius, and colder than it was laid: batch.h says what a piece can show.
    for (const double celsius : {125.0, 103.5, 2.5, -4.0}) {
        Batch slipped = batchOf({piece(1, 40)});
        slipped.probes = {probe(1, 15min, 20, celsius)};
        CHECK(field(slipped) == "reading");
    }
    for (const double celsius : {3.5, 102.5}) {
        Batch possible = batchOf({piece(1, 40)});
        possible.probes = {probe(1, 15min, 20, celsius)};
        CHECK(FittedBatch::fit(possible));
    }
}

TEST_CASE("a target so near boiling that edges have no ratio is forecast as a wide slab") {
    PieceOnGrate strip = piece(1, 20);
    Batch batch = batchOf({strip});
    // Above the mean of the boiling face and the air, (35 x 100 + 15 x 75) / 50 by fire.h.
    batch.pullAt = Temperature::fromCelsius(92.6);
    const auto wide = FittedBatch::fit(batch);
    REQUIRE(wide);
    strip.width = Length::fromMillimetres(110);
    strip.length = Length::fromMillimetres(250);
    batch.pieces = {strip};
    const auto made = FittedBatch::fit(batch);
    REQUIRE(made);
    CHECK(made->forecast().pieces[0].pull == wide->forecast().pieces[0].pull);
}
