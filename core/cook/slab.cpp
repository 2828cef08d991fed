#include "cook/slab.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cinder::cook {

namespace {

// TR-BDF2 with gamma = 2 - sqrt 2: both stages then share one matrix, identity + kImplicit·dt·A.
const double kGamma = 2.0 - std::sqrt(2.0);
const double kImplicit = kGamma / 2.0;
const double kFromBetween = 1.0 / (kGamma * (2.0 - kGamma));
const double kFromBefore = (1.0 - kGamma) * (1.0 - kGamma) * kFromBetween;

/// From 0…1 to 0…1, slower at both ends.
double graded(double share, double grading) {
    return share - grading * std::sin(2.0 * std::numbers::pi * share) / (2.0 * std::numbers::pi);
}

}  // namespace

Result<Slab, CookError> Slab::make(std::span<const Layer> layers, Temperature start,
                                   Resolution resolution) {
    if (layers.empty()) return fail(CookError{CookError::Kind::OutOfRange, "layers"});
    if (resolution.cells < 4 || resolution.cells > 2000) {
        return fail(CookError{CookError::Kind::OutOfRange, "cells"});
    }
    if (!(resolution.grading >= 0 && resolution.grading < 1)) {
        return fail(CookError{CookError::Kind::OutOfRange, "grading"});
    }
    if (resolution.longestStep < Duration(1)) {
        return fail(CookError{CookError::Kind::OutOfRange, "longestStep"});
    }
    double whole = 0;
    for (const Layer& layer : layers) {
        if (!(layer.thickness > Length{})) {
            return fail(CookError{CookError::Kind::NotPositive, "thickness"});
        }
        whole += layer.thickness.metres();
    }

    Slab slab;
    slab.resolution_ = resolution;
    slab.z_ = {0.0};
    double base = 0;
    for (const Layer& layer : layers) {
        const double thick = layer.thickness.metres();
        // An element is two cells.
        const int elements =
            std::max(1, static_cast<int>(std::lround(0.5 * resolution.cells * thick / whole)));
        for (int i = 0; i < elements; ++i) {
            const double from = thick * graded(1.0 * i / elements, resolution.grading);
            const double to = thick * graded((i + 1.0) / elements, resolution.grading);
            slab.z_.push_back(base + 0.5 * (from + to));
            slab.z_.push_back(base + to);
            slab.materialOf_.push_back(slab.materials_.size());
        }
        base += thick;
        slab.materials_.push_back(layer.material);
        slab.constant_ = slab.constant_ && layer.material.isConstant();
    }
    const std::size_t nodes = slab.z_.size();
    slab.now_.assign(nodes, start.celsius());
    slab.before_ = slab.between_ = slab.rhs_ = slab.known_ = slab.now_;
    slab.elements_.resize(slab.materialOf_.size());
    slab.ends_.resize(slab.elements_.size() + 1);
    slab.refreshProperties(slab.now_);
    return slab;
}

Slab::Face Slab::plain(const Side& side) {
    Face face;
    face.loss = side.film.wattsPerSquareMetreKelvin;
    face.gain = face.loss * side.surroundings.celsius() + side.radiant.wattsPerSquareMetre;
    if (side.evaporation) {
        face.canBoil = true;
        face.boiling = side.evaporation->boiling.celsius();
        face.wetLoss = side.evaporation->film.wattsPerSquareMetreKelvin;
        face.wetGain = face.wetLoss * face.boiling;
    }
    return face;
}

void Slab::setSides(const Side& down, const Side& up) {
    down_ = plain(down);
    up_ = plain(up);
    wet_ = (down_.canBoil && now_.front() > down_.boiling ? 1U : 0U) |
           (up_.canBoil && now_.back() > up_.boiling ? 2U : 0U);
    factoredFor_ = 0;
}

double Slab::faceFlux(const Face& face, double celsius) const {
    const double dry = face.gain - face.loss * celsius;
    return face.canBoil && celsius > face.boiling ? dry + face.wetGain - face.wetLoss * celsius
                                                  : dry;
}

