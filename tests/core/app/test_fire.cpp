#include <algorithm>
#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::PieceState;
using app::Refusal;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};

Temperature celsius(double degrees) {
    return Temperature::fromCelsius(degrees);
}

double minutes(Duration duration) {
    return std::chrono::duration<double, std::ratio<60>>(duration).count();
}

/// The orchard at the moment its lamb is to go on: eight legs, thin, middle and thick.
struct LambDay : Device {
    LambDay() : Device(kMorning) {
        REQUIRE(session->importEvent(samples::orchard()));
        const auto* sheet = session->sheet();
        const auto& tasks = sheet->problem.tasks;
        for (std::size_t i = 0; i < tasks.size(); ++i)
            if (tasks[i].id == lamb)
                clock.advance(sheet->bell + sheet->schedule.tasks[i].start - clock.wall());
        const auto id = session->events().value().at(0).id;
        restart();
        REQUIRE(session->open(id));
    }
    void wait(Duration time) { clock.advance(time); }
    [[nodiscard]] app::BatchCard batch() {
        const auto seen = session->look();
        const app::BatchCard* found = seen->fire.find(lamb);
        REQUIRE(found);
        return *found;
    }
    [[nodiscard]] app::PieceCard piece(std::int32_t number) {
        for (const auto& one : batch().pieces)
            if (one.number == number) return one;
        FAIL("no piece " << number);
        return {};
    }
    [[nodiscard]] app::TaskCard card(const TaskId& id) {
        for (const auto& one : session->look()->tasks)
            if (one.id == id) return one;
        FAIL("no task " << id.text());
        return {};
    }
    /// Numbers of the pieces of a class, 0 thin to 2 thick.
    [[nodiscard]] std::vector<std::int32_t> ofKind(std::int32_t kind) {
        std::vector<std::int32_t> numbers;
        for (const auto& one : batch().pieces)
            if (one.kind == kind) numbers.push_back(one.number);
        return numbers;
    }
    /// Fire felt and meat laid: everything a forecast starts from.
    void begin(Duration hand = 4s) {
        REQUIRE(session->testByHand(grate, hand));
        REQUIRE(session->layPieces(lamb, celsius(8)));
    }

    TaskId lamb{"lamb/cook/1"};
    TaskId slice{"lamb/slice/1"};
    ResourceId grate{"grate"};
};

Refusal::Why whyNot(const Result<void, Refusal>& taken) {
    REQUIRE_FALSE(taken);
    return taken.error().why;
}

}  // namespace

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
        // Turning helps a little: see the same check of the model in tests/core/cook.
        CHECK(minutes(*kind.turning[0].toPull) > 0.78 * minutes(*kind.turning[2].toPull));
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

TEST_CASE("a bed is ready when the last step of its fire is left out") {
    LambDay day;
    const TaskId spread{"spread"};
    for (const auto& asked : day.session->look()->food.beforeFire)
        REQUIRE(day.session->readyBeforeFire(asked.item));
    REQUIRE(day.session->finish(TaskId{"burn-in"}));
    REQUIRE(day.session->skip(spread));
    const auto seen = day.session->look();
    REQUIRE(seen->fire.grates.size() == 1);
    CHECK(seen->fire.grates[0].coal.isReady);
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
    CHECK(whyNot(day.session->readPiece(day.lamb, 1, celsius(20), Length::fromMillimetres(200))) ==
          Refusal::Why::NotNow);
    CHECK(whyNot(day.session->judgePiece(day.lamb, 0, true)) == Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->pullPieces(day.lamb, {}, 1)) == Refusal::Why::NotNow);
    CHECK(whyNot(day.session->pullPieces(day.lamb, {1}, 0)) == Refusal::Why::NotNow);
}

TEST_CASE("hand tests are kept over time and a fading fire is seen before it is weak") {
    LambDay day;
    REQUIRE(day.session->testByHand(day.grate, 3s));
    day.wait(20min);
    REQUIRE(day.session->testByHand(day.grate, 5s));
    const auto coal = day.session->look()->fire.grates[0].coal;
    REQUIRE(coal.handTests.size() == 2);
    CHECK(coal.handTests[0].held == 3s);
    REQUIRE(coal.handTests[0].low);
    CHECK(coal.handTests[0].low->celsius() == Approx(190));
    REQUIRE(coal.need);
    CHECK(coal.need->bags >= 1);
    CHECK(coal.need->load >= coal.need->byDepth);
}

TEST_CASE(
    "the coal for the day is for the fire that is wanted, however weak the one that was felt") {
    LambDay day;
    const auto need = [&] { return day.session->look()->fire.grates[0].coal.need.value(); };
    const auto before = need();
    REQUIRE(day.session->testByHand(day.grate, 9s));
    CHECK(need().byHeat.high == before.byHeat.high);
    CHECK(need().load == before.load);
}

TEST_CASE("the pack list and the fire board want the same fire") {
    Device day(kMorning);
    REQUIRE(day.session->importEvent(samples::orchard()));
    const auto card = day.session->look()->fire.grates[0];
    const auto* figure = quantity::findFigure(day.session->lists()->all, "coal/" + card.id.text());
    REQUIRE(card.coal.need);
    REQUIRE(figure);
    REQUIRE(figure->inputs.size() == 4);
    CHECK(figure->inputs[3].amount.value ==
          Approx(double(card.coal.need->byHeat.high.grams())).epsilon(0.001));
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
