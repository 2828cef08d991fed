#include "plan/build/build.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "event/json.h"
#include "plan/build/grate_batches.h"
#include "plan/build/half_minutes.h"
#include "plan/build/hands.h"

namespace cinder::plan {

namespace {

/// No crew has the time for more of one dish; more is a slip in a size or a count.
constexpr std::size_t kMostBatches = 60;

static_assert(static_cast<int>(event::StepKind::Cook) == static_cast<int>(TaskKind::Cook));
static_assert(static_cast<int>(event::StepKind::Check) == static_cast<int>(TaskKind::Check));
TaskKind kindOf(event::StepKind kind) {
    return static_cast<TaskKind>(kind);
}
End endOf(event::StepEnd end) {
    return end == event::StepEnd::Start ? End::Start : End::Finish;
}

/// The tasks a step became: one, or one for each batch.
struct Made {
    TaskIndex first = 0;
    std::int32_t count = 0;
    const event::Dish* dish = nullptr;
    bool isBatched = false;
};

class Builder {
  public:
    explicit Builder(const event::Event& event) : event_(event) {}

    Result<Problem, event::Faults> build() {
        addPlaces();
        addCrew();
        addResources();
        if (auto faults = checkBatches(); !faults.empty()) return fail(std::move(faults));
        for (const auto& dish : event_.menu) {
            const auto batches = batchesOf(dish);
            for (const auto& step : dish.method)
                addStep(step, &dish, batches);
        }
        for (const auto& step : event_.work)
            addStep(step, nullptr, {});
        addLinks();
        if (event_.site.arrival)
            problem_.arrival = roundedUp(event_.site.arrival->at - event_.serve.at);
        return std::move(problem_);
    }

  private:
    using Batches = std::vector<GrateBatch>;

    void addPlaces();
    void addCrew();
    void addResources();
    [[nodiscard]] event::Faults checkBatches() const;
    [[nodiscard]] Batches batchesOf(const event::Dish& dish) const;
    void addStep(const event::Step& step, const event::Dish* dish, const Batches& ofDish);
    [[nodiscard]] Task taskOf(const event::Step& step) const;
    void setWindow(const event::Step& step, Task& task) const;
    [[nodiscard]] Duration fromBell(const event::Moment& moment) const;
    void addLinks();
    void link(const event::After& after, const Made& from, const Made& to);
    [[nodiscard]] const event::Grate& grateOf(const ResourceId& id) const;

