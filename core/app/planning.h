#pragma once

/// A touch that waits for a plan, in three parts: asked of the session, which says what is to be
/// planned and on what that rests (Session::askTo…); searched as a value, on any thread, while the
/// day goes on; and published (Session::publish), unless the day is another one by then.

#include <atomic>
#include <optional>
#include <variant>
#include <vector>

#include "app/refusal.h"
#include "base/result.h"
#include "event/event.h"
#include "journal/operation.h"
#include "live/remaining.h"

namespace cinder::app {

/// What a plan for a whole event rests on.
struct Basis {
    std::optional<event::Event> described;
    std::optional<event::Event> drafted;
    std::optional<Instant> serve;
    bool hasBegun = false;
    friend bool operator==(const Basis&, const Basis&) = default;
};

struct Planning {
    /// The whole of an event, the rest of a day, or nothing: then the touch needs no plan.
    std::variant<std::monostate, event::Event, live::Remaining> wanted;
    EventId event;  ///< whose plan it is to be
    /// Recorded in one breath and in this order; the plan among them is still empty.
    std::vector<journal::Body> bodies;
    /// What is said counts, plan or not: whoever has gone has gone.
    bool countsWithoutPlan = false;
    std::optional<EventId> open;  ///< the open event when it was asked for
    Basis basis;                  ///< what that event says
};

/// A plan, or nothing when none was wanted.
using Found = Result<std::optional<live::RunSheet>, Refusal>;

/// Searches; touches nothing but its arguments. When the arrival comes too late for any plan of a
/// whole event, the plan is the best for a crew that came in time: the projection then starts at
/// the arrival and says how late the bell will be, and the promise page what would help. Fails with
/// BadEvent or NoPlan. Ends early, with what it has, when `stop` becomes true.
[[nodiscard]] Found searchPlan(const Planning& planning, const std::atomic<bool>* stop = nullptr);

}  // namespace cinder::app
