#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "base/rng.h"
#include "grate/classes.h"
#include "overlap.h"

using namespace cinder;
using grate::Footprint;
using grate::Shape;
using grate::Surface;

namespace {

Length mm(double value) {
    return Length::fromMillimetres(value);
}

constexpr Shape kShapes[] = {Shape::Tapered, Shape::Teardrop, Shape::Round, Shape::Skewer};

}  // namespace

TEST_CASE("the judge itself tells touching from overlapping") {
    const judge::Outline square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
    const judge::Outline apart{{13, 4}, {20, 4}, {20, 9}, {13, 9}};
    const judge::Outline across{{9, 9}, {15, 9}, {15, 15}, {9, 15}};
    CHECK(judge::distance(square, apart) == Approx(3));
    CHECK(judge::distance(square, across) == 0);
    CHECK(judge::area(judge::clipped(square, across)) == Approx(1));
}

TEST_CASE("outlines have the size they are told") {
    const auto areaOf = [](const Footprint& piece) {
        return grate::areaSquareMillimetres(grate::outlineAt(piece, {}));
    };
    CHECK(areaOf({mm(300), mm(200), mm(100)}) == Approx(45000));
    CHECK(areaOf({mm(300), mm(40), mm(40), Shape::Skewer}) == Approx(12000));
    // A polygon of 24 sides around a circle is 24 tan(7.5 degrees) / pi times as large.
    const double around = 24 * std::tan(std::numbers::pi / 24);
    CHECK(areaOf({mm(100), mm(100), mm(100), Shape::Round}) == Approx(2500 * around).epsilon(1e-4));
    for (const Shape shape : kShapes) {
        const Footprint piece{mm(300), mm(180), mm(90), shape};
        for (const bool isAcross : {false, true}) {
            for (const bool isReversed : {false, true}) {
                const auto outline = judge::inMillimetres(
                    grate::outlineAt(piece, {mm(7), mm(5), isAcross, isReversed}));
                double left = 1e9, right = 0, bottom = 1e9, top = 0;
                for (const auto& p : outline) {
                    left = std::min(left, p.x);
                    right = std::max(right, p.x);
                    bottom = std::min(bottom, p.y);
                    top = std::max(top, p.y);
                }
                CHECK(judge::area(outline) > 0);
                CHECK(left == Approx(7).margin(0.002));
                CHECK(bottom == Approx(5).margin(0.002));
                CHECK(right - left == Approx(isAcross ? 180 : 300).margin(0.002));
                CHECK(top - bottom == Approx(isAcross ? 300 : 180).margin(0.002));
            }
        }
    }
}

TEST_CASE("the narrow end points where the angle says") {
    const Footprint piece{mm(300), mm(180), mm(60)};
    const auto narrowEnd = [&](bool isAcross, bool isReversed) {
        const grate::Place place{{}, {}, isAcross, isReversed};
        const auto outline = judge::inMillimetres(grate::outlineAt(piece, place));
        // The middle of the shortest side, seen from the middle of the box.
        judge::Dot end;
        double shortest = 1e9;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const auto& a = outline[i];
            const auto& b = outline[(i + 1) % outline.size()];
            if (const double size = std::hypot(b.x - a.x, b.y - a.y); size < shortest) {
                shortest = size;
                end = {(a.x + b.x) / 2, (a.y + b.y) / 2};
            }
        }
        const double x = end.x - (isAcross ? 90 : 150);
        const double y = end.y - (isAcross ? 150 : 90);
        const double degrees = std::atan2(y, x) * 180 / std::numbers::pi;
        const int turned = (static_cast<int>(std::lround(degrees)) + 360) % 360;
        CHECK(turned == grate::angleDegrees(place));
    };
    narrowEnd(false, false);
    narrowEnd(false, true);
    narrowEnd(true, false);
    narrowEnd(true, true);
}

TEST_CASE("discs lie in a honeycomb") {
    // Rows of touching discs are sqrt(3)/2 diameters apart: 1 + 6 * 0.866 = 6.196 diameters for
    // seven rows, alternately of five and four. A square grid would hold six rows of five.
    const Footprint disc{mm(100), mm(100), mm(100), Shape::Round};
    CHECK(grate::mostPieces({mm(620), mm(500), mm(0)}, disc) == 32);
    CHECK(grate::mostPieces({mm(619), mm(500), mm(0)}, disc) == 30);
    const auto layout = grate::lay({mm(620), mm(500), mm(0)}, disc, 32);
    REQUIRE(layout);
    for (std::size_t i = 0; i < layout->places.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const auto& a = layout->places[i];
            const auto& b = layout->places[k];
            CHECK(std::hypot((a.x - b.x).millimetres(), (a.y - b.y).millimetres()) >= 100 - 0.002);
        }
}

TEST_CASE("teardrops lie head to tail closer than their boxes") {
    const Footprint drop{mm(240), mm(160), mm(60), Shape::Teardrop};
    // Centres of the two circles are 130 mm apart, so the flanks lean by phi, sin phi = 50 / 130.
    // The facing flanks of neighbours are parallel and touch when the pieces are
    // (160 - 80 sin phi) / cos phi = 140 mm apart: five take 160 + 4 · 140 = 720 mm, and 1 % more
    // as polygons around their circles.
    CHECK(grate::mostPieces({mm(240), mm(728), mm(0)}, {mm(240), mm(160), mm(160)}) == 4);
    CHECK(grate::mostPieces({mm(240), mm(728), mm(0)}, drop) == 5);
    CHECK(grate::mostPieces({mm(240), mm(719), mm(0)}, drop) == 4);
}

