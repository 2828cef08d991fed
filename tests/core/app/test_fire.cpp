#include <algorithm>
#include <catch2/catch.hpp>

#include "event/json.h"
#include "lamb_day.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::PieceState;
using app::Refusal;
using samples::celsius;
using samples::Device;
using samples::kMorning;
using samples::LambDay;
using samples::minutes;
using samples::whyNot;

TEST_CASE("before the fire is felt and the meat laid the map says what it needs to know") {
    LambDay day;
    const app::BatchCard batch = day.batch();

    CHECK(batch.missing.fire);
    CHECK(batch.missing.start);
    CHECK_FALSE(batch.missing.thickness);
    CHECK_FALSE(batch.isForecast);
    REQUIRE(batch.pieces.size() == 8);
    for (const auto& piece : batch.pieces) {
        CHECK(piece.state == PieceState::ToCome);
        CHECK_FALSE(piece.toPull);
    }
    CHECK(batch.kinds[0].pieces == 2);
    CHECK(batch.kinds[1].pieces == 4);
    CHECK(batch.kinds[2].pieces == 2);
}

TEST_CASE("a batch begun without a word about its fire keeps the event's estimate") {
    LambDay day;
    REQUIRE(day.session->start(day.lamb));
    const app::BatchCard batch = day.batch();

    CHECK_FALSE(batch.isForecast);
    // 25, 30 and 35 minutes as the event says, less 2.5 to take off.
    REQUIRE(batch.pieces[0].toPull);
    CHECK(minutes(batch.pieces[0].toPull->low) == Approx(22.5));
    CHECK(minutes(batch.pieces[0].toPull->likely) == Approx(27.5));
    CHECK(minutes(batch.pieces[0].toPull->high) == Approx(32.5));
}

TEST_CASE("hand test and start temperature give every piece its own minute, thin ones first") {
    LambDay day;
    day.begin();
    const app::BatchCard batch = day.batch();

    CHECK(day.card(day.lamb).state == app::TaskState::Running);
    CHECK(batch.isForecast);
    CHECK_FALSE(batch.missing.any());
    REQUIRE(batch.kinds.size() == 3);
    for (const auto& kind : batch.kinds) {
        REQUIRE(kind.toPull);
        CHECK(kind.toPull->low < kind.toPull->likely);
        CHECK(kind.toPull->likely < kind.toPull->high);
        CHECK(kind.curve.size() > 10);
        REQUIRE(kind.turning.size() == 3);
        CHECK(kind.turning[0].interval < kind.turning[1].interval);
        REQUIRE(kind.turning[2].toPull);
        // Turning helps a little, less than the 29 % a thin slab takes longer turned once than
        // without end: J.-L. Thiffeault, Physica D 439 (2022) 133410.
        CHECK(1.29 * minutes(*kind.turning[0].toPull) > minutes(*kind.turning[2].toPull));
        CHECK(*kind.turning[0].toPull < *kind.turning[2].toPull);
    }
    CHECK(batch.kinds[0].toPull->likely < batch.kinds[1].toPull->likely);
    CHECK(batch.kinds[1].toPull->likely < batch.kinds[2].toPull->likely);
    REQUIRE(batch.spread);
    CHECK(batch.spread->likely > 5min);
    REQUIRE(batch.minimum);
    CHECK(batch.minimum->celsius() == Approx(63));
    CHECK(batch.isBelowMinimum == (batch.pullAt < *batch.minimum));
}

