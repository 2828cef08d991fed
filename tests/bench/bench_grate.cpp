// Prints how full grates are packed, against the bound by area. Asserts nothing.
//   bench_grate [batches [seed]]     (50 batches from seed 3 by default)
// Grates 600 to 1900 mm by 400 to 700 mm, gaps 10 to 25 mm, pieces of every shape 90 to 330 mm
// long. Every layout is judged by the checker of the tests; a fault is printed.

#include <cstdio>
#include <cstdlib>
#include <ctime>

#include "../core/grate/overlap.h"
#include "base/rng.h"

using namespace cinder;
using namespace cinder::grate;

namespace {

struct Lot {
    Surface surface;
    Footprint piece;
};

Lot drawLot(Rng& rng, int number) {
    const auto between = [&](double low, double high) {
        return Length::fromMillimetres(low + (high - low) * rng.unit());
    };
    Lot lot;
    lot.surface = {between(600, 1900), between(400, 700), between(10, 25)};
    const Shape shapes[] = {Shape::Tapered, Shape::Tapered, Shape::Teardrop, Shape::Round,
                            Shape::Skewer};
    lot.piece.shape = shapes[number % 5];
    lot.piece.length = between(90, 330);
    const double length = lot.piece.length.millimetres();
    switch (lot.piece.shape) {
        case Shape::Round:
            lot.piece.length = between(70, 160);
            lot.piece.width = lot.piece.narrowWidth = lot.piece.length;
            break;
        case Shape::Skewer:
            lot.piece.width = lot.piece.narrowWidth = between(30, 55);
            break;
        case Shape::Tapered:
        case Shape::Teardrop:
            lot.piece.width = between(0.4 * length, 0.8 * length);
            lot.piece.narrowWidth =
                Length::fromMillimetres(lot.piece.width.millimetres() * (0.3 + 0.7 * rng.unit()));
            break;
    }
    return lot;
}

const char* nameOf(Shape shape) {
    switch (shape) {
        case Shape::Tapered:
            return "tapered";
        case Shape::Teardrop:
            return "teardrop";
        case Shape::Round:
            return "round";
        case Shape::Skewer:
            break;
    }
    return "skewer";
}

}  // namespace

int main(int argc, char** argv) {
    const int batches = argc > 1 ? std::max(1, std::atoi(argv[1])) : 50;
    Rng rng(argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 3);
    std::printf("%-9s %-14s %-16s %6s %6s %6s\n", "shape", "piece, mm", "over coals, mm", "placed",
                "bound", "share");
    double worst = 1, sum = 0, slowest = 0, total = 0;
    int counted = 0, faults = 0;
    long placedAll = 0, boundAll = 0;
    for (int i = 0; i < batches; ++i) {
        const Lot lot = drawLot(rng, i);
        const std::clock_t begun = std::clock();
        const std::int32_t placed = mostPieces(lot.surface, lot.piece);
        const auto layout = lay(lot.surface, lot.piece, placed);
        const double took = 1e3 * static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
        slowest = std::max(slowest, took);
        total += took;
        const std::int32_t bound = areaBound(lot.surface, lot.piece);
        if (bound == 0) continue;
        if (layout) {
            const std::string fault = judge::faultOf(lot.surface, lot.piece, *layout);
            if (!fault.empty()) {
                ++faults;
                std::printf("FAULT: %s\n", fault.c_str());
            }
        }
        const double share = static_cast<double>(placed) / bound;
        std::printf("%-9s %3.0fx%3.0f-%3.0f    %4.0fx%3.0f gap %2.0f  %6d %6d %5.0f%%\n",
                    nameOf(lot.piece.shape), lot.piece.length.millimetres(),
                    lot.piece.width.millimetres(), lot.piece.narrowWidth.millimetres(),
                    lot.surface.length.millimetres(), lot.surface.width.millimetres(),
                    lot.surface.gap.millimetres(), placed, bound, 100 * share);
        worst = std::min(worst, share);
        sum += share;
        ++counted;
        placedAll += placed;
        boundAll += bound;
    }
    std::printf(
        "%d batches: %ld pieces placed, %ld by the area bound (%.1f %%); mean of batches "
        "%.1f %%, least %.0f %%; %d faults\n",
        counted, placedAll, boundAll,
        100.0 * static_cast<double>(placedAll) / static_cast<double>(boundAll), 100 * sum / counted,
        100 * worst, faults);
    std::printf("processor time to count and lay one batch: mean %.2f ms, most %.2f ms\n",
                total / batches, slowest);
    return 0;
}