TEST_CASE("no shape overlaps, hangs over or passes the area bound") {
    Rng rng(11);
    const auto upTo = [&](double low, double high) {
        return mm(low + (high - low) * static_cast<double>(rng.below(1000)) / 1000.0);
    };
    for (int trial = 0; trial < 120; ++trial) {
        const Surface surface{upTo(400, 1800), upTo(300, 700), upTo(0, 30)};
        const Length length = upTo(90, 300);
        const Length width = mm(length.millimetres() * (0.3 + 0.007 * rng.below(100)));
        const Footprint piece{length, width, mm(width.millimetres() * 0.01 * rng.below(101)),
                              kShapes[trial % 4]};
        const std::int32_t most = grate::mostPieces(surface, piece);
        INFO("trial " << trial << ", " << most << " pieces");
        CHECK(most <= grate::areaBound(surface, piece));
        if (most == 0) continue;
        const auto full = grate::lay(surface, piece, most);
        REQUIRE(full);
        CHECK(static_cast<std::int32_t>(full->places.size()) == most);
        CHECK(judge::faultOf(surface, piece, *full) == "");
        CHECK_FALSE(grate::lay(surface, piece, most + 1));
        const auto some = grate::lay(surface, piece, (2 * most + 2) / 3);
        REQUIRE(some);
        CHECK(judge::faultOf(surface, piece, *some) == "");
    }
}

TEST_CASE("the judge would see a layout that is too tight") {
    const Surface surface{mm(1000), mm(500), mm(10)};
    const Footprint piece{mm(200), mm(120), mm(60)};
    auto layout = *grate::lay(surface, piece, 12);
    REQUIRE(judge::faultOf(surface, piece, layout) == "");
    layout.places[0].y += mm(1);
    CHECK(judge::faultOf(surface, piece, layout) != "");
}

TEST_CASE("a teardrop shorter than it is wide is no teardrop") {
    CHECK_FALSE(grate::isReal({mm(100), mm(120), mm(60), Shape::Teardrop}));
    CHECK(grate::isReal({mm(100), mm(120), mm(60), Shape::Tapered}));
    // As long as wide it is a disc, whatever its narrow end.
    for (const double narrow : {0.0, 60.0, 100.0}) {
        const auto outline = grate::outlineAt({mm(100), mm(100), mm(narrow), Shape::Teardrop}, {});
        CHECK(grate::areaSquareMillimetres(outline) == Approx(7854).epsilon(0.01));
    }
    CHECK_FALSE(grate::isReal({mm(100), mm(60), mm(80)}));
    CHECK(grate::mostPieces({mm(900), mm(600), mm(0)},
                            {mm(100), mm(120), mm(60), Shape::Teardrop}) == 0);
}

TEST_CASE("every batch gets its share of thick and thin") {
    const std::array<std::int32_t, 3> percents{25, 50, 25};
    std::array<int, 3> given{};
    for (std::int32_t first = 0; first < 40; first += 8) {
        const auto batch = grate::dealClasses(percents, first, 8);
        std::array<int, 3> here{};
        for (const auto kind : batch) {
            ++here[static_cast<std::size_t>(kind)];
            ++given[static_cast<std::size_t>(kind)];
        }
        CHECK(here == std::array{2, 4, 2});
    }
    CHECK(given == std::array{10, 20, 10});
    CHECK(grate::dealClasses({}, 0, 5).empty());
    // Never more than one piece off after any number of pieces.
    const std::array<std::int32_t, 3> odd{37, 41, 22};
    for (std::int32_t count = 1; count < 60; ++count) {
        std::array<int, 3> so{};
        for (const auto kind : grate::dealClasses(odd, 0, count))
            ++so[static_cast<std::size_t>(kind)];
        for (std::size_t c = 0; c < 3; ++c)
            CHECK(std::abs(so[c] - odd[c] * count / 100.0) <= 1.0);
    }
}

TEST_CASE("the thickest pieces lie in the middle of the batch") {
    const Surface surface{mm(900), mm(500), mm(10)};
    const Footprint piece{mm(150), mm(100), mm(100)};
    const auto layout = *grate::lay(surface, piece, 15);
    std::vector<std::int32_t> classes(15, 0);
    classes[0] = classes[1] = classes[2] = 1;
    const std::array thickness{mm(30), mm(60)};
    const auto atPlace = grate::thickestToTheMiddle(layout.places, piece, classes, thickness);
    REQUIRE(atPlace.size() == 15);
    CHECK(std::count(atPlace.begin(), atPlace.end(), 1) == 3);
    double middleX = 0, middleY = 0;
    for (const auto& place : layout.places) {
        middleX += place.x.millimetres() / 15;
        middleY += place.y.millimetres() / 15;
    }
    double furthestThick = 0, nearestThin = 1e9;
    for (std::size_t i = 0; i < 15; ++i) {
        const double away = std::hypot(layout.places[i].x.millimetres() - middleX,
                                       layout.places[i].y.millimetres() - middleY);
        if (atPlace[i] == 1)
            furthestThick = std::max(furthestThick, away);
        else
            nearestThin = std::min(nearestThin, away);
    }
    CHECK(furthestThick <= nearestThin + 1);
}
