#include <algorithm>

#include "live/crew.h"
#include "live/day.h"
#include "live/on_grate.h"
#include "live/operation_order.h"
#include "live/revise_event.h"
#include "live/take_record.h"
#include "quantity/line.h"

namespace cinder::live {

namespace {

using journal::Operation;

/// The run sheet and the lookup that everything about tasks needs.
class TaskIndexes {
  public:
    explicit TaskIndexes(const std::optional<RunSheet>& sheet) {
        if (!sheet) return;
        for (const plan::Task& task : sheet->problem.tasks)
            tasks_.emplace(task.id, &task);
    }
    [[nodiscard]] const plan::Task* find(const TaskId& id) const {
        const auto found = tasks_.find(id);
        return found == tasks_.end() ? nullptr : found->second;
    }

  private:
    std::map<TaskId, const plan::Task*> tasks_;
};

/// Takes the operations one by one; the first word on a fact stands, the last one on a wish.
class Folder {
  public:
    Folder(Day& day, ReadDocuments& documents)
        : day_(day), documents_(documents), tasks_(day.sheet) {}

    void take(const Operation& op) {
        op_ = &op;
        std::visit(*this, op.body);
    }

    void operator()(const journal::TaskStarted& o) {
        TaskFacts* facts = factsOf(o.task);
        if (!facts || facts->started) return;
        facts->started = o.at;
        facts->startedBy = op_->person;
    }
    void operator()(const journal::TaskFinished& o) {
        if (TaskFacts* facts = factsOf(o.task); facts && !facts->finished) facts->finished = o.at;
    }
    void operator()(const journal::TaskSkipped& o) {
        TaskFacts* facts = factsOf(o.task);
        if (!facts) return;
        if (!facts->skipped) facts->skipped = o.at;
        facts->skips.push_back(op_->id);
    }
    /// What somebody had begun by then is still being done.
    void operator()(const journal::DishLeftOut& o) {
        day_.leftOut[o.dish].push_back(op_->id);
        for (const TaskId& task : o.tasks)
            if (!hasBegun(task)) (*this)(journal::TaskSkipped{task, o.at});
    }
    void operator()(const journal::CrewChanged& o) {
        if (!changeCrew(day_.crew, o)) setAside();
    }
    void operator()(const journal::LineTicked& o) {
        const plan::Task* task = tasks_.find(o.task);
        if (task && (o.line < 0 || std::cmp_greater_equal(o.line, task->checklist.size())))
            return setAside();
        if (TaskFacts* facts = factsOf(o.task)) facts->ticks.emplace(o.line, o.at);
    }
    void operator()(const journal::Turned& o) {
        const plan::Task* task = tasks_.find(o.task);
        const std::int32_t planned = task ? turnCount(*task) : 0;
        if (task && (o.turn < 1 || planned == 0 || o.turn > planned + kMostTurnsBeyondPlan))
            return setAside();
        if (TaskFacts* facts = factsOf(o.task)) facts->turns.emplace(o.turn, o.at);
    }
    /// Temperatures are asked for by the food record now; this says only that the day had begun.
    void operator()(const journal::TemperatureRead& o) { (void)factsOf(o.task); }
    void operator()(const journal::PiecesLaid& o) {
        BatchFacts* batch = batchOf(o.task);
        if (!batch || batch->laid) return;
        batch->laid = BatchFacts::Laid{o.at, fromMilli(o.startMilliCelsius), o.kinds};
    }
    void operator()(const journal::PieceRead& o) {
        PieceFacts* piece = pieceOf(o.task, o.piece);
        if (!piece) return;
        PieceReading reading{fromMilli(o.milliCelsius), {}};
        if (o.depth) reading.depth = fromMicrometres(*o.depth);
        piece->readings.emplace(o.at, reading);
    }
    void operator()(const journal::PieceJudged& o) {
        if (PieceFacts* piece = pieceOf(o.task, o.piece)) piece->judgements.emplace(o.at, o.isDone);
    }
    void operator()(const journal::PiecesPulled& o) {
        for (const std::int32_t number : o.pieces) {
            PieceFacts* piece = pieceOf(o.task, number);
            if (!piece || piece->pulled) continue;
            piece->pulled = o.at;
            piece->pan = o.pan;
        }
    }
    void operator()(const journal::PiecesMoved& o) {
        for (const std::int32_t number : o.pieces)
            if (PieceFacts* piece = pieceOf(o.task, number))
                piece->moves.emplace(o.at, o.isToCoolSide);
    }
    void operator()(const journal::HandHeld& o) {
        day_.grates[o.grate].handTests.emplace(o.at, Duration{o.milliseconds});
    }
    void operator()(const journal::GrateRead& o) {
        day_.grates[o.grate].readings.emplace(o.at, fromMilli(o.milliCelsius));
    }
    void operator()(const journal::CoalAdded& o) {
        day_.grates[o.grate].coalAdded.emplace(o.at, Mass::fromGrams(o.grams));
    }
    void operator()(const journal::ServeTimeMoved& o) { day_.serve = o.serve; }
    void operator()(const journal::AlarmAcknowledged& o) {
        Instant& heard = day_.acknowledged.emplace(o.alarm, o.at).first->second;
        heard = std::max(heard, o.at);
    }
    void operator()(const journal::RehearsalSet& o) { day_.rehearsal = o.anchor; }
    void operator()(const journal::EventDescribed& o) { describe(o.document); }
    void operator()(const journal::EventDrafted&) {}  // takeDraft
    void operator()(const journal::FigureSet& o) {
        if (!day_.event || !revise(*day_.event, o)) setAside();
    }
    void operator()(const journal::GuestsSet& o) {
        if (!day_.event || !revise(*day_.event, o, day_.describedGuests)) setAside();
    }
    void operator()(const journal::LineOrdered& o) {
        if (!day_.event) return setAside();
        const auto before = quantity::servingOrder(*day_.event);
        revise(*day_.event, o);
        forgetMoved(before, quantity::servingOrder(*day_.event));
    }
    void operator()(const journal::Packed& o) {
        PackFacts& facts = day_.packed[o.row];
        switch (o.where) {
            case journal::Packed::Where::Out:
                facts.out = o.count;
                break;
            case journal::Packed::Where::Home:
                facts.home = o.count;
                break;
            case journal::Packed::Where::Line:
                facts.line = o.count;
                break;
        }
    }
    void operator()(const journal::PlanPublished&) {}
    void operator()(const journal::Undone&) {}
    void operator()(const journal::ClockFollowed&) {}  // of the device's clock, not of the day
    void operator()(const safety::Fact&) {}            // takeRecord
    void operator()(const journal::GuestsPassed& o) { day_.service.counts.emplace(o.guests, o.at); }
    void operator()(const journal::LastGuestPassed& o) {
        if (!day_.service.last) day_.service.last = o.at;
    }
    void operator()(const journal::PanLevelTapped& o) {
        day_.service.pans[o.dish].levels[o.pan].emplace(o.at, o.percent);
    }
    void operator()(const journal::NextPanSet& o) {
        day_.service.pans[o.dish].set.emplace(o.pan, o.at);
    }
    void operator()(const journal::TaskInterrupted& o) {
        if (!factsOf(o.task)) return;
        if (o.isInterrupted)
            day_.debrief.interrupted.insert(o.task);
        else
            day_.debrief.interrupted.erase(o.task);
    }
    void operator()(const journal::LessonAnswered& o) {
        day_.debrief.lessons[o.figure] = Lesson{o.isAccepted, o.value};
    }
    void operator()(const journal::Unknown&) { setAside(); }