void Slab::refreshProperties(std::span<const double> celsius) {
    for (std::size_t e = 0; e < elements_.size(); ++e) {
        const Material& material = materials_[materialOf_[e]];
        const double* t = &celsius[2 * e];
        const double mean = (t[0] + 4.0 * t[1] + t[2]) / 6.0;
        const double length = z_[2 * e + 2] - z_[2 * e];
        elements_[e] = {material.conductivityAt(mean) / (3.0 * length),
                        material.heatCapacityAt(mean) * length / 30.0};
    }
}

/// Adds weight · (heat in by conduction and through the faces) at every node.
void Slab::addHeat(std::span<const double> celsius, double weight,
                   std::vector<double>& into) const {
    for (std::size_t e = 0; e < elements_.size(); ++e) {
        const double* t = &celsius[2 * e];
        const double k = weight * elements_[e].conduction;
        const double low = 8.0 * (t[1] - t[0]), high = 8.0 * (t[1] - t[2]), ends = t[0] - t[2];
        into[2 * e] += k * (low + ends);
        into[2 * e + 1] -= k * (low + high);
        into[2 * e + 2] += k * (high - ends);
    }
    into.front() += weight * faceFlux(down_, celsius.front());
    into.back() += weight * faceFlux(up_, celsius.back());
}

/// Adds the heat content: the consistent mass matrix of the elements.
void Slab::addCapacity(std::span<const double> celsius, std::vector<double>& into) const {
    for (std::size_t e = 0; e < elements_.size(); ++e) {
        const double* t = &celsius[2 * e];
        const double c = elements_[e].capacity;
        into[2 * e] += c * (4.0 * t[0] + 2.0 * t[1] - t[2]);
        into[2 * e + 1] += c * (2.0 * t[0] + 16.0 * t[1] + 2.0 * t[2]);
        into[2 * e + 2] += c * (4.0 * t[2] + 2.0 * t[1] - t[0]);
    }
}

/// Elimination of the matrix capacity + weight · conduction, once per step size. It runs from both
/// faces to the end of elements in the middle: two short chains of divisions side by side.
void Slab::factor(double weight, unsigned wet, Factors& into) const {
    const std::size_t n = elements_.size();
    const std::size_t middle = n / 2;
    into.middle.resize(n);
    into.toEnds.resize(n);
    into.link.resize(n);
    into.inverse.assign(n + 1, 0.0);
    auto& diagonal = into.inverse;
    auto& off = into.link;
    for (std::size_t e = 0; e < n; ++e) {
        const double c = elements_[e].capacity;
        const double k = weight * elements_[e].conduction;
        const double side = 2.0 * c - 8.0 * k;
        into.middle[e] = 1.0 / (16.0 * (c + k));
        into.toEnds[e] = side * into.middle[e];
        const double own = 4.0 * c + 7.0 * k - side * into.toEnds[e];
        diagonal[e] += own;
        diagonal[e + 1] += own;
        off[e] = k - c - side * into.toEnds[e];
    }
    diagonal.front() += weight * (down_.loss + ((wet & 1U) != 0 ? down_.wetLoss : 0.0));
    diagonal.back() += weight * (up_.loss + ((wet & 2U) != 0 ? up_.wetLoss : 0.0));

    const auto fromBelow = [&](std::size_t i) {  // eliminates i from i + 1
        diagonal[i] = 1.0 / diagonal[i];
        const double share = off[i] * diagonal[i];
        diagonal[i + 1] -= share * off[i];
        off[i] = share;
    };
    const auto fromAbove = [&](std::size_t i) {  // eliminates i from i - 1
        diagonal[i] = 1.0 / diagonal[i];
        const double share = off[i - 1] * diagonal[i];
        diagonal[i - 1] -= share * off[i - 1];
        off[i - 1] = share;
    };
    for (std::size_t s = 0; s < middle; ++s) {
        fromBelow(s);
        fromAbove(n - s);
    }
    if (n - middle > middle) fromAbove(middle + 1);
    diagonal[middle] = 1.0 / diagonal[middle];
    into.ready = true;
}