TEST_CASE("a batch to come forgets what the other one foretold when that was not laid after all") {
    const std::string supper = samples::demo("pruning-day-supper.json");
    Device device(event::parse(supper).value().serve.at - 70min);
    const auto id = device.session->importEvent(supper).value();
    std::vector<TaskId> batches;  // of the steaks, the only dish of two
    const auto described = *device.session->look();
    for (const auto& batch : described.fire.batches)
        for (const auto& other : described.fire.batches)
            if (other.dish == batch.dish && other.task != batch.task) batches.push_back(batch.task);
    REQUIRE(batches.size() == 2);
    REQUIRE(device.session->testByHand(device.session->look()->fire.find(batches[0])->grate, 4s));
    const auto untold = *device.session->look();
    REQUIRE(device.session->layPieces(batches[0], celsius(8)));
    REQUIRE_FALSE(device.session->look()->tasks == untold.tasks);

    REQUIRE(device.session->undo());

    CHECK(device.session->look()->tasks == untold.tasks);
    const auto seen = *device.session->look();
    device.restart();
    REQUIRE(device.session->open(id));
    CHECK(device.session->look()->tasks == seen.tasks);
}

TEST_CASE("the fire's minimum is that of the local authority where it is stricter") {
    LambDay day;
    const app::BatchCard published = day.batch();
    // FDA Food Code 2022, 3-401.11(A)(1).
    CHECK(published.minimum->celsius() == Approx(63));
    CHECK(published.minimumHold == 15s);
    CHECK_FALSE(published.isMinimumLocal);
    CHECK(published.minimumSource == "FDA Food Code 2022, 3-401.11(A)(1)");

    // An invented authority, above any target of the demo.
    REQUIRE(day.session->nameLocalRules(
        {"Orchard County",
         {{"cookIntact", safety::inFahrenheit(170)}, {"cookIntactHold", Duration{60s}}}}));
    const app::BatchCard local = day.batch();
    REQUIRE(local.minimum);
    CHECK(local.minimum->fahrenheit() == Approx(170));
    CHECK(local.minimumHold == 60s);
    CHECK(local.isMinimumLocal);
    CHECK(local.isBelowMinimum);
    CHECK(local.minimumSource == "Orchard County; FDA Food Code 2022, 3-401.11(A)(1)");
}

TEST_CASE("a reading moves the forecast of its piece, and a little that of its neighbours") {
    LambDay day;
    day.begin();
    const auto thick = day.ofKind(2);
    day.wait(15min);
    const auto before = day.piece(thick[0]).toPull->likely;
    const auto neighbour = day.piece(thick[1]).toPull->likely;

    REQUIRE(day.session->readPiece(day.lamb, thick[0], celsius(12)));

    const auto after = day.piece(thick[0]);
    CHECK(after.lastReading->celsius() == Approx(12));
    CHECK(after.toPull->likely > before + 1min);
    CHECK(day.piece(thick[1]).toPull->likely > neighbour);
    CHECK(after.toPull->likely - before > day.piece(thick[1]).toPull->likely - neighbour);

    REQUIRE(day.session->undo());
    CHECK(day.piece(thick[0]).toPull->likely == before);
}

TEST_CASE(
    "a slow batch moves everything after it, and the pull calls when the first piece is due") {
    LambDay day;
    REQUIRE(day.session->start(day.lamb));
    const auto planned = day.card(day.slice).start;
    const auto ready = *day.session->look()->ready;
    REQUIRE(day.session->testByHand(day.grate, 9s));
    REQUIRE(day.session->layPieces(day.lamb, celsius(3)));

    CHECK(day.card(day.slice).start > planned + 10min);
    CHECK(*day.session->look()->ready > ready + 10min);
    const app::BatchCard batch = day.batch();
    Duration soonest = 10h;
    for (const auto& piece : batch.pieces)
        soonest = std::min(soonest, piece.toPull->likely);
    const auto seen = day.session->look();
    const auto pull =
        std::find_if(seen->timers.begin(), seen->timers.end(), [](const live::Timer& timer) {
            return timer.kind == live::TimerKind::Pull && timer.name == "pull:lamb/cook/1:1";
        });
    REQUIRE(pull != seen->timers.end());
    CHECK(pull->due - seen->now == soonest);
    CHECK(pull->count == 8);
}

