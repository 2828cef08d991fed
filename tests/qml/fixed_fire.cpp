// The fire of the day that stands still.

#include <chrono>
#include <cmath>

#include "fixed_day.h"

namespace cinder::face::fixed {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;

LocalText both(const char* english, const char* spanish) {
    return LocalText(std::map<std::string, std::string>{{"en", english}, {"es", spanish}});
}

Length mm(double length) {
    return Length::fromMillimetres(length);
}

Temperature celsius(double degrees) {
    return Temperature::fromCelsius(degrees);
}

cook::Band<Duration> around(Duration likely) {
    return {likely * 3 / 4, likely, likely * 3 / 2};
}

/// Eight legs in two rows, tapered ends in turn.
app::PieceCard leg(std::int32_t number, std::int32_t kind, Instant now) {
    constexpr double kLong = 260, kWide = 150, kGap = 24;
    const grate::Footprint size{mm(kLong), mm(kWide), mm(80), grate::Shape::Tapered};
    grate::Place place;
    place.x = mm(30 + ((number - 1) / 2) * (kLong + kGap));
    place.y = mm(40 + ((number - 1) % 2) * (kWide + 2 * kGap));
    place.isReversed = number % 2 == 0;
    app::PieceCard card;
    card.number = number;
    card.kind = kind;
    card.state = app::PieceState::OverCoals;
    if (number == 2) place.x = mm(1480), place.y = mm(60);
    card.outline = grate::outlineAt(size, place);
    card.angle = grate::angleDegrees(place);
    card.toPull = around(minutes(6 + 5 * kind + number));
    card.peak = cook::Band<Temperature>{celsius(56), celsius(60), celsius(63)};
    if (number == 1) {
        card.state = app::PieceState::Due;
        card.toPull = cook::Band<Duration>{Duration{0}, Duration{0}, minutes(2)};
        card.lastReading = celsius(52);
        card.lastReadAt = now - minutes(2);
        card.lastJudgement = true;
        card.roast = cook::Lethality{seconds(20), 0};
    } else if (number == 2) {
        card.state = app::PieceState::OnCoolSide;
    } else if (number == 3) {
        card.state = app::PieceState::Pulled;
        card.toPull.reset();
        card.pulled = now - minutes(1);
        card.pan = 1;
    }
    return card;
}

app::KindCard kindOf(LocalText name, double thickness, std::int32_t pieces, std::int32_t pulled,
                     Duration likely) {
    app::KindCard card;
    card.name = std::move(name);
    card.thickness = mm(thickness);
    card.pieces = pieces;
    card.pulled = pulled;
    card.toPull = around(likely);
    return card;
}

/// The core of a class from 21 minutes ago to its pull, so many minutes from now, and a little on,
/// with the readings of `piece`.
void draw(app::KindCard& kind, std::int32_t piece, Instant now, int pull,
          std::initializer_list<std::pair<int, double>> readings) {
    constexpr int kLaid = -21;
    kind.drawnPiece = piece;
    for (int at = kLaid; at <= pull + 4; ++at) {
        const double share = static_cast<double>(at - kLaid) / (pull - kLaid);
        const double likely = 8 + 46 * std::pow(share, 1.2);
        const double reach = 5 * share;
        kind.curve.push_back({now + minutes(at),
                              {celsius(likely - reach), celsius(likely), celsius(likely + reach)}});
    }
    const auto turned = [&](Duration every, int more) {
        return cook::TurningEffect{every, minutes(pull - kLaid + more)};
    };
    kind.turning = {turned(minutes(2), -1), turned(minutes(5), 0), turned(minutes(10), 2)};
    for (const auto& [at, shown] : readings)
        kind.readings.push_back({now + minutes(at), celsius(shown)});
}

}  // namespace

app::FireCards orchardFire(Instant now) {
    app::BatchCard batch;
    batch.task = TaskId("lamb/1");
    batch.dish = DishId("lamb");
    batch.dishName = both("Leg of lamb", "Pierna de cordero");
    batch.grate = ResourceId("grate");
    batch.isLaid = batch.isForecast = true;
    batch.laid = now - minutes(21);
    batch.startTemperature = celsius(8);
    batch.pullAt = celsius(54);
    batch.minimum = celsius(63);
    batch.minimumHold = seconds(15);
    batch.minimumSource = "FDA Food Code 2022, 3-401.11(A)(1)";
    batch.isBelowMinimum = true;
    batch.spread = around(minutes(14));
    batch.kinds = {kindOf(both("Thin legs", "Piernas delgadas"), 62, 3, 1, minutes(4)),
                   kindOf(both("Middle legs", "Piernas medianas"), 74, 3, 0, minutes(16)),
                   kindOf(both("Thick legs", "Piernas gruesas"), 88, 2, 0, minutes(24))};
    draw(batch.kinds[0], 1, now, 0, {{-9, 30}, {-2, 52}});
    draw(batch.kinds[1], 5, now, 16, {{-6, 24}});
    draw(batch.kinds[2], 7, now, 24, {});
    for (std::int32_t number = 1; number <= 8; ++number)
        batch.pieces.push_back(leg(number, number <= 3 ? 0 : number <= 6 ? 1 : 2, now));

    app::BatchCard thighs;
    thighs.task = TaskId("thighs/1");
    thighs.dish = DishId("thighs");
    thighs.dishName = both("Chicken thighs", "Muslos de pollo");
    thighs.grate = ResourceId("small");
    thighs.isLaid = true;
    thighs.laid = now - minutes(14);
    thighs.missing.fire = thighs.missing.start = true;
    thighs.pullAt = celsius(74);
    thighs.minimum = celsius(74);
    thighs.minimumSource = "FDA Food Code 2022, 3-401.11(A)(3)";
    thighs.kinds = {kindOf({}, 30, 1, 0, minutes(0))};
    thighs.kinds[0].toPull.reset();

    app::GrateCard grate;
    grate.id = ResourceId("grate");
    grate.name = both("Long grate", "Parrilla larga");
    grate.length = mm(1830);
    grate.width = mm(460);
    grate.coolSide = mm(400);
    grate.batches = {batch.task};
    grate.coal.handTests = {{now - minutes(38), seconds(2), celsius(230), celsius(260)},
                            {now - minutes(26), seconds(3), celsius(205), celsius(230)},
                            {now - minutes(20), seconds(4), celsius(180), celsius(205)}};
    grate.coal.thermometer = {{now - minutes(12), celsius(188)}};
    grate.coal.topUpBy = now + minutes(25);
    const auto kilograms = [](double mass) { return Mass::fromKilograms(mass); };
    grate.coal.need = app::CoalCard::Need{{kilograms(14), kilograms(18), kilograms(24)},
                                          kilograms(27),
                                          kilograms(27),
                                          2,
                                          kilograms(18)};
    app::FireCards cards;
    cards.grates = {grate};
    cards.batches = {batch, thighs};
    cards.pans = {{1, batch.dish, batch.dishName, 1, 8, now - minutes(1), now - minutes(1)}};
    return cards;
}

}  // namespace cinder::face::fixed
