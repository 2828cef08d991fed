#pragma once

/// The planning problem as plain data: tasks, links, resources and crew, and nothing about how a
/// plan is found.
///
/// Time is counted in half-minutes from the bell (T), negative before it. Every list is addressed
/// by position (`TaskIndex` and so on) so that a search can work on plain arrays; ids are carried
/// along for people and for the journal.
///
/// Without hands-on segments, maximum lags, calendars and interruption this is the classic
/// resource-constrained project scheduling problem (Brucker et al., EJOR 112, 1999: PS|prec|Cmax);
/// with maximum lags it is RCPSP/max (PS|temp|Cmax).

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/local_text.h"
#include "base/time.h"

namespace cinder::plan {

/// A span in planning units.
using HalfMinutes = std::chrono::duration<std::int32_t, std::ratio<30>>;
/// A moment as its distance from the bell; negative is before it.
using FromBell = HalfMinutes;

using TaskIndex = std::int32_t;
using PersonIndex = std::int32_t;
using SkillIndex = std::int32_t;
using StationIndex = std::int32_t;
using ResourceIndex = std::int32_t;

/// What a task is for; decides its words and picture, and which board it is shown on, never how it
/// is scheduled.
enum class TaskKind : std::uint8_t {
    SetUp,   ///< tables, linen, chafers, signs
    Fire,    ///< lighting and burning in
    Prep,    ///< cold work on food
    Cook,    ///< on the grate, tended
    Rest,    ///< off the heat, settling
    Slice,   ///< carving and portioning
    Finish,  ///< sauce, dress, garnish
    Warm,    ///< heating something that is already cooked
    Hold,    ///< kept hot or cold within limits
    Load,    ///< put out on the line
    Serve,   ///< guests pass
    Strike,  ///< pack, clean, make the fire safe
    Check,   ///< measure and record
};

/// How much of a resource there is from `from` on, until the next step.
struct CapacityStep {
    FromBell from;
    std::int32_t units = 0;
    friend bool operator==(const CapacityStep&, const CapacityStep&) = default;
};

/// Something that tasks occupy while they run: grate area, hot-box shelves, chafers, burners.
struct Resource {
    ResourceId id;
    LocalText name;
    std::int32_t capacity = 0;
    /// Exceptions from `capacity`, by time; empty for a constant resource.
    std::vector<CapacityStep> steps;
    friend bool operator==(const Resource&, const Resource&) = default;
};

struct Skill {
    SkillId id;
    LocalText name;
    friend bool operator==(const Skill&, const Skill&) = default;
};

struct Person {
    PersonId id;
    std::string name;
    std::vector<SkillIndex> skills;
    friend bool operator==(const Person&, const Person&) = default;
};

struct Station {
    StationId id;
    LocalText name;
    friend bool operator==(const Station&, const Station&) = default;
};

/// Part of a task during which it holds people; the people are free between segments.
struct HandsOn {
    /// What the hands do; decides the timer and the word on the plate.
    enum class Act : std::uint8_t { Work, PutOn, Turn, TakeOff };
    HalfMinutes offset{0};  ///< from the start of the task
    HalfMinutes length{0};
    SkillIndex skill = 0;  ///< each of the people needs it
    std::int32_t people = 1;
    Act act = Act::Work;
    friend bool operator==(const HandsOn&, const HandsOn&) = default;
};

struct ResourceUse {
    ResourceIndex resource = 0;
    std::int32_t units = 0;
    friend bool operator==(const ResourceUse&, const ResourceUse&) = default;
};

/// Low, usual and high duration: what a beta-PERT draw needs.
struct ThreePoint {
    HalfMinutes low{0};
    HalfMinutes usual{0};
    HalfMinutes high{0};
    friend bool operator==(const ThreePoint&, const ThreePoint&) = default;
};

/// Where a task would rather lie when it has room: laying tables gains nothing by waiting, sliced
/// meat loses by it.
enum class Lean : std::uint8_t { Early, Late };

struct Task {
    TaskId id;
    LocalText name;
    TaskKind kind = TaskKind::SetUp;
    /// Empty for work that belongs to no dish.
    std::optional<DishId> dish;
    /// 1-based when the same step is done in several batches.
    std::optional<std::int32_t> batch;
    StationIndex station = 0;

    /// The plan uses `duration.usual`; segments lie within it.
    ThreePoint duration;
    std::vector<HandsOn> hands;     ///< by offset, not overlapping; empty for a standing task
    std::vector<ResourceUse> uses;  ///< held from start to finish, across interruptions

    /// Set when the work may be split around other hands-on time, in pieces no shorter than this.
    /// Such a task has exactly one segment, over its whole length, for one person, who does all of
    /// its pieces; its finish is then later than start plus duration.
    std::optional<HalfMinutes> shortestPiece;

    std::optional<FromBell> earliestStart;
    std::optional<FromBell> latestFinish;
    Lean lean = Lean::Early;
    /// Weight of one half-minute between this task's finish and the bell, for freshness.
    std::int32_t staleness = 0;

    /// True when the task ends because time has passed (a rest); false when a person says so (the
    /// coals are ready). Matters to the live day only.
    bool endsByItself = false;
    /// Small things to tick while doing it.
    std::vector<LocalText> checklist;
    /// Asks for a temperature this often while it runs.
    std::optional<HalfMinutes> checkEvery;

    friend bool operator==(const Task&, const Task&) = default;
};

/// Which end of a task a link holds.
enum class End : std::uint8_t { Start, Finish };

/// to.toEnd - from.fromEnd must be at least `minLag` and, when given, at most `maxLag`.
struct Link {
    TaskIndex from = 0;
    TaskIndex to = 0;
    End fromEnd = End::Finish;
    End toEnd = End::Start;
    HalfMinutes minLag{0};
    std::optional<HalfMinutes> maxLag;
    friend bool operator==(const Link&, const Link&) = default;
};

/// Everything a plan must respect. On which side of the bell a task lies follows from its windows
/// and links (`bellSides`): it is done by the bell unless its earliest start is at the bell or
/// later, a link puts it behind such a task, or its latest finish lets it run across.
struct Problem {
    std::vector<Station> stations;
    /// walk[a][b]: what a person needs between work at a and work at b; square, zero diagonal.
    std::vector<std::vector<HalfMinutes>> walk;
    std::vector<Skill> skills;
    std::vector<Person> crew;
    std::vector<Resource> resources;
    std::vector<Task> tasks;
    std::vector<Link> links;

    /// When the crew arrives. Nothing starts before it. Absent: as late as can be, to be found.
    std::optional<FromBell> arrival;

    friend bool operator==(const Problem&, const Problem&) = default;
};

}  // namespace cinder::plan