TEST_CASE("a batch that the fire holds longer than planned goes on being turned") {
    LambDay day;
    day.begin(9s);
    const auto planned = day.card(day.lamb).turnCount;
    REQUIRE(planned > 0);
    std::int32_t turned = 0;
    while (const auto next = day.card(day.lamb).nextTurn) {
        REQUIRE(turned < 40);
        day.wait(*next - day.session->now());
        REQUIRE(day.session->turn(day.lamb));
        ++turned;
    }
    CHECK(turned > planned);
    CHECK(day.card(day.lamb).turnsDone == turned);
    CHECK(whyNot(day.session->turn(day.lamb)) == Refusal::Why::NotNow);
}

TEST_CASE(
    "pieces are pulled one by one or several at once; the pan fills and the last one ends it") {
    LambDay day;
    day.begin();
    day.wait(20min);
    const auto thin = day.ofKind(0);
    REQUIRE(day.session->pullPieces(day.lamb, thin, 1));
    CHECK(day.piece(thin[0]).state == PieceState::Pulled);
    CHECK_FALSE(day.piece(thin[0]).toPull);
    CHECK(day.piece(thin[0]).peak);
    REQUIRE(day.session->look()->fire.pans.size() == 1);
    CHECK(day.session->look()->fire.pans[0].pulled == 2);
    CHECK(day.session->look()->fire.pans[0].of == 8);
    CHECK(day.card(day.lamb).state != app::TaskState::Done);
    CHECK(whyNot(day.session->pullPieces(day.lamb, thin, 1)) == Refusal::Why::NotNow);

    day.wait(10min);
    std::vector<std::int32_t> others;
    for (const auto& piece : day.batch().pieces)
        if (!piece.pulled) others.push_back(piece.number);
    REQUIRE(day.session->pullPieces(day.lamb, others, 1));
    CHECK(day.card(day.lamb).state == app::TaskState::Done);
    CHECK(day.card(day.lamb).finish == day.session->now());
    CHECK(day.session->look()->fire.pans[0].pulled == 8);

    REQUIRE(day.session->undo());
    CHECK(day.card(day.lamb).state != app::TaskState::Done);
}

TEST_CASE("a piece moved to the cool side lies there and takes longer") {
    LambDay day;
    day.begin();
    day.wait(10min);
    const auto thin = day.ofKind(0);
    const app::PieceCard before = day.piece(thin[0]);
    REQUIRE(day.session->movePieces(day.lamb, {thin[0]}, true));

    const app::PieceCard after = day.piece(thin[0]);
    CHECK(after.state == PieceState::OnCoolSide);
    CHECK(after.toPull->likely > before.toPull->likely + 1min);
    const auto grates = day.session->look()->fire.grates;
    REQUIRE(grates.size() == 1);
    for (const auto& corner : after.outline)
        CHECK(corner.x >= grates[0].length - grates[0].coolSide);

    day.wait(2min);
    REQUIRE(day.session->movePieces(day.lamb, {thin[0]}, false));
    CHECK(day.piece(thin[0]).state == PieceState::OverCoals);
    CHECK(day.piece(thin[0]).centre == before.centre);
}

TEST_CASE("readings of a whole piece are counted by the published roast table") {
    LambDay day;
    day.begin();
    day.wait(15min);
    REQUIRE(day.session->readPiece(day.lamb, 1, celsius(60)));
    CHECK_FALSE(day.piece(1).roast);  // one reading is no history
    day.wait(4min);
    REQUIRE(day.session->readPiece(day.lamb, 1, celsius(60)));
    REQUIRE(day.piece(1).roast);
    // At the row of the table itself a minute is a minute.
    CHECK(minutes(day.piece(1).roast->equivalent) == Approx(4));
    CHECK(day.piece(1).roast->gaps == 0);
    CHECK_FALSE(day.piece(2).roast);

    day.wait(20min);
    REQUIRE(day.session->readPiece(day.lamb, 1, celsius(60)));
    CHECK(minutes(day.piece(1).roast->equivalent) == Approx(4));  // too long a gap for a guess
    CHECK(day.piece(1).roast->gaps == 1);
}