  private:
    void setAside() { day_.setAside.push_back(op_->id); }

    /// Null, and set aside, when the plan has no such task.
    TaskFacts* factsOf(const TaskId& id) {
        if (day_.sheet && !tasks_.find(id)) {
            setAside();
            return nullptr;
        }
        return &day_.tasks[id];
    }

    [[nodiscard]] bool hasBegun(const TaskId& id) const {
        if (const auto batch = day_.batches.find(id); batch != day_.batches.end())
            if (batch->second.laid) return true;
        const auto facts = day_.tasks.find(id);
        return facts != day_.tasks.end() && (facts->second.started || !facts->second.ticks.empty());
    }

    static Temperature fromMilli(std::int64_t milliCelsius) {
        return Temperature::fromCelsius(static_cast<double>(milliCelsius) / 1000.0);
    }
    static Length fromMicrometres(std::int64_t micrometres) {
        return Length::fromMillimetres(static_cast<double>(micrometres) / 1000.0);
    }

    /// Null, and set aside, when the plan has no such batch.
    BatchFacts* batchOf(const TaskId& id) { return factsOf(id) ? &day_.batches[id] : nullptr; }
    PieceFacts* pieceOf(const TaskId& id, std::int32_t number) {
        if (number < 1) {
            setAside();
            return nullptr;
        }
        BatchFacts* batch = batchOf(id);
        return batch ? &batch->pieces[number] : nullptr;
    }

    /// What stands elsewhere than it now should has to be put there again.
    void forgetMoved(const std::vector<std::size_t>& before,
                     const std::vector<std::size_t>& after) {
        for (std::size_t i = 0; i < after.size(); ++i) {
            if (before[i] == after[i]) continue;
            const std::string rows = "line/" + day_.event->menu[after[i]].id.text() + "/";
            for (auto& [row, facts] : day_.packed)
                if (row.starts_with(rows)) facts.line = 0;
        }
    }

