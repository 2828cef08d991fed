// Prints how exact, how fast and how honest the thermal core is. Asserts nothing.
//   bench_cook [cooks [seed]]    (500 simulated cooks from seed 1000 by default)
// The constants of the band were chosen on seed 900000, not on the cooks printed by default.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>

#include "cook/series.h"
#include "simulated_cook.h"

using namespace cinder;
using namespace cinder::cook;
using namespace cinder::bench;
using namespace std::chrono_literals;

namespace {

double secondsOf(Duration d) {
    return std::chrono::duration<double>(d).count();
}

/// Seconds of processor time, which a busy machine does not stretch as it does the wall's.
template <class F>
double timed(int repeats, F&& f) {
    const std::clock_t begun = std::clock();
    for (int i = 0; i < repeats; ++i)
        f();
    return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC / repeats;
}

double worstError(double biot, Resolution resolution, double& place) {
    const double k = 0.48, rho = 1050, cp = 3500, half = 0.03;
    const Layer layer{Length::fromMetres(2 * half), Material::constant({{k}, {rho}, {cp}}).value()};
    Slab slab = Slab::make({&layer, 1}, Temperature::fromCelsius(5), resolution).value();
    Side both;
    both.film = {biot * k / half};
    both.surroundings = Temperature::fromCelsius(105);
    const auto terms = seriesTerms(Body::PlaneWall, biot, 60);
    double worst = 0;
    slab.advance(both, both, 1h, [&](double t) {
        const double fourier = k / (rho * cp) * t / (half * half);
        if (t < 60) return true;
        for (std::size_t i = 0; i < slab.nodesMetres().size(); ++i) {
            double theta = 0;
            for (const SeriesTerm& s : terms) {
                theta += s.coefficient * std::exp(-s.root * s.root * fourier) *
                         std::cos(s.root * (slab.nodesMetres()[i] / half - 1));
            }
            const double error = std::abs(slab.nodesCelsius()[i] - (105 - 100 * theta));
            if (error > worst) {
                worst = error;
                place = t;
            }
        }
        return true;
    });
    return worst;
}

void printAccuracy() {
    std::puts(
        "error against the exact plane wall, 60 mm, 5 degC in 105 degC, every node, every step");
    std::puts("from 1 min to 1 h (goal 0.05 degC):");
    for (const double biot : {0.2, 1.0, 3.0, 10.0}) {
        double at1 = 0, at2 = 0, at3 = 0;
        const double fine = worstError(biot, Resolution::fine(), at1);
        const double usual = worstError(biot, {}, at2);
        const double quick = worstError(biot, Resolution::quick(), at3);
        std::printf("  Bi %5.1f: fine %.4f (at %.0f s)  usual %.4f (%.0f s)  quick %.4f (%.0f s)\n",
                    biot, fine, at1, usual, at2, quick, at3);
    }
}

Batch bigBatch(int pieces, int probes) {
    Draw draw(5);
    Batch batch;
    batch.food = meatProperties(kLeanBeef).value();
    batch.fire = {{Instant{}, fireFromHandTest(3s).value()}};
    batch.pullAt = Temperature::fromCelsius(52);
    for (int i = 0; i < pieces; ++i) {
        PieceOnGrate piece;
        piece.number = {i};
        piece.thickness = Length::fromMillimetres(draw.uniform(40, 65));
        piece.laid = Instant{} + Duration(i * 2000);
        batch.pieces.push_back(piece);
    }
    for (int i = 0; i < probes; ++i) {
        ProbeReading reading;
        reading.piece = {i % pieces};
        reading.at = Instant{} + 15min + Duration(i * 5000);
        reading.depth = Length::fromMetres(
            0.5 * batch.pieces[static_cast<std::size_t>(i % pieces)].thickness.metres());
        reading.reading = Temperature::fromCelsius(draw.uniform(15, 30));
        batch.probes.push_back(reading);
    }
    return batch;
}

void printSpeed() {
    std::puts("speed, processor time of one core:");
    for (const bool quick : {false, true}) {
        const Layer layer{Length::fromMillimetres(60),
                          Material::constant({{0.48}, {1050}, {3500}}).value()};
        const Side fire = fireSide(fireFromGrateThermometer(Temperature::fromCelsius(200)).value(),
                                   1, Temperature::fromCelsius(100));
        const auto slab = Slab::make({&layer, 1}, Temperature::fromCelsius(5),
                                     quick ? Resolution::quick() : Resolution{})
                              .value();
        double cooked = 0;
        const double each = timed(300, [&] {
            GrillRun run(slab, steadyFire(fire), airSide(), Turning{{}, 5min});
            run.advanceTo(1h);
            cooked += run.slab().coldestCelsius();
        });
        std::printf("  one piece, %s: %.0f us per hour of cooking, %.1f million times real time\n",
                    quick ? "24 cells, up to 60 s" : "60 cells, up to 10 s", each * 1e6,
                    3600 / each / 1e6);
    }
    for (const auto& [pieces, probes] : {std::pair{1, 4}, {40, 0}, {40, 8}, {40, 40}}) {
        std::vector<double> took;
        for (int i = 0; i < 30; ++i) {
            took.push_back(timed(1, [&] {
                const auto fitted = FittedBatch::fit(bigBatch(pieces, probes));
                if (!fitted || fitted->forecast().pieces.empty()) std::puts("  failed");
            }));
        }
        std::sort(took.begin(), took.end());
        std::printf(
            "  %2d different pieces, %2d readings, refit and forecast: median %.1f ms, "
            "95th percentile %.1f ms (goal 20)\n",
            pieces, probes, took[15] * 1e3, took[28] * 1e3);
    }
}

struct Score {
    std::vector<double> off;  // minutes, forecast less truth
    int inside = 0, below = 0, missing = 0;
    double width = 0;
};

void add(Score& score, const Batch& batch, double truth) {
    const auto fitted = FittedBatch::fit(batch);
    const auto pull = fitted ? fitted->forecast().pieces[0].pull : std::nullopt;
    if (!pull) {
        ++score.missing;
        return;
    }
    const auto seconds = [](Instant at) { return secondsOf(at.time_since_epoch()); };
    score.off.push_back((seconds(pull->likely) - truth) / 60);
    score.inside += truth >= seconds(pull->low) && truth <= seconds(pull->high) ? 1 : 0;
    score.below += truth < seconds(pull->low) ? 1 : 0;
    score.width += (seconds(pull->high) - seconds(pull->low)) / 60;
}

void print(const char* name, const Score& score) {
    std::vector<double> off = score.off;
    double squares = 0, sum = 0;
    for (double& x : off) {
        squares += x * x;
        sum += x;
        x = std::abs(x);
    }
    std::sort(off.begin(), off.end());
    const auto n = static_cast<double>(off.size());
    std::printf(
        "  %-22s error median %.1f, rms %.1f, bias %+.1f min; 80 %% band holds %.1f %% "
        "(%.1f %% sooner), %.1f min wide; none %d\n",
        name, off[off.size() / 2], std::sqrt(squares / n), sum / n, 100 * score.inside / n,
        100 * score.below / n, score.width / n, score.missing);
}

void printForecasts(int cooks, std::uint64_t seed) {
    std::printf(
        "forecast of the pull over %d simulated cooks of a richer model "
        "(simulated_cook.h says which):\n",
        cooks);
    // Readings at these shares of the true time to pull, added one by one.
    const std::vector<double> taken[] = {{}, {0.75}, {0.55, 0.8}, {0.4, 0.55, 0.7, 0.85}};
    const char* names[] = {
        "before any reading:", "after 1 reading:", "after 2 readings:", "after 4 readings:"};
    Score scores[4];
    double total = 0;
    int unfinished = 0;
    for (int i = 0; i < cooks; ++i) {
        const SimulatedCook cook = drawCook(seed + static_cast<std::uint64_t>(i));
        if (cook.trulyDone == Duration(0)) {
            ++unfinished;
            continue;
        }
        const double truth = secondsOf(cook.trulyDone);
        total += truth / 60;
        for (int s = 0; s < 4; ++s) {
            Draw draw(77 + static_cast<std::uint64_t>(i));
            std::vector<ProbeReading> readings;
            Instant now{};
            for (const double share : taken[s]) {
                readings.push_back(
                    probeAt(cook, Duration(static_cast<int>(share * truth * 1000)), draw));
                now = readings.back().at;
            }
            add(scores[s], knownAt(cook, readings, now), truth);
        }
    }
    std::printf("  mean time to pull %.1f min; %d not done in four hours left out\n",
                total / (cooks - unfinished), unfinished);
    for (int s = 0; s < 4; ++s)
        print(names[s], scores[s]);
}

}  // namespace

int main(int argc, char** argv) {
    const int cooks = argc > 1 ? std::max(10, std::atoi(argv[1])) : 500;
    printAccuracy();
    printSpeed();
    printForecasts(cooks, argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1000);
    return 0;
}