TEST_CASE(
    "a reading from before the meat's own temperature was told is set aside if it cannot be") {
    LambDay day;
    REQUIRE(day.session->testByHand(day.grate, 4s));
    REQUIRE(day.session->start(day.lamb));
    day.wait(2min);
    REQUIRE(day.session->readPiece(day.lamb, 1, celsius(1)));
    REQUIRE(day.session->layPieces(day.lamb, celsius(8)));
    const auto with = day.batch();
    CHECK(with.isForecast);
    CHECK(with.readingsSetAside == 1);

    LambDay other;
    REQUIRE(other.session->testByHand(other.grate, 4s));
    REQUIRE(other.session->start(other.lamb));
    other.wait(2min);
    REQUIRE(other.session->layPieces(other.lamb, celsius(8)));
    CHECK(other.batch().readingsSetAside == 0);
    CHECK(with.pieces[0].toPull == other.batch().pieces[0].toPull);
    CHECK(with.fireFactor == other.batch().fireFactor);
}

TEST_CASE("measured thicknesses replace the described ones, and the map is laid anew") {
    LambDay day;
    REQUIRE(day.session->testByHand(day.grate, 4s));
    REQUIRE(day.session->layPieces(
        day.lamb, celsius(8),
        {{Length::fromMillimetres(70), 3}, {Length::fromMillimetres(30), 4}}));
    const app::BatchCard batch = day.batch();
    CHECK(batch.pieces.size() == 7);
    REQUIRE(batch.kinds.size() == 2);
    CHECK(batch.kinds[0].thickness == Length::fromMillimetres(30));
    CHECK(batch.kinds[0].pieces == 4);
    CHECK(batch.kinds[1].pieces == 3);
}

TEST_CASE("what no hand, thermometer or piece can have told is refused with the reason") {
    LambDay day;
    CHECK(whyNot(day.session->testByHand(day.grate, 20s)) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->testByHand(ResourceId{"moon"}, 4s)) == Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->readGrate(day.grate, celsius(60))) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->addCoal(day.grate, Mass{})) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->layPieces(day.lamb, celsius(-20))) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->layPieces(day.slice, celsius(5))) == Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->readPiece(day.lamb, 1, celsius(20))) == Refusal::Why::NotNow);
    day.begin();
    CHECK(whyNot(day.session->layPieces(day.lamb, celsius(8))) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->readPiece(day.lamb, 99, celsius(20))) == Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->readPiece(day.lamb, 1, celsius(400))) == Refusal::Why::NotNow);
    // 125 °F on the wrong scale; and colder than the meat was when it was laid, at 8 °C.
    const auto slipped = day.session->readPiece(day.lamb, 1, celsius(125));
    CHECK(whyNot(slipped) == Refusal::Why::NotNow);
    CHECK(slipped.error().detail ==
          "a probe in this meat shows 6 to 103 degrees Celsius: is it in the other unit?");
    CHECK(whyNot(day.session->readPiece(day.lamb, 1, celsius(4))) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->readPiece(day.lamb, 1, celsius(20), Length::fromMillimetres(200))) ==
          Refusal::Why::NotNow);
    CHECK(whyNot(day.session->judgePiece(day.lamb, 0, true)) == Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->pullPieces(day.lamb, {}, 1)) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->pullPieces(day.lamb, {1}, 0)) == Refusal::Why::NotNow);
}

TEST_CASE("all that was told of the pieces is there after a restart") {
    LambDay day;
    day.begin();
    day.wait(15min);
    REQUIRE(day.session->readPiece(day.lamb, 3, celsius(25)));
    REQUIRE(day.session->judgePiece(day.lamb, 2, false));
    REQUIRE(day.session->movePieces(day.lamb, {1}, true));
    REQUIRE(day.session->pullPieces(day.lamb, {4, 5}, 2));
    const app::FireCards before = day.session->look()->fire;
    const auto id = day.session->look()->event;

    day.restart();
    REQUIRE(day.session->open(id));

    CHECK(day.session->look()->fire == before);
}