    /// Describing the event again leaves a serve time that the client moved since where it is,
    /// unless the description itself now says another one.
    void describe(const std::string& document) {
        const event::Event* event = documents_.event(document);
        if (!event) return setAside();
        if (!day_.event || day_.event->serve.at != event->serve.at) day_.serve = event->serve.at;
        day_.event = *event;
        day_.crew.clear();
        for (const event::Person& person : event->crew)
            day_.crew.push_back({person.id, person.name, person.skills});
        day_.describedGuests = event->guests;
    }

    Day& day_;
    ReadDocuments& documents_;
    TaskIndexes tasks_;
    const Operation* op_ = nullptr;
};

/// The last plan that can be read; those after it that cannot are set aside.
void takePlan(const std::vector<const Operation*>& order, ReadDocuments& documents, Day& day) {
    for (auto op = order.rbegin(); op != order.rend(); ++op) {
        const auto* published = std::get_if<journal::PlanPublished>(&(*op)->body);
        if (!published) continue;
        if (const RunSheet* sheet = documents.sheet(published->document)) {
            day.sheet = *sheet;
            return;
        }
        day.setAside.push_back((*op)->id);
    }
}

/// The last draft that can be read, unless the event was described since; only that one is read.
void takeDraft(const std::vector<const Operation*>& order, ReadDocuments& documents, Day& day) {
    for (auto op = order.rbegin(); op != order.rend(); ++op) {
        if (const auto* described = std::get_if<journal::EventDescribed>(&(*op)->body))
            if (documents.event(described->document) != nullptr) return;
        const auto* drafted = std::get_if<journal::EventDrafted>(&(*op)->body);
        if (!drafted) continue;
        if (const event::Event* draft = documents.draft(drafted->document)) {
            day.draft = *draft;
            return;
        }
        day.setAside.push_back((*op)->id);
    }
}

/// Work that is nothing but what its lines say. The lines of a batch on the grate or of a rest are
/// reminders: ticking them all does not make the meat done.
bool isItsChecklist(const plan::Task& task) {
    return task.hands.size() == 1 && task.hands.front().length >= task.duration.usual;
}

/// The first line ticked starts a task, the last one finishes it, unless somebody said otherwise.
void concludeFromTicks(const plan::Task& task, TaskFacts& facts) {
    if (facts.ticks.empty()) return;
    const auto earlier = [](const auto& a, const auto& b) { return a.second < b.second; };
    const auto [first, last] = std::minmax_element(facts.ticks.begin(), facts.ticks.end(), earlier);
    if (!facts.started) facts.started = first->second;
    if (!facts.finished && isItsChecklist(task) && facts.ticks.size() == task.checklist.size())
        facts.finished = last->second;
}

/// Who says what was laid has begun the batch; what was pulled to the last piece is done.
void concludeFromPieces(Day& day) {
    for (const auto& [task, batch] : day.batches) {
        TaskFacts& facts = day.tasks[task];
        if (batch.laid && !facts.started) facts.started = batch.laid->at;
    }
    const bool isAnyPulled =
        std::any_of(day.batches.begin(), day.batches.end(), [](const auto& batch) {
            const auto& pieces = batch.second.pieces;
            return std::any_of(pieces.begin(), pieces.end(),
                               [](const auto& piece) { return piece.second.pulled.has_value(); });
        });
    if (!isAnyPulled) return;  // to lay the event out is work
    for (const OnGrate& batch : onGrates(day)) {
        const auto known = day.batches.find(batch.task);
        if (known == day.batches.end()) continue;
        TaskFacts& facts = day.tasks[batch.task];
        if (!facts.finished) facts.finished = lastPull(batch, known->second);
    }
}

}  // namespace

std::int32_t turnCount(const plan::Task& task) {
    return static_cast<std::int32_t>(std::count_if(
        task.hands.begin(), task.hands.end(),
        [](const plan::HandsOn& hands) { return hands.act == plan::HandsOn::Act::Turn; }));
}

Day fold(std::span<const journal::Operation> operations) {
    ReadDocuments documents;
    return fold(operations, documents);
}

Day fold(std::span<const journal::Operation> operations, ReadDocuments& documents) {
    const auto all = inOrder(operations);
    const auto order = withoutUndone(all);
    Day day;
    day.record = takeRecord(all);
    takePlan(order, documents, day);
    takeDraft(order, documents, day);
    Folder folder(day, documents);
    for (const Operation* op : order)
        folder.take(*op);
    if (day.sheet) {
        for (const plan::Task& task : day.sheet->problem.tasks)
            if (const auto facts = day.tasks.find(task.id); facts != day.tasks.end())
                concludeFromTicks(task, facts->second);
        concludeFromPieces(day);
        if (!day.serve) day.serve = day.sheet->bell;
    }
    return day;
}

}  // namespace cinder::live
