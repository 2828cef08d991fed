#include "cook/piece_model.h"

#include <algorithm>
#include <cmath>

#include "cook/finite_body.h"

namespace cinder::cook {

namespace {

Result<void, CookError> checkTimes(const Batch& batch, const PieceOnGrate& piece) {
    if (batch.fire.empty()) return fail(CookError{CookError::Kind::TooFewReadings, "fire"});
    const auto isLater = [](const FireReading& a, const FireReading& b) { return a.at > b.at; };
    if (std::adjacent_find(batch.fire.begin(), batch.fire.end(), isLater) != batch.fire.end()) {
        return fail(CookError{CookError::Kind::OutOfOrder, "fire"});
    }
    if (!std::is_sorted(piece.turns.begin(), piece.turns.end()) ||
        (!piece.turns.empty() && piece.turns.front() < piece.laid)) {
        return fail(CookError{CookError::Kind::OutOfOrder, "turns"});
    }
    const auto isBackwards = [](const CoolSpan& span) {
        return span.until && *span.until < span.from;
    };
    const auto leaves = [](const CoolSpan& a, const CoolSpan& b) {
        return !a.until || *a.until > b.from;
    };
    if (std::any_of(piece.cool.begin(), piece.cool.end(), isBackwards) ||
        std::adjacent_find(piece.cool.begin(), piece.cool.end(), leaves) != piece.cool.end()) {
        return fail(CookError{CookError::Kind::OutOfOrder, "cool"});
    }
    if (piece.pulled && *piece.pulled < piece.laid) {
        return fail(CookError{CookError::Kind::OutOfOrder, "pulled"});
    }
    return {};
}

bool isOnCoolSide(const PieceOnGrate& piece, Instant at) {
    return std::any_of(piece.cool.begin(), piece.cool.end(), [at](const CoolSpan& span) {
        return at >= span.from && (!span.until || at < *span.until);
    });
}

}  // namespace

Result<PieceModel, CookError> PieceModel::make(const Batch& batch, const PieceOnGrate& piece,
                                               Resolution resolution) {
    if (const auto times = checkTimes(batch, piece); !times) return fail(times.error());
    if (!(piece.thickness > Length::fromMillimetres(2) &&
          piece.thickness < Length::fromMillimetres(300))) {
        return fail(CookError{CookError::Kind::OutOfRange, "thickness"});
    }
    if (!(piece.thicknessSpread > 0 && piece.thicknessSpread < 0.5)) {
        return fail(CookError{CookError::Kind::OutOfRange, "thicknessSpread"});
    }
    const double start = piece.start.celsius();
    if (!(start >= -1 && start < batch.pullAt.celsius())) {
        return fail(CookError{CookError::Kind::OutOfRange, "start"});
    }
    auto material = Material::constant(batch.food);
    if (!material) return fail(material.error());

    PieceModel model(batch, piece, *material);
    model.resolution_ = resolution;
    model.turnEvery_ = batch.turnEvery;
    model.slabThickness_ = piece.thickness;
    if (piece.width && piece.length) {
        double flux = 0;
        const FireBelief& belief = model.beliefAt(piece.laid, flux);
        // The face boils: the piece sees at most the boiling point, so that is the fire of the
        // ratio.
        Side fire = fireSide(belief, 1.0, batch.boiling);
        fire.radiant = {};
        fire.surroundings = batch.boiling;
        const auto thickness =
            equivalentThickness({piece.thickness, *piece.width, *piece.length}, fire, batch.air,
                                batch.food, piece.start, batch.pullAt);
        // So near boiling the mean of fire and air gives no ratio: the piece counts as a slab,
        // which is later rather than sooner.
        if (thickness)
            model.slabThickness_ = *thickness;
        else if (thickness.error().kind != CookError::Kind::NeverReached)
            return fail(thickness.error());
    }
    return model;
}

/// The reading in force at `at` and its flux, between readings by the logarithm.
const FireBelief& PieceModel::beliefAt(Instant at, double& flux) const {
    const auto& fire = batch_->fire;
    const auto after = std::upper_bound(fire.begin(), fire.end(), at,
                                        [](Instant t, const FireReading& r) { return t < r.at; });
    const auto before = after == fire.begin() ? after : after - 1;
    flux = before->belief.atHundred.wattsPerSquareMetre;
    if (after != fire.end() && after != before) {
        using Seconds = std::chrono::duration<double>;
        const double share = Seconds(at - before->at) / Seconds(after->at - before->at);
        flux *= std::pow(after->belief.atHundred.wattsPerSquareMetre / flux, share);
    }
    return before->belief;
}

GrillRun PieceModel::lay(const Pair& hidden) const {
    const Layer layer{Length::fromMetres(slabThickness_.metres() * std::exp(0.5 * hidden.thick)),
                      material_};
    auto slab = Slab::make({&layer, 1}, piece_->start, resolution_);
    const double factor = std::exp(hidden.flux);
    Turning turning;
    if (asTurned_)
        for (const Instant turn : piece_->turns)
            turning.made.push_back(sinceLaid(turn));
    if (turnEvery_ > Duration(0)) turning.every = turnEvery_;
    for (const CoolSpan& span : piece_->cool) {
        turning.moves.push_back(sinceLaid(span.from));
        if (span.until) turning.moves.push_back(sinceLaid(*span.until));
    }
    return {std::move(*slab),
            [this, factor](Duration from, Duration to) {
                const Instant middle = piece_->laid + (from + to) / 2;
                if (isOnCoolSide(*piece_, middle)) return coolSide(batch_->boiling);
                double flux = 0;
                FireBelief belief = beliefAt(middle, flux);
                belief.atHundred = {flux};
                return fireSide(belief, factor, batch_->boiling);
            },
            batch_->air, std::move(turning)};
}

double PieceModel::scaledDepth(Length real, const Slab& slab) const {
    const double share = real.metres() / piece_->thickness.metres();
    return std::clamp(share, 0.0, 1.0) * slab.nodesMetres().back();
}

PieceModel PieceModel::turnedEvery(Duration interval) const {
    PieceModel other = *this;
    other.turnEvery_ = interval;
    other.asTurned_ = false;
    return other;
}

}  // namespace cinder::cook
