#pragma once

/// One piece of a batch as a slab over the batch's fire, for any value of its two hidden numbers.

#include "cook/batch.h"
#include "cook/grill_run.h"
#include "cook/shared_fit.h"

namespace cinder::cook {

class PieceModel {
  public:
    /// Errors: `NotPositive` or `OutOfRange` naming the field of piece or batch, `OutOfOrder` for
    /// turns, fire readings or spans on the cool side. `batch` must outlive the model.
    [[nodiscard]] static Result<PieceModel, CookError> make(const Batch& batch,
                                                            const PieceOnGrate& piece,
                                                            Resolution resolution);

    /// The piece just laid. The model must outlive the run.
    [[nodiscard]] GrillRun lay(const Pair& hidden) const;
    /// Depth of `real` in a slab that is thinner or thicker than the piece was measured.
    [[nodiscard]] double scaledDepth(Length real, const Slab& slab) const;
    [[nodiscard]] Duration sinceLaid(Instant at) const { return at - piece_->laid; }
    [[nodiscard]] const PieceOnGrate& piece() const { return *piece_; }
    [[nodiscard]] const Batch& batch() const { return *batch_; }
    /// The piece as if it had been turned at this interval since it was laid.
    [[nodiscard]] PieceModel turnedEvery(Duration interval) const;

  private:
    PieceModel(const Batch& batch, const PieceOnGrate& piece, Material material)
        : batch_(&batch), piece_(&piece), material_(std::move(material)) {}
    [[nodiscard]] const FireBelief& beliefAt(Instant at, double& flux) const;

    const Batch* batch_;
    const PieceOnGrate* piece_;
    Material material_;
    Resolution resolution_;
    Length slabThickness_;  ///< of the slab that stands for the piece (finite_body.h)
    Duration turnEvery_{0};
    bool asTurned_ = true;  ///< with the turns that were made
};

}  // namespace cinder::cook
