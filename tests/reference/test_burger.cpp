// The burger-flipping result. Source: J.-L. Thiffeault, "The mathematics of burger flipping",
// Physica D 439, 133410 (2022): a slab on a plate, one face hot and one in air, a point counts as
// cooked once it has ever passed the cooking temperature; how soon is the whole slab cooked? Values
// other than the published 80 s, 69 s and 29 % are computed (rows B of the shared check table).

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include "check_table.h"
#include "cook/grill_run.h"
#include "cook/series.h"

using namespace cinder;
using namespace cinder::cook;
using namespace cinder::reference;

namespace {

// Scaled as in the paper: temperature (T - 25) / 175, thickness 1, time thickness² / diffusivity.
// One unit of time is 1e6 s here, so that a millisecond is 1e-9 of it, and one of temperature 1000
// K.
constexpr double kUnitSeconds = 1e6;
constexpr double kUnitKelvin = 1000;

struct Scaled {
    double hot = 21.6, cool = 1.44, cooked = 0.257;
};

Side scaledSide(double film, double around) {
    Side s;
    s.film = {film};
    s.surroundings = Temperature::fromCelsius(kUnitKelvin * around);
    return s;
}

Slab scaledSlab(int cells, double step) {
    const Layer layer{Length::fromMetres(1), Material::constant({{1}, {1}, {1e6}}).value()};
    return Slab::make({&layer, 1}, Temperature::fromCelsius(0),
                      {cells, Duration(std::llround(1000 * kUnitSeconds * step)),
                       Duration(std::llround(100 * kUnitSeconds * step)), 0.0})
        .value();
}

Duration scaledTime(double t) {
    return Duration(std::llround(1000 * kUnitSeconds * t));
}

/// Scaled time until every point has once been above the cooking temperature.
double cookingTime(const Turning& turning, int cells, double step, Scaled p = {}) {
    GrillRun run(scaledSlab(cells, step), steadyFire(scaledSide(p.hot, 1)), scaledSide(p.cool, 0),
                 turning);
    const double target = kUnitKelvin * p.cooked;
    const auto nodes = static_cast<std::size_t>(cells) + 1;
    std::vector<double> before(nodes, 0.0), since(nodes, -1.0);
    double timeBefore = 0;
    run.onStep([&](double seconds, const Slab& slab) {
        const auto now = slab.nodesCelsius();
        for (std::size_t i = 0; i < nodes; ++i) {
            if (since[i] < 0 && now[i] >= target) {
                since[i] = timeBefore +
                           (target - before[i]) / (now[i] - before[i]) * (seconds - timeBefore);
            }
            before[i] = now[i];
        }
        timeBefore = seconds;
    });
    for (double end = 0.01; end < 0.5; end += 0.01) {
        run.advanceTo(scaledTime(end));
        if (*std::min_element(since.begin(), since.end()) >= 0) break;
    }
    REQUIRE(*std::min_element(since.begin(), since.end()) >= 0);
    return *std::max_element(since.begin(), since.end()) / kUnitSeconds;
}

Turning turnsAt(std::initializer_list<double> times) {
    Turning turning;
    for (const double t : times)
        turning.made.push_back(scaledTime(t));
    return turning;
}

Turning turnsEvery(double interval) {
    return {{}, scaledTime(interval)};
}

}  // namespace

TEST_CASE("one turn takes 29 percent longer than turning without end") {
    const double once = cookingTime(turnsAt({0.0448}), 300, 1e-4);
    // Without end of turning the slab sees the mean of both sides on both faces.
    Slab slab = scaledSlab(300, 1e-4);
    const Side mean = scaledSide(11.52, 0.9375);
    double limit = 0;
    slab.advance(mean, mean, scaledTime(0.2), [&](double t) {
        limit = t / kUnitSeconds;
        return slab.coldestCelsius() < kUnitKelvin * 0.257;
    });

    CHECK(limit == Approx(0.07459).margin(2e-4));
    CHECK(once / limit == Approx(1.29).margin(0.015));
    // 80 s against 69 s with ten turns 6 to 11 s apart: the published gain, with some latitude for
    // the schedule, which was not printed in the reports seen.
    CHECK(cookingTime(turnsEvery(0.01), 300, 1e-4) / once == Approx(69.0 / 80.0).margin(0.01));
}

