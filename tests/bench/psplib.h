#pragma once

/// Readers of the public scheduling benchmark's files.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "plan/problem.h"

namespace cinder::plan::bench {

/// One instance with what is known of it. For the classic sets `lower` and `upper` bound the least
/// makespan; `criticalPath` is what deviations are measured from.
struct Instance {
    std::string name;
    Problem problem;
    std::int32_t criticalPath = 0;
    std::int32_t lower = 0;
    std::int32_t upper = 0;
    bool isInfeasible = false;
};

/// Single-mode `.sm` (Kolisch & Sprecher, EJOR 96, 1997).
[[nodiscard]] std::optional<Problem> readSm(const std::filesystem::path& file);
/// `.SCH` with minimum and maximum lags (Schwindt's ProGen/max).
[[nodiscard]] std::optional<Problem> readSch(const std::filesystem::path& file);

/// All instances of a set ("j30", "j60", "j120", "sm_j10", …, "testset_ubo50") with their known
/// values, in order of name; unpacks the archive under `shared`/datasets/psplib with tar into a
/// temporary directory. Empty, after a message, when the data is not there.
[[nodiscard]] std::vector<Instance> readSet(const std::filesystem::path& shared,
                                            const std::string& set);

}  // namespace cinder::plan::bench
