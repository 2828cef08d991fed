#include <array>
#include <catch2/catch.hpp>
#include <cmath>

#include "base/rng.h"
#include "grate/layout.h"

using namespace cinder;
using grate::Footprint;
using grate::Place;
using grate::Surface;

namespace {

Length mm(double value) {
    return Length::fromMillimetres(value);
}

struct Point {
    double x = 0;
    double y = 0;
};
using Corners = std::array<Point, 4>;

/// The piece's outline on the grate, worked out from the definition of a place alone.
Corners outline(const Footprint& piece, const Place& place) {
    const double length = piece.length.millimetres();
    const double width = piece.width.millimetres();
    const double inset = (width - piece.narrowWidth.millimetres()) / 2;
    const double first = place.isReversed ? inset : 0;
    const double last = place.isReversed ? 0 : inset;
    Corners corners{{{0, first}, {length, last}, {length, width - last}, {0, width - first}}};
    for (auto& corner : corners) {
        if (place.isAcross) std::swap(corner.x, corner.y);
        corner.x += place.x.millimetres();
        corner.y += place.y.millimetres();
    }
    return corners;
}

/// Shortest distance from a point to a side.
double distance(Point p, Point a, Point b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy);
    const double t = std::min(1.0, std::max(0.0, along));
    return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/// Greatest clear width between two convex outlines over the normals of their sides: positive
/// only when they do not overlap.
double clearance(const Corners& a, const Corners& b) {
    double best = -1e9;
    for (const auto* one : {&a, &b}) {
        for (std::size_t i = 0; i < 4; ++i) {
            const Point p = (*one)[i];
            const Point q = (*one)[(i + 1) % 4];
            const double size = std::hypot(q.x - p.x, q.y - p.y);
            const Point normal{(q.y - p.y) / size, (p.x - q.x) / size};
            double aLow = 1e9, aHigh = -1e9, bLow = 1e9, bHigh = -1e9;
            for (std::size_t k = 0; k < 4; ++k) {
                const double da = a[k].x * normal.x + a[k].y * normal.y;
                const double db = b[k].x * normal.x + b[k].y * normal.y;
                aLow = std::min(aLow, da);
                aHigh = std::max(aHigh, da);
                bLow = std::min(bLow, db);
                bHigh = std::max(bHigh, db);
            }
            best = std::max({best, bLow - aHigh, aLow - bHigh});
        }
    }
    return best;
}

double distance(const Corners& a, const Corners& b) {
    if (clearance(a, b) <= 0) return 0;
    double least = 1e9;
    for (std::size_t i = 0; i < 4; ++i)
        for (std::size_t k = 0; k < 4; ++k) {
            least = std::min(least, distance(a[i], b[k], b[(k + 1) % 4]));
            least = std::min(least, distance(b[i], a[k], a[(k + 1) % 4]));
        }
    return least;
}

void checkLayout(const Surface& surface, const Footprint& piece, const grate::Layout& layout) {
    constexpr double kSlack = 1e-6;
    std::vector<Corners> outlines;
    for (const auto& place : layout.places)
        outlines.push_back(outline(piece, place));
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        for (const auto& corner : outlines[i]) {
            CHECK(corner.x >= -kSlack);
            CHECK(corner.y >= -kSlack);
            CHECK(corner.x <= layout.usedLength.millimetres() + kSlack);
            CHECK(corner.y <= surface.width.millimetres() + kSlack);
        }
        for (std::size_t k = 0; k < i; ++k)
            CHECK(distance(outlines[i], outlines[k]) >= surface.gap.millimetres() - kSlack);
    }
    CHECK(layout.usedLength <= surface.length);
}

}  // namespace

TEST_CASE("Rectangles lie in rows, the way round that fits more") {
    const Surface surface{mm(1000), mm(500), mm(0)};
    // 5 x 5 along, or 2 across by 10 rows: 20 and 25.
    CHECK(grate::mostPieces(surface, {mm(200), mm(100), mm(100)}) == 25);
    // 240 long: 4 rows of 5 along and one more across (40 mm are left, none fits); across
    // 2 by 10 rows. Both give 20.
    CHECK(grate::mostPieces(surface, {mm(240), mm(100), mm(100)}) == 20);
}