TEST_CASE("with equal films the middle is last and the number of turns does not matter") {
    // Published symmetry: the middle sees the mean of both sides whatever the turns are.
    const Scaled same{2, 2, 0.257};
    const double often = cookingTime(turnsEvery(0.01), 200, 2.5e-4, same);
    CHECK(often == Approx(0.281724).epsilon(1e-3));
    CHECK(cookingTime(turnsEvery(0.035), 200, 2.5e-4, same) == Approx(often).epsilon(1e-4));
}

TEST_CASE("every row of the burger model is met") {
    const auto rows = heatRows("B", Without::Nothing);
    if (rows.empty()) return;
    const double step = 5e-5;
    const auto still = [&](double place, double time) {
        GrillRun run(scaledSlab(400, step), steadyFire(scaledSide(21.6, 1)), scaledSide(1.44, 0),
                     {});
        run.advanceTo(scaledTime(time));
        return run.slab().celsiusAt(place) / kUnitKelvin;
    };
    // Time for a slab with both faces in one environment to pass the cooking temperature.
    const auto symmetric = [](double film, double around) {
        return seriesFourier(Body::PlaneWall, film / 2, 1 - 0.257 / around) / 4;
    };
    // First root of the eigenvalue condition for unequal films.
    double low = 1, high = 3;
    for (int i = 0; i < 60; ++i) {
        const double mu = 0.5 * (low + high);
        const double f = (21.6 * 1.44 - mu * mu) * std::sin(mu) + (21.6 + 1.44) * mu * std::cos(mu);
        (f > 0 ? low : high) = mu;
    }
    // Turns of the best schedules, found by our own search with this solver.
    std::map<std::string, double> ours = {
        {"B001", low},
        {"B002", still(0, 20)},
        {"B003", still(1, 20)},
        {"B004", still(0.25, 0.05)},
        {"B005", still(0.5, 0.05)},
        {"B006", still(0.5, 0.1)},
        {"B007", cookingTime(turnsAt({0.045625}), 400, step)},
        {"B008", cookingTime(turnsAt({0.0448}), 400, step)},
        {"B009", cookingTime(turnsAt({0.048655}), 400, step)},
        {"B010", cookingTime(turnsAt({.01564, .05142}), 400, step)},
        {"B011", cookingTime(turnsAt({.00997, .02865, .05237}), 400, step)},
        {"B012", cookingTime(turnsAt({.00688, .02097, .03506, .05432}), 400, step)},
        {"B013", cookingTime(turnsAt({.00559, .01608, .02764, .03948, .05567}), 400, step)},
        {"B014", cookingTime(turnsAt({.00247, .00730, .01224, .01763, .02309, .02898, .03488,
                                      .04151, .04830, .05780}),
                             400, step)},
        {"B015", cookingTime(turnsEvery(0.02), 400, step)},
        {"B016", cookingTime(turnsEvery(0.01), 400, step)},
        {"B017", cookingTime(turnsEvery(0.005), 400, step)},
        {"B018", cookingTime(turnsEvery(0.001), 400, step)},
        {"B019", symmetric(11.52, 0.9375)},
        {"B020", symmetric(std::numeric_limits<double>::infinity(), 0.5)},
        {"B021", symmetric(2, 0.5)}};
    for (const Row& row : rows) {
        const std::string& id = row.at("id");
        INFO(id << " " << row.at("quantity"));
        REQUIRE(ours.count(id) == 1);
        // The table is rounded to the sixth decimal.
        CHECK(std::abs(ours.at(id) - number(row.at("value"))) <= tolerance(row) + 5e-7);
    }
}