    const event::Event& event_;
    Problem problem_;
    std::map<StationId, StationIndex> stations_;
    std::map<SkillId, SkillIndex> skills_;
    std::map<ResourceId, ResourceIndex> resources_;
    std::map<StepId, Made> made_;
};

void Builder::addPlaces() {
    for (const auto& station : event_.site.stations) {
        stations_.emplace(station.id, static_cast<StationIndex>(problem_.stations.size()));
        problem_.stations.push_back({station.id, station.name});
    }
    const std::size_t count = problem_.stations.size();
    problem_.walk.assign(count, std::vector<HalfMinutes>(count, HalfMinutes{0}));
    for (const auto& walk : event_.site.walks) {
        if (walk.from == walk.to) continue;
        const auto from = static_cast<std::size_t>(stations_.at(walk.from));
        const auto to = static_cast<std::size_t>(stations_.at(walk.to));
        problem_.walk[from][to] = problem_.walk[to][from] = roundedUp(walk.time);
    }
}

void Builder::addCrew() {
    for (const auto& skill : event_.skills) {
        skills_.emplace(skill.id, static_cast<SkillIndex>(problem_.skills.size()));
        problem_.skills.push_back({skill.id, skill.name});
    }
    for (const auto& person : event_.crew) {
        Person member{person.id, person.name, {}};
        for (const auto& skill : person.skills)
            member.skills.push_back(skills_.at(skill));
        std::sort(member.skills.begin(), member.skills.end());
        member.skills.erase(std::unique(member.skills.begin(), member.skills.end()),
                            member.skills.end());
        problem_.crew.push_back(std::move(member));
    }
}

std::int32_t millimetresUp(Length length) {
    return static_cast<std::int32_t>(std::ceil(length.millimetres()));
}

void Builder::addResources() {
    const auto add = [&](const ResourceId& id, const LocalText& name, std::int32_t capacity) {
        resources_.emplace(id, static_cast<ResourceIndex>(problem_.resources.size()));
        problem_.resources.push_back({id, name, capacity, {}});
    };
    for (const auto& grate : event_.kit.grates) {
        // Each batch brings one gap to its neighbour with it; the last one needs none.
        const Length room = grate.length - grate.coolSide + grate.gap;
        add(grate.id, grate.name, static_cast<std::int32_t>(std::floor(room.millimetres())));
    }
    for (const auto& equipment : event_.kit.equipment)
        add(equipment.id, equipment.name, equipment.count);
    for (const auto& table : event_.kit.tables)
        add(table.id, table.name, table.count);
}

const event::Grate& Builder::grateOf(const ResourceId& id) const {
    return *std::find_if(event_.kit.grates.begin(), event_.kit.grates.end(),
                         [&](const event::Grate& grate) { return grate.id == id; });
}

Builder::Batches Builder::batchesOf(const event::Dish& dish) const {
    for (const auto& step : dish.method)
        if (!step.onGrates.empty()) return grateBatches(event_, dish, step);
    return {};
}

event::Faults Builder::checkBatches() const {
    event::Faults faults;
    for (std::size_t d = 0; d < event_.menu.size(); ++d) {
        const auto& dish = event_.menu[d];
        for (const auto& step : dish.method) {
            if (step.onGrates.empty()) continue;
            const std::size_t count = grateBatchCount(event_, dish, step);
            if (count <= kMostBatches) continue;
            faults.push_back({event::Fault::What::OutOfRange,
                              "/menu/" + std::to_string(d) + "/pieces",
                              std::to_string(count),
                              "1.." + std::to_string(kMostBatches),
                              {}});
        }
    }
    return faults;
}

Duration Builder::fromBell(const event::Moment& moment) const {
    if (moment.anchor == event::Moment::Anchor::Arrival && event_.site.arrival)
        return event_.site.arrival->at - event_.serve.at + moment.offset;
    return moment.offset;
}

void Builder::setWindow(const event::Step& step, Task& task) const {
    if (step.earliestStart) task.earliestStart = roundedUp(fromBell(*step.earliestStart));
    if (step.latestFinish) task.latestFinish = roundedDown(fromBell(*step.latestFinish));
    const bool isBeforeBell = task.latestFinish && task.latestFinish->count() <= 0;
    const bool isAfterKind =
        step.kind == event::StepKind::Serve || step.kind == event::StepKind::Strike;
    if (isAfterKind && !task.earliestStart && !isBeforeBell) task.earliestStart = FromBell{0};
    const bool isAfterBell = task.earliestStart && task.earliestStart->count() >= 0;
    if (!isAfterBell && !task.latestFinish) task.latestFinish = FromBell{0};
}

Task Builder::taskOf(const event::Step& step) const {
    Task task;
    task.name = step.name;
    task.kind = kindOf(step.kind);
    task.station = stations_.at(step.station);
    task.duration = {roundedUp(step.duration.low), roundedUp(step.duration.usual),
                     roundedUp(step.duration.high)};
    const auto* workers = workersOf(step.hands);
    task.hands = handsOn(step.hands, task.duration.usual,
                         workers == nullptr ? SkillIndex{0} : skills_.at(workers->skill));
    for (const auto& use : step.uses)
        task.uses.push_back({resources_.at(use.resource), use.units});
    if (step.shortestPiece) task.shortestPiece = roundedUp(*step.shortestPiece);
    task.lean = step.lean == event::StepLean::Early ? Lean::Early : Lean::Late;
    task.staleness = step.staleness;
    task.endsByItself = step.endsByItself;
    task.checklist = step.checklist;
    if (step.checkEvery) task.checkEvery = roundedUp(*step.checkEvery);
    setWindow(step, task);
    return task;
}

void Builder::addStep(const event::Step& step, const event::Dish* dish, const Batches& ofDish) {
    const bool isOnGrate = !step.onGrates.empty();
    const bool isBatched = isOnGrate || step.isEachBatch;
    const Batches batches = isOnGrate ? grateBatches(event_, *dish, step) : ofDish;
    const StepId name = dish == nullptr ? step.id : event::fullName(dish->id, step.id);
    const auto count = isBatched ? static_cast<std::int32_t>(batches.size()) : 1;
    const auto first = static_cast<TaskIndex>(problem_.tasks.size());
    made_.emplace(name, Made{first, count, dish, isBatched});

    const Task pattern = taskOf(step);
    for (std::int32_t i = 0; i < count; ++i) {
        Task task = pattern;
        task.id = TaskId(isBatched ? name.text() + "/" + std::to_string(i + 1) : name.text());
        if (dish != nullptr) task.dish = dish->id;
        if (isBatched && count > 1) task.batch = i + 1;
        if (isOnGrate) {
            const auto& batch = batches[static_cast<std::size_t>(i)];
            const auto& grate = grateOf(batch.grate);
            // What just fits is not too big for being rounded up.
            const ResourceIndex r = resources_.at(grate.id);
            const std::int32_t room = problem_.resources[static_cast<std::size_t>(r)].capacity;
            const bool fits = batch.usedLength <= grate.length - grate.coolSide;
            const std::int32_t used = millimetresUp(batch.usedLength + grate.gap);
            task.uses.push_back({r, fits ? std::min(used, room) : used});
        }
        problem_.tasks.push_back(std::move(task));
        // Batches are numbered in the order in which they go on.
        if (isOnGrate && i > 0)
            problem_.links.push_back(
                {first + i - 1, first + i, End::Start, End::Start, HalfMinutes{0}, std::nullopt});
    }
}

void Builder::link(const event::After& after, const Made& from, const Made& to) {
    Link pattern;
    pattern.fromEnd = endOf(after.fromEnd);
    pattern.toEnd = endOf(after.toEnd);
    pattern.minLag = roundedUp(after.minLag);
    if (after.maxLag) pattern.maxLag = std::max(roundedDown(*after.maxLag), pattern.minLag);
    const auto add = [&](TaskIndex a, TaskIndex b) {
        pattern.from = a;
        pattern.to = b;
        problem_.links.push_back(pattern);
    };
    // A batch waits for its own batch; everything else waits for all.
    const bool isPaired =
        from.isBatched && to.isBatched && from.dish == to.dish && from.count == to.count;
    for (std::int32_t i = 0; i < to.count; ++i) {
        if (isPaired) {
            add(from.first + i, to.first + i);
            continue;
        }
        for (std::int32_t k = 0; k < from.count; ++k)
            add(from.first + k, to.first + i);
    }
}

void Builder::addLinks() {
    const auto linkAll = [&](const event::Step& step, const Made& to) {
        for (const auto& after : step.after)
            link(after, made_.at(after.step), to);
    };
    for (const auto& dish : event_.menu)
        for (const auto& step : dish.method)
            linkAll(step, made_.at(event::fullName(dish.id, step.id)));
    for (const auto& step : event_.work)
        linkAll(step, made_.at(step.id));
}

}  // namespace

Result<Problem, event::Faults> build(const event::Event& event) {
    if (auto faults = event::findFaults(event); !faults.empty()) return fail(std::move(faults));
    return Builder(event).build();
}

}  // namespace cinder::plan