TEST_CASE("What is left of the length is filled with rows the other way round") {
    // 2 rows of 3 along take 600 mm, and the 150 mm behind them one row of 1 across.
    const Surface surface{mm(750), mm(450), mm(0)};
    const Footprint piece{mm(300), mm(150), mm(150)};
    CHECK(grate::mostPieces(surface, piece) == 7);
    const auto layout = grate::lay(surface, piece, 7);
    REQUIRE(layout);
    checkLayout(surface, piece, *layout);
}

TEST_CASE("Tapered pieces head to tail take less room than their boxes") {
    const Surface surface{mm(300), mm(800), mm(0)};
    // Boxes 200 wide: 4. Head to tail every further piece takes (200 + 100) / 2 = 150: 5.
    CHECK(grate::mostPieces(surface, {mm(300), mm(200), mm(200)}) == 4);
    CHECK(grate::mostPieces(surface, {mm(300), mm(200), mm(100)}) == 5);
}

TEST_CASE("The gap is kept and costs pieces") {
    const Footprint piece{mm(100), mm(100), mm(100)};
    CHECK(grate::mostPieces({mm(1000), mm(500), mm(0)}, piece) == 50);
    CHECK(grate::mostPieces({mm(1000), mm(500), mm(20)}, piece) == 32);  // 8 rows of 4
}

TEST_CASE("A piece larger than the grate does not fit, turned or not") {
    CHECK(grate::mostPieces({mm(500), mm(300), mm(0)}, {mm(600), mm(310), mm(310)}) == 0);
    CHECK_FALSE(grate::lay({mm(500), mm(300), mm(0)}, {mm(600), mm(310), mm(310)}, 1));
    CHECK_FALSE(grate::lay({mm(500), mm(300), mm(0)}, {mm(100), mm(100), mm(100)}, 0));
    CHECK(grate::mostPieces({mm(500), mm(300), mm(0)}, {mm(0), mm(0), mm(0)}) == 0);
}

TEST_CASE("No two pieces of any layout come closer than the gap, and none hangs over the edge") {
    Rng rng(7);
    for (int trial = 0; trial < 200; ++trial) {
        const auto upTo = [&](double low, double high) {
            return mm(low + (high - low) * static_cast<double>(rng.below(1000)) / 1000.0);
        };
        const Surface surface{upTo(400, 1800), upTo(300, 700), upTo(0, 40)};
        const Length length = upTo(80, 350);
        const Length width = mm(length.millimetres() * 0.3) + upTo(0, length.millimetres() * 0.7);
        const Footprint piece{length, width, mm(width.millimetres() * 0.4)};
        const std::int32_t most = grate::mostPieces(surface, piece);
        INFO("trial " << trial << ", " << most << " pieces");
        if (most == 0) continue;
        const auto full = grate::lay(surface, piece, most);
        REQUIRE(full);
        CHECK(static_cast<std::int32_t>(full->places.size()) == most);
        checkLayout(surface, piece, *full);
        CHECK_FALSE(grate::lay(surface, piece, most + 1));
        const auto half = grate::lay(surface, piece, (most + 1) / 2);
        REQUIRE(half);
        checkLayout(surface, piece, *half);
        CHECK(half->usedLength <= full->usedLength);
    }
}

TEST_CASE("Batches are as few as geometry allows and about equally full") {
    const std::array surfaces{Surface{mm(1000), mm(500), mm(20)}};
    const Footprint piece{mm(100), mm(100), mm(100)};  // 32 fit
    const auto batches = grate::makeBatches(surfaces, piece, 70);
    REQUIRE(batches.size() == 3);
    CHECK(batches[0].pieces == 24);
    CHECK(batches[1].pieces == 23);
    CHECK(batches[2].pieces == 23);
    CHECK(grate::makeBatches(surfaces, piece, 32).size() == 1);
    CHECK(grate::makeBatches(surfaces, piece, 20, 8).size() == 3);
}

TEST_CASE("Two grates take turns, each as much as it holds") {
    const std::array surfaces{Surface{mm(1000), mm(500), mm(20)},
                              Surface{mm(500), mm(500), mm(20)}};
    const Footprint piece{mm(100), mm(100), mm(100)};  // 32 and 16 fit
    const auto batches = grate::makeBatches(surfaces, piece, 45);
    REQUIRE(batches.size() == 2);
    CHECK(batches[0].surface == 0);
    CHECK(batches[0].pieces == 30);
    CHECK(batches[1].surface == 1);
    CHECK(batches[1].pieces == 15);
    CHECK(grate::makeBatches(surfaces, {mm(2000), mm(600), mm(600)}, 4).empty());
}
