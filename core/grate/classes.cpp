#include "grate/classes.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cinder::grate {

std::vector<std::int32_t> dealClasses(std::span<const std::int32_t> percents, std::int32_t first,
                                      std::int32_t count) {
    std::vector<std::int32_t> dealt;
    if (percents.empty()) return dealt;
    std::vector<std::int64_t> given(percents.size(), 0);
    for (std::int32_t i = 0; i < first + count; ++i) {
        // Who is furthest behind its share gets the next piece.
        std::size_t next = 0;
        std::int64_t furthest = INT64_MIN;
        for (std::size_t c = 0; c < percents.size(); ++c) {
            const std::int64_t behind = std::int64_t{percents[c]} * (i + 1) - 100 * given[c];
            if (behind > furthest) {
                furthest = behind;
                next = c;
            }
        }
        ++given[next];
        if (i >= first) dealt.push_back(static_cast<std::int32_t>(next));
    }
    return dealt;
}

std::vector<std::int32_t> thickestToTheMiddle(std::span<const Place> places, const Footprint& piece,
                                              std::vector<std::int32_t> classes,
                                              std::span<const Length> thickness) {
    struct Centre {
        double x = 0;
        double y = 0;
    };
    std::vector<Centre> centres;
    Centre middle;
    for (const Place& place : places) {
        const Length& alongX = place.isAcross ? piece.width : piece.length;
        const Length& alongY = place.isAcross ? piece.length : piece.width;
        centres.push_back({place.x.millimetres() + alongX.millimetres() / 2,
                           place.y.millimetres() + alongY.millimetres() / 2});
        middle.x += centres.back().x / static_cast<double>(places.size());
        middle.y += centres.back().y / static_cast<double>(places.size());
    }
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    // Whole millimetres, so that equally far places keep their order on every machine.
    const auto away = [&](std::size_t i) {
        return std::llround(std::hypot(centres[i].x - middle.x, centres[i].y - middle.y));
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return away(a) < away(b); });
    std::stable_sort(classes.begin(), classes.end(), [&](std::int32_t a, std::int32_t b) {
        return thickness[static_cast<std::size_t>(a)] > thickness[static_cast<std::size_t>(b)];
    });
    std::vector<std::int32_t> atPlace(places.size(), 0);
    for (std::size_t i = 0; i < order.size() && i < classes.size(); ++i)
        atPlace[order[i]] = classes[i];
    return atPlace;
}

}  // namespace cinder::grate
