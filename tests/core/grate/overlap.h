#pragma once

/// Judges layouts without a line of the code that makes them: outlines are clipped against each
/// other, distances are taken from side to side.
///
/// Source of the clipping: I. E. Sutherland, G. W. Hodgman, "Reentrant Polygon Clipping", CACM 17
/// (1974); of the area: the shoelace formula of Gauss.

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "grate/layout.h"

namespace judge {

using namespace cinder;

struct Dot {
    double x = 0;
    double y = 0;
};
using Outline = std::vector<Dot>;  // mm, counter-clockwise

inline Outline inMillimetres(const grate::Polygon& polygon) {
    Outline outline;
    for (const auto& p : polygon)
        outline.push_back({p.x.millimetres(), p.y.millimetres()});
    return outline;
}

inline double area(const Outline& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Dot a = outline[i];
        const Dot b = outline[(i + 1) % outline.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return twice / 2;
}

/// What of `subject` lies inside the convex `window`.
inline Outline clipped(Outline subject, const Outline& window) {
    for (std::size_t k = 0; k < window.size() && !subject.empty(); ++k) {
        const Dot a = window[k];
        const Dot b = window[(k + 1) % window.size()];
        const auto inside = [&](Dot p) {
            return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
        };
        Outline kept;
        for (std::size_t i = 0; i < subject.size(); ++i) {
            const Dot p = subject[i];
            const Dot q = subject[(i + 1) % subject.size()];
            const double sp = inside(p);
            const double sq = inside(q);
            if (sp >= 0) kept.push_back(p);
            if ((sp > 0 && sq < 0) || (sp < 0 && sq > 0)) {
                const double t = sp / (sp - sq);
                kept.push_back({p.x + t * (q.x - p.x), p.y + t * (q.y - p.y)});
            }
        }
        subject = std::move(kept);
    }
    return subject;
}

/// Shortest distance from a point to a side.
inline double distance(Dot p, Dot a, Dot b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double size = dx * dx + dy * dy;
    const double along = size > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / size : 0;
    const double t = std::clamp(along, 0.0, 1.0);
    return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/// 0 when they share more than a line.
inline double distance(const Outline& a, const Outline& b) {
    if (area(clipped(a, b)) > 1e-3) return 0;
    double least = 1e9;
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t k = 0; k < b.size(); ++k) {
            least = std::min(least, distance(a[i], b[k], b[(k + 1) % b.size()]));
            least = std::min(least, distance(b[k], a[i], a[(i + 1) % a.size()]));
        }
    return least;
}

/// What is wrong with a layout; empty when nothing is. Outlines are rounded to micrometres, so two
/// of them are allowed.
inline std::string faultOf(const grate::Surface& surface, const grate::Footprint& piece,
                           const grate::Layout& layout) {
    constexpr double kRounding = 2e-3;
    std::vector<Outline> outlines;
    for (const auto& place : layout.places)
        outlines.push_back(inMillimetres(grate::outlineAt(piece, place)));
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        if (area(outlines[i]) <= 0) return "outline " + std::to_string(i) + " is inside out";
        for (const Dot& corner : outlines[i]) {
            const bool isOn = corner.x >= -kRounding && corner.y >= -kRounding &&
                              corner.x <= layout.usedLength.millimetres() + kRounding &&
                              corner.y <= surface.width.millimetres() + kRounding;
            if (!isOn) return "piece " + std::to_string(i) + " hangs over";
        }
        for (std::size_t k = 0; k < i; ++k) {
            const double apart = distance(outlines[i], outlines[k]);
            if (apart < surface.gap.millimetres() - kRounding)
                return "pieces " + std::to_string(k) + " and " + std::to_string(i) + " are " +
                       std::to_string(apart) + " mm apart";
        }
    }
    if (layout.usedLength > surface.length) return "the batch is longer than the grate";
    return {};
}

}  // namespace judge
