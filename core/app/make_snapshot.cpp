#include "app/make_snapshot.h"

#include <algorithm>
#include <map>

#include "live/crew.h"

namespace cinder::app {

namespace {

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

/// "lamb/cook/2" and its brothers share everything before the number.
std::string batchFamily(const TaskId& task) {
    return task.text().substr(0, task.text().rfind('/'));
}

/// Arranges one day.
class Arrangement {
  public:
    Arrangement(const live::Day& day, const live::Outlook& outlook)
        : day_(day), outlook_(outlook), problem_(day.sheet->problem) {
        for (const plan::Task& task : problem_.tasks)
            if (task.batch) ++batches_[batchFamily(task.id)];
        if (day.event)
            for (const event::Dish& dish : day.event->menu)
                dishes_.emplace(dish.id, dish.name);
    }

    std::vector<TaskCard> cards() const {
        std::vector<TaskCard> cards;
        for (std::size_t i = 0; i < problem_.tasks.size(); ++i)
            cards.push_back(card(i));
        std::sort(cards.begin(), cards.end(), [](const TaskCard& a, const TaskCard& b) {
            return std::tie(a.start, a.id) < std::tie(b.start, b.id);
        });
        return cards;
    }

    std::vector<PersonCard> people() const {
        std::vector<PersonCard> people;
        for (std::size_t i = 0; i < problem_.crew.size(); ++i) {
            const live::PersonOutlook& seen = outlook_.people[i];
            const plan::Person& person = problem_.crew[i];
            PersonCard card{person.id, person.name, {}, {}, seen.nextAt, isHere(person.id)};
            if (seen.now) card.now = idOf(*seen.now);
            if (seen.next) card.next = idOf(*seen.next);
            people.push_back(std::move(card));
        }
        return people;
    }

    bool isHere(const PersonId& person) const {
        const auto said = std::find_if(day_.crew.begin(), day_.crew.end(),
                                       [&](const auto& one) { return one.person == person; });
        return said == day_.crew.end() || said->isHere;
    }

    const TaskId& idOf(plan::TaskIndex task) const { return problem_.tasks[at(task)].id; }

  private:
    TaskCard card(std::size_t i) const {
        const plan::Task& task = problem_.tasks[i];
        TaskCard card;
        static_cast<live::TaskOutlook&>(card) = outlook_.tasks[i];
        card.id = task.id;
        card.name = task.name;
        if (task.dish)
            if (const auto dish = dishes_.find(*task.dish); dish != dishes_.end())
                card.dish = dish->second;
        card.batch = task.batch;
        if (task.batch) card.batchCount = batches_.at(batchFamily(task.id));
        card.kind = task.kind;
        const plan::Station& station = problem_.stations[static_cast<std::size_t>(task.station)];
        card.station = station.id;
        card.stationName = station.name;
        addFacts(task, card);
        addWork(i, card);
        return card;
    }

    void addFacts(const plan::Task& task, TaskCard& card) const {
        const auto found = day_.tasks.find(task.id);
        const live::TaskFacts* facts = found == day_.tasks.end() ? nullptr : &found->second;
        card.canComeBack = card.state == TaskState::Skipped && facts && !facts->skips.empty();
        std::int32_t line = 0;
        for (const LocalText& text : task.checklist)
            card.checklist.push_back({text, facts && facts->ticks.count(line++) > 0});
    }

    void addWork(std::size_t i, TaskCard& card) const {
        const plan::Task& task = problem_.tasks[i];
        const plan::PlannedTask& planned = day_.sheet->schedule.tasks[i];
        for (std::size_t k = 0; k < planned.pieces.size(); ++k) {
            const plan::Piece& piece = planned.pieces[k];
            TaskCard::Work work;
            work.start = card.plannedStart + (piece.start - planned.start);
            work.finish = work.start + piece.length;
            if (k < task.hands.size()) work.act = task.hands[k].act;
            for (const plan::PersonIndex index : piece.people) {
                const PersonId& person = problem_.crew[static_cast<std::size_t>(index)].id;
                work.people.push_back(person);
                if (std::find(card.people.begin(), card.people.end(), person) == card.people.end())
                    card.people.push_back(person);
            }
            card.work.push_back(std::move(work));
        }
    }

    const live::Day& day_;
    const live::Outlook& outlook_;
    const plan::Problem& problem_;
    std::map<std::string, std::int32_t> batches_;
    std::map<DishId, LocalText> dishes_;
};

}  // namespace

Snapshot makeSnapshot(const live::Day& day, const live::Outlook& outlook, Instant now) {
    const live::RunSheet& sheet = *day.sheet;
    const Arrangement arrangement(day, outlook);
    Snapshot snapshot;
    if (day.event) {
        snapshot.name = day.event->name;
        snapshot.offset = day.event->serve.offset;
    }
    snapshot.now = now;
    snapshot.serve = day.serve.value_or(sheet.bell);
    snapshot.promisedServe = day.event ? day.event->serve.at : sheet.bell;
    const Duration arrival = sheet.problem.arrival.value_or(plan::firstStart(sheet.schedule));
    snapshot.arrival = sheet.bell + arrival;
    snapshot.ready = outlook.ready;
    snapshot.lateness = outlook.lateness;
    if (outlook.weakest) snapshot.weakest = arrangement.idOf(*outlook.weakest);
    for (const plan::TaskIndex task : outlook.criticalChain)
        snapshot.criticalChain.push_back(arrangement.idOf(task));
    for (const plan::Station& station : sheet.problem.stations) {
        snapshot.stations.push_back(station.id);
        snapshot.stationNames.push_back(station.name);
    }
    snapshot.tasks = arrangement.cards();
    snapshot.people = arrangement.people();
    snapshot.timers = outlook.timers;
    if (live::crewOfThoseThere(day, sheet.problem) != sheet.problem.crew)
        snapshot.notices.push_back({Notice::What::OtherCrew, {}, {}});
    for (const live::Overdue& overdue : outlook.overdue)
        snapshot.notices.push_back(
            {Notice::What::MaximumLag, arrangement.idOf(overdue.task), overdue.by});
    return snapshot;
}

void addChance(const live::Day& day, const live::Chance& chance, Snapshot& snapshot) {
    snapshot.onTime = chance.onTime;
    snapshot.onTimeQuarterHourEarlier = chance.onTimeQuarterHourEarlier;
    snapshot.ready80 = chance.ready80;
    std::map<TaskId, double> criticality;
    for (std::size_t i = 0; i < chance.criticality.size(); ++i)
        criticality.emplace(day.sheet->problem.tasks[i].id, chance.criticality[i]);
    for (TaskCard& card : snapshot.tasks)
        card.criticality = criticality.at(card.id);
}

}  // namespace cinder::app
