#pragma once

/// A crew that is not there: looks at the board and does what people would have done by now. Used
/// to rehearse, to test a whole day and to show one. Deterministic for a seed and a sequence of
/// looks.

#include <map>
#include <string>

#include "app/session.h"
#include "base/rng.h"

namespace cinder::app {

class RehearsalCrew {
  public:
    struct Temper {
        std::uint64_t seed = 1;
        /// Each act comes up to this long after its moment; zero is a punctual crew.
        Duration latest{0};
        /// Of a hundred alarms, so many are not heard at first.
        std::uint32_t forgets = 0;
    };

    RehearsalCrew(Session& session, Temper temper) : session_(session), temper_(temper) {}
    explicit RehearsalCrew(Session& session) : RehearsalCrew(session, Temper{}) {}

    /// Does everything that is due at the session's present, in a fixed order, and says how much
    /// that was. Stops at the first touch that cannot be saved.
    [[nodiscard]] Result<int, Refusal> act();

    /// True when every task is done or skipped.
    [[nodiscard]] bool isDayOver();

  private:
    [[nodiscard]] Result<bool, Refusal> actOnce();
    /// The delay of one act, the same whenever it is asked for.
    [[nodiscard]] Duration delayOf(const std::string& act) const;

    Session& session_;
    Temper temper_;
    std::map<std::string, Instant> firstDue_;
};

}  // namespace cinder::app
