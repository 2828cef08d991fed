#include "cook/slab.h"

#include <algorithm>
#include <cmath>

namespace cinder::cook {

namespace {

// TR-BDF2 with gamma = 2 - sqrt 2: both stages then share one matrix, identity + kImplicit·dt·A.
const double kGamma = 2.0 - std::sqrt(2.0);
const double kImplicit = kGamma / 2.0;
const double kFromBetween = 1.0 / (kGamma * (2.0 - kGamma));
const double kFromBefore = (1.0 - kGamma) * (1.0 - kGamma) * kFromBetween;

}  // namespace

Result<Slab, CookError> Slab::make(std::span<const Layer> layers, Temperature start,
                                   Resolution resolution) {
    if (layers.empty()) return fail(CookError{CookError::Kind::OutOfRange, "layers"});
    if (resolution.cells < 4 || resolution.cells > 2000) {
        return fail(CookError{CookError::Kind::OutOfRange, "cells"});
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
        const int cells =
            std::max(2, static_cast<int>(std::lround(resolution.cells * thick / whole)));
        for (int i = 1; i <= cells; ++i) {
            slab.z_.push_back(base + thick * i / cells);
            slab.materialOf_.push_back(slab.materials_.size());
        }
        base += thick;
        slab.materials_.push_back(layer.material);
        slab.constant_ = slab.constant_ && layer.material.isConstant();
    }
    const std::size_t nodes = slab.z_.size();
    slab.now_.assign(nodes, start.celsius());
    slab.before_ = slab.between_ = slab.rhs_ = slab.known_ = slab.now_;
    slab.capacity_.assign(nodes, 0);
    slab.conductance_.assign(nodes - 1, 0);
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
    std::fill(capacity_.begin(), capacity_.end(), 0.0);
    for (std::size_t j = 0; j < conductance_.size(); ++j) {
        const Material& material = materials_[materialOf_[j]];
        const double width = z_[j + 1] - z_[j];
        conductance_[j] = material.conductivityAt(0.5 * (celsius[j] + celsius[j + 1])) / width;
        capacity_[j] += 0.5 * width * material.heatCapacityAt(celsius[j]);
        capacity_[j + 1] += 0.5 * width * material.heatCapacityAt(celsius[j + 1]);
    }
}

/// Elimination of the tridiagonal matrix capacity + weight · conduction, once per step size.
void Slab::factor(double weight, unsigned wet, Factors& into) const {
    const std::size_t n = now_.size();
    into.forward.resize(n);
    into.inverse.resize(n);
    into.backward.resize(n);
    double previousOff = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double off = i + 1 < n ? -weight * conductance_[i] : 0.0;
        double diagonal = capacity_[i] - previousOff - off;
        if (i == 0) diagonal += weight * (down_.loss + ((wet & 1U) != 0 ? down_.wetLoss : 0.0));
        if (i + 1 == n) diagonal += weight * (up_.loss + ((wet & 2U) != 0 ? up_.wetLoss : 0.0));
        into.forward[i] = i == 0 ? 0.0 : previousOff * into.inverse[i - 1];
        into.inverse[i] = 1.0 / (diagonal - into.forward[i] * previousOff);
        into.backward[i] = off * into.inverse[i];
        previousOff = off;
    }
    into.ready = true;
}

/// Solves capacity·T - weight·heat(T) = capacity·known_ + rhs_ for `into`, finding which faces
/// boil.
void Slab::solveStage(double weight, std::vector<double>& into) {
    const std::size_t n = now_.size();
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
        const Factors& f = factors_[wet_];
        const double down = weight * (down_.gain + ((wet_ & 1U) != 0 ? down_.wetGain : 0.0));
        const double up = weight * (up_.gain + ((wet_ & 2U) != 0 ? up_.wetGain : 0.0));
        double carried = 0;
        double moved = 0;
        for (std::size_t i = 0; i < n; ++i) {
            double right = capacity_[i] * known_[i] + rhs_[i];
            if (i == 0) right += down;
            if (i + 1 == n) right += up;
            carried = right - f.forward[i] * carried;
            between_[i] = carried * f.inverse[i];
        }
        for (std::size_t i = n - 1; i-- > 0;)
            between_[i] -= f.backward[i] * between_[i + 1];
        if (!constant_ && pass > 0) {
            for (std::size_t i = 0; i < n; ++i)
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
    if (!constant_) refreshProperties(before_);

    // Trapezoid to the point between; its explicit half uses the properties and faces at the start.
    const auto& t = before_;
    double fromBelow = faceFlux(down_, t.front());
    for (std::size_t i = 0; i < n; ++i) {
        const double toAbove =
            i + 1 < n ? conductance_[i] * (t[i] - t[i + 1]) : -faceFlux(up_, t.back());
        const double rate = weight * (fromBelow - toAbove);
        // A rate of temperature, not of heat, where the capacity of the stage is another one.
        known_[i] = constant_ ? t[i] : t[i] + rate / capacity_[i];
        rhs_[i] = constant_ ? rate : 0.0;
        fromBelow = toAbove;
    }
    solveStage(weight, now_);

    // Second backward difference from the start and the point between to the end.
    for (std::size_t i = 0; i < n; ++i) {
        known_[i] = kFromBetween * now_[i] - kFromBefore * before_[i];
        rhs_[i] = 0.0;
    }
    solveStage(weight, now_);
}

void Slab::retakeStep(double seconds) {
    now_ = before_;
    step(seconds);
}

Length Slab::thickness() const {
    return Length::fromMetres(z_.back());
}

double Slab::celsiusAt(double metres) const {
    const auto above = std::upper_bound(z_.begin(), z_.end(), metres);
    if (above == z_.begin()) return now_.front();
    if (above == z_.end()) return now_.back();
    const auto i = static_cast<std::size_t>(above - z_.begin());
    const double share = (metres - z_[i - 1]) / (z_[i] - z_[i - 1]);
    return now_[i - 1] + share * (now_[i] - now_[i - 1]);
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
    for (std::size_t j = 0; j + 1 < z_.size(); ++j) {
        const Material& material = materials_[materialOf_[j]];
        for (const double t : {now_[j], now_[j + 1]}) {
            const double share = 0.5 * (z_[j + 1] - z_[j]) * material.heatCapacityAt(t);
            heat += share * t;
            capacity += share;
        }
    }
    return Temperature::fromCelsius(heat / capacity);
}

double Slab::coldestCelsius() const {
    const auto lowest = std::min_element(now_.begin(), now_.end());
    const auto i = static_cast<std::size_t>(lowest - now_.begin());
    if (i == 0 || i + 1 == now_.size() || materialOf_[i - 1] != materialOf_[i]) return *lowest;
    const double left = now_[i - 1] - *lowest;
    const double right = now_[i + 1] - *lowest;
    const double bend = left + right;
    return bend > 0 ? *lowest - (left - right) * (left - right) / (8.0 * bend) : *lowest;
}

Temperature Slab::coldest() const {
    return Temperature::fromCelsius(coldestCelsius());
}

}  // namespace cinder::cook
