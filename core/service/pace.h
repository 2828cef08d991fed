#pragma once

/// How quickly guests pass, out of what the model says beforehand and what somebody counts: the
/// counter starts at "first guest" (0) and is tapped every ten.

#include <optional>
#include <vector>

#include "base/time.h"

namespace cinder::service {

/// So many guests were through by then; 0 is the first guest stepping up.
struct Count {
    std::int32_t guests = 0;
    Instant at;
    friend bool operator==(const Count&, const Count&) = default;
};

/// What is known before anybody counts.
struct PacePlan {
    std::int32_t guests = 0;  ///< expected, all together
    Instant opens;            ///< the line, when nobody says otherwise
    Duration each{0};         ///< from guest to guest, by the model
    /// Until the first guest is through with food.
    Duration through{0};
    friend bool operator==(const PacePlan&, const PacePlan&) = default;
};

/// The model counts as much as this many counted guests. Our choice; bench_service prints what
/// other weights would do.
inline constexpr double kPriorGuests = 20;

/// The time between two guests as a gamma prior of weight kPriorGuests, updated by guests counted
/// over a time. Source: conjugate prior of a Poisson process, gamma(k, T) -> gamma(k + n, T + t);
/// e.g. A. Gelman et al., Bayesian Data Analysis, section 2.6, from memory.
class Pace {
  public:
    /// `counts` in any order; a count that is not above an earlier one is left out. `last`: the
    /// last guest is through, whatever was counted.
    Pace(const PacePlan& plan, std::vector<Count> counts, std::optional<Instant> last = {});

    [[nodiscard]] Duration each() const { return Duration{static_cast<Duration::rep>(each_)}; }
    /// Guests counted, and when; the opening and 0 while nobody counted.
    [[nodiscard]] const Count& lastCount() const { return counts_.back(); }
    [[nodiscard]] bool isCounted() const { return isCounted_; }
    /// Guests expected, or as many as were counted when these are more.
    [[nodiscard]] std::int32_t guests() const { return guests_; }
    [[nodiscard]] bool isOver() const { return last_.has_value(); }
    [[nodiscard]] Instant opened() const { return counts_.front().at; }

    /// Guests through at `at`: between counts in proportion, after the last as the pace says.
    [[nodiscard]] double guestsAt(Instant at) const;
    /// When `guests`, which may be a part of one, are through. Past counts in proportion.
    [[nodiscard]] Instant instantOf(double guests) const;

    /// The last guest through, and the edges between which it lies four times of five.
    struct End {
        Instant early;
        Instant usual;
        Instant late;
        friend bool operator==(const End&, const End&) = default;
    };
    [[nodiscard]] End end() const;
    /// One standard deviation of the time to `guests` more, from gamma and Poisson together.
    [[nodiscard]] Duration doubt(double guests) const;

  private:
    std::vector<Count> counts_;  ///< rising; never empty
    std::optional<Instant> last_;
    std::int32_t guests_ = 0;
    double each_ = 1;  ///< ms
    double weight_ = kPriorGuests;
    double through_ = 0;  ///< ms
    bool isCounted_ = false;
};

}  // namespace cinder::service