/// Turns the right-hand side into the solution. The ends are gathered first, and what one equation
/// hands to the next stays in a register: the sweeps are chains, and waiting for memory would cost
/// more than the sums.
void Slab::solve(const Factors& f, std::vector<double>& right) {
    const std::size_t n = elements_.size();
    const std::size_t middle = n / 2;
    const double* link = f.link.data();
    double* x = right.data();
    double* ends = ends_.data();
    double before = 0;
    for (std::size_t e = 0; e < n; ++e) {
        const double handed = f.toEnds[e] * x[2 * e + 1];
        ends[e] = x[2 * e] - (before + handed);
        before = handed;
    }
    ends[n] = x[2 * n] - before;

    double low = ends[0];
    double high = ends[n];
    for (std::size_t s = 0; s < middle; ++s) {
        const std::size_t above = n - s;
        ends[s] = low * f.inverse[s];
        ends[above] = high * f.inverse[above];
        low = ends[s + 1] - link[s] * low;
        high = ends[above - 1] - link[above - 1] * high;
    }
    const bool isOdd = n % 2 == 1;  // the upper half is one longer
    double at = isOdd ? low - link[middle] * high : low + high - ends[middle];
    if (isOdd) ends[middle + 1] = high * f.inverse[middle + 1];
    at *= f.inverse[middle];
    ends[middle] = at;
    low = high = at;
    for (std::size_t s = 0; s < middle; ++s) {
        const std::size_t below = middle - 1 - s;
        const std::size_t above = middle + 1 + s;
        ends[below] = low = ends[below] - link[below] * low;
        ends[above] = high = ends[above] - link[above - 1] * high;
    }
    if (isOdd) ends[n] -= link[n - 1] * high;

    for (std::size_t e = 0; e < n; ++e) {
        x[2 * e] = ends[e];
        x[2 * e + 1] = f.middle[e] * x[2 * e + 1] - f.toEnds[e] * (ends[e] + ends[e + 1]);
    }
    x[2 * n] = ends[n];
}

/// Solves capacity·T - weight·heat(T) = capacity·known_ + rhs_ for `into`, finding which faces
/// boil.
void Slab::solveStage(double weight, std::vector<double>& into) {
    // A pass beyond the first is needed when a face begins or stops boiling, or to bring
    // temperature-dependent properties up to the new temperatures (they change by 0.1 % per
    // kelvin).
    for (int pass = 0; pass < 6; ++pass) {
        if (!constant_) {
            refreshProperties(pass == 0 ? now_ : into);
            factor(weight, wet_, factors_[wet_]);
        } else if (!factors_[wet_].ready) {
            factor(weight, wet_, factors_[wet_]);
        }
        between_ = rhs_;
        addCapacity(known_, between_);
        between_.front() += weight * (down_.gain + ((wet_ & 1U) != 0 ? down_.wetGain : 0.0));
        between_.back() += weight * (up_.gain + ((wet_ & 2U) != 0 ? up_.wetGain : 0.0));
        solve(factors_[wet_], between_);
        double moved = 0;
        if (!constant_ && pass > 0) {
            for (std::size_t i = 0; i < now_.size(); ++i)
                moved = std::max(moved, std::abs(into[i] - between_[i]));
        }
        into.swap(between_);
        const unsigned wet = (down_.canBoil && into.front() > down_.boiling ? 1U : 0U) |
                             (up_.canBoil && into.back() > up_.boiling ? 2U : 0U);
        const bool settled = constant_ || (pass > 0 && moved < 1e-6);
        if (wet == wet_ && settled) return;
        wet_ = wet;
    }
}

/// As many steps as are needed, all of them shortened alike so that they end at `total`.
Slab::Steps Slab::stepsFor(double total) const {
    using Seconds = std::chrono::duration<double>;
    const double longest = Seconds(resolution_.longestStep).count();
    const double wished = Seconds(resolution_.firstStep).count();
    Steps steps{0, wished > 0 ? std::min(wished, longest) : longest, longest};
    double sum = 0;
    double size = steps.first;
    const double enough = total * (1.0 - 1e-12);
    while (sum < enough && size < longest) {
        sum += size;
        size = steps.next(steps.count++, size);
    }
    if (sum < enough) {
        const double more = std::ceil((total - sum) / longest - 1e-9);
        sum += more * longest;
        steps.count += static_cast<int>(more);
    }
    steps.first *= total / sum;
    steps.longest *= total / sum;
    return steps;
}

