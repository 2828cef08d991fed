#pragma once

/// From the facts of a batch to what the heat model is fitted to; internal to core/live.

#include "live/fire_forecast.h"
#include "live/pull_target.h"

namespace cinder::live {

/// What a dish is to the heat model; nothing for bread, vegetables and cheese.
struct MeatModel {
    cook::Composition composition;
    cook::Meat minimumOf;
};
[[nodiscard]] std::optional<MeatModel> meatModelOf(const OnGrate& batch);

[[nodiscard]] Temperature pullTargetOf(const OnGrate& batch);

/// Readings of the fire under one grate, ascending; what no hand or thermometer can have told is
/// left out.
[[nodiscard]] std::vector<cook::FireReading> fireReadings(const GrateFacts& grate);
/// Those of one instrument.
[[nodiscard]] std::vector<cook::FireReading> handReadings(const GrateFacts& grate);
[[nodiscard]] std::vector<cook::FireReading> thermometerReadings(const GrateFacts& grate);

/// What is known of a batch that has been laid.
struct LaidBatch {
    const OnGrate& batch;
    const BatchFacts& facts;
    const TaskFacts& task;
    Instant laid;
    std::optional<Instant> over;
};

struct CookBatch {
    cook::Batch batch;
    std::int32_t setAside = 0;  ///< readings that no piece can have given
};

/// `fire` must not be empty and the batch must be of a meat.
[[nodiscard]] CookBatch cookBatchOf(const LaidBatch& known, std::vector<cook::FireReading> fire);

}  // namespace cinder::live
