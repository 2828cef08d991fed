#pragma once

/// A step of work the way a cook tells it: what, where, how long, whose hands, what it occupies and
/// what it comes after. Steps become tasks of a planning problem in plan/build.

#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/time.h"
#include "event/unknown.h"

namespace cinder::event {

/// What a step is for. The words are those of plan::TaskKind.
enum class StepKind : std::uint8_t {
    SetUp,
    Fire,
    Prep,
    Cook,
    Rest,
    Slice,
    Finish,
    Warm,
    Hold,
    Load,
    Serve,
    Strike,
    Check,
};

/// The shortest, the usual and the longest a careful crew has seen. 0 < low <= usual <= high.
struct Estimate {
    Duration low{0};
    Duration usual{0};
    Duration high{0};
    UnknownMembers unknown{};
    friend bool operator==(const Estimate&, const Estimate&) = default;
};

/// Who works: so many people at once, each with the skill.
struct Workers {
    SkillId skill;
    std::int32_t people = 1;
    friend bool operator==(const Workers&, const Workers&) = default;
};

/// Nobody's hands: coals burn in, meat rests.
struct HandsFree {
    friend bool operator==(const HandsFree&, const HandsFree&) = default;
};
/// Hands from the first minute to the last.
struct HandsWhole {
    Workers workers;
    friend bool operator==(const HandsWhole&, const HandsWhole&) = default;
};
/// Hands for the first `length` only: a pot is set on the burner and left.
struct HandsAtStart {
    Workers workers;
    Duration length{0};
    friend bool operator==(const HandsAtStart&, const HandsAtStart&) = default;
};
/// Hands to put on, at every turn, and to take off; free in between.
struct HandsTended {
    Workers workers;
    Duration putOn{0};
    /// From the start of the step to the first turn, and from turn to turn.
    Duration turnEvery{0};
    Duration touch{0};  ///< what one turn takes
    Duration takeOff{0};
    friend bool operator==(const HandsTended&, const HandsTended&) = default;
};
using Hands = std::variant<HandsFree, HandsWhole, HandsAtStart, HandsTended>;

/// Who is asked for; null where nobody is.
[[nodiscard]] const Workers* workersOf(const Hands& hands);
[[nodiscard]] Workers* workersOf(Hands& hands);

/// Kit that is occupied while the step lasts, by count: shelves, chafers, burners. On a grate the
/// unit is one millimetre of its length, over its whole width.
struct Use {
    ResourceId resource;
    std::int32_t units = 0;
    UnknownMembers unknown;
    friend bool operator==(const Use&, const Use&) = default;
};

enum class StepEnd : std::uint8_t { Start, Finish };

/// "`toEnd` of this step comes at least `minLag` and at most `maxLag` after `fromEnd` of `step`."
struct After {
    /// The full name: "lamb/cook" for a step of a dish, "burn-in" for work that belongs to none.
    StepId step;
    StepEnd fromEnd = StepEnd::Finish;
    StepEnd toEnd = StepEnd::Start;
    Duration minLag{0};
    std::optional<Duration> maxLag;
    UnknownMembers unknown;
    friend bool operator==(const After&, const After&) = default;
};

/// A moment told by its distance from the serve time or from the arrival; negative is before.
struct Moment {
    enum class Anchor : std::uint8_t { Serve, Arrival };
    Anchor anchor = Anchor::Serve;
    Duration offset{0};
    UnknownMembers unknown{};
    friend bool operator==(const Moment&, const Moment&) = default;
};

/// Where a step would rather lie when there is room.
enum class StepLean : std::uint8_t { Early, Late };

struct Step {
    /// Unique within its dish, or within the work that belongs to none. Never contains '/'.
    StepId id;
    LocalText name;
    StepKind kind = StepKind::SetUp;
    StationId station;
    /// Of one batch, when the step is done in batches.
    Estimate duration;
    Hands hands;
    UnknownMembers handsUnknown;
    std::vector<Use> uses;

    /// The dish's pieces lie on one of these grates; geometry says in how many batches. Only in a
    /// dish that has pieces. Empty for everything else.
    std::vector<ResourceId> onGrates;
    /// Even when more would fit, no more pieces at once than this: what one cook can turn in time.
    std::optional<std::int32_t> mostPieces;
    /// Done once for each batch of the dish's step on the grate (rest, slice), not once for all.
    bool isEachBatch = false;

    std::vector<After> after;
    std::optional<Moment> earliestStart;
    std::optional<Moment> latestFinish;
    /// Set when the work may be split around other work, in pieces no shorter than this. Only with
    /// the hands of one person over the whole step.
    std::optional<Duration> shortestPiece;
    StepLean lean = StepLean::Early;
    /// How much this loses by waiting for the bell: 0 nothing, 1 a little … 10 everything.
    std::int32_t staleness = 0;
    /// Time alone ends it (a rest); otherwise a person says that it is over.
    bool endsByItself = false;
    /// Small things to tick while doing it.
    std::vector<LocalText> checklist;
    /// A temperature is taken this often while it lasts.
    std::optional<Duration> checkEvery;

    UnknownMembers unknown;
    friend bool operator==(const Step&, const Step&) = default;
};

/// The name other steps know a dish's step by: "lamb/cook".
[[nodiscard]] StepId fullName(const DishId& dish, const StepId& step);

}  // namespace cinder::event