void Slab::step(double seconds) {
    const std::size_t n = now_.size();
    const double weight = kImplicit * seconds;
    stepSeconds_ = seconds;
    if (seconds != factoredFor_) {
        for (Factors& f : factors_)
            f.ready = false;
        factoredFor_ = seconds;
    }
    before_ = now_;
    known_ = before_;
    std::fill(rhs_.begin(), rhs_.end(), 0.0);

    // Trapezoid to the point between; its explicit half uses the properties and faces at the start.
    if (constant_) {
        addHeat(before_, weight, rhs_);
    } else {
        // A rate of temperature, not of heat, where the capacity of the stage is another one.
        refreshProperties(before_);
        addHeat(before_, weight, rhs_);
        factor(0.0, 0U, factors_[wet_]);
        solve(factors_[wet_], rhs_);
        for (std::size_t i = 0; i < n; ++i)
            known_[i] += rhs_[i];
        std::fill(rhs_.begin(), rhs_.end(), 0.0);
    }
    solveStage(weight, now_);

    // Second backward difference from the start and the point between to the end.
    for (std::size_t i = 0; i < n; ++i)
        known_[i] = kFromBetween * now_[i] - kFromBefore * before_[i];
    std::fill(rhs_.begin(), rhs_.end(), 0.0);
    solveStage(weight, now_);
}

void Slab::retakeStep(double seconds) {
    now_ = before_;
    step(seconds);
}

Length Slab::thickness() const {
    return Length::fromMetres(z_.back());
}

double Slab::quadratic(std::size_t element, double metres) const {
    const double* t = &now_[2 * element];
    const double from = z_[2 * element];
    const double s = (metres - from) / (z_[2 * element + 2] - from);
    return t[0] * (1.0 - s) * (1.0 - 2.0 * s) + t[1] * 4.0 * s * (1.0 - s) +
           t[2] * s * (2.0 * s - 1.0);
}

double Slab::celsiusAt(double metres) const {
    const auto above = std::upper_bound(z_.begin(), z_.end(), metres);
    if (above == z_.begin()) return now_.front();
    if (above == z_.end()) return now_.back();
    return quadratic(static_cast<std::size_t>(above - z_.begin() - 1) / 2, metres);
}

Temperature Slab::at(Length depth) const {
    return Temperature::fromCelsius(celsiusAt(depth.metres()));
}

Temperature Slab::middle() const {
    return Temperature::fromCelsius(celsiusAt(0.5 * z_.back()));
}

Temperature Slab::mean() const {
    double heat = 0;
    double capacity = 0;
    // Simpson's rule per element.
    for (std::size_t e = 0; e < elements_.size(); ++e) {
        const Material& material = materials_[materialOf_[e]];
        const double length = z_[2 * e + 2] - z_[2 * e];
        for (const std::size_t i : {0U, 1U, 2U}) {
            const double t = now_[2 * e + i];
            const double share = (i == 1 ? 4.0 : 1.0) * length * material.heatCapacityAt(t);
            heat += share * t;
            capacity += share;
        }
    }
    return Temperature::fromCelsius(heat / capacity);
}

double Slab::coldestCelsius() const {
    const auto found = std::min_element(now_.begin(), now_.end());
    const auto node = static_cast<std::size_t>(found - now_.begin());
    double lowest = *found;
    // The bottom of the parabola, where it lies inside its element.
    const auto lookInto = [&](std::size_t e) {
        const double* t = &now_[2 * e];
        const double bend = t[0] - 2.0 * t[1] + t[2];
        const double lean = t[2] - t[0];
        if (bend > 0 && std::abs(lean) < 2.0 * bend)
            lowest = std::min(lowest, t[1] - lean * lean / (8.0 * bend));
    };
    if (node > 0) lookInto((node - 1) / 2);
    if (node % 2 == 0 && node + 1 < now_.size()) lookInto(node / 2);
    return lowest;
}

Temperature Slab::coldest() const {
    return Temperature::fromCelsius(coldestCelsius());
}

}  // namespace cinder::cook
