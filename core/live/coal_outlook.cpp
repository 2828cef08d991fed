#include "live/coal_outlook.h"

#include <algorithm>

#include "live/cook_batch.h"

namespace cinder::live {

namespace {

std::size_t at(plan::TaskIndex index) {
    return static_cast<std::size_t>(index);
}

class Bed {
  public:
    Bed(const Day& day, const Outlook& outlook, const event::Grate& grate)
        : day_(day), outlook_(outlook), grate_(grate) {
        const auto& resources = day.sheet->problem.resources;
        for (std::size_t r = 0; r < resources.size(); ++r)
            if (resources[r].id == grate.id) resource_ = static_cast<plan::ResourceIndex>(r);
        made_.grate = grate.id;
    }

    CoalOutlook run() {
        setReady();
        addReadings();
        if (made_.isReady) setBed();
        setNeed();
        return std::move(made_);
    }

  private:
    bool liesHere(const plan::Task& task) const {
        return resource_ &&
               std::any_of(task.uses.begin(), task.uses.end(), [&](const plan::ResourceUse& use) {
                   return use.resource == *resource_;
               });
    }

    /// Fire tasks that something on this grate waits for.
    void setReady() {
        const plan::Problem& problem = day_.sheet->problem;
        made_.isReady = true;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i)
            if (liesHere(problem.tasks[i])) waitForFireBefore(i);
        made_.isReady = made_.isReady && made_.ready;
    }

    /// What is left out of the fire hands on what it followed.
    void waitForFireBefore(std::size_t task) {
        const plan::Problem& problem = day_.sheet->problem;
        for (const plan::Link& link : problem.links) {
            const bool isFire = problem.tasks[at(link.from)].kind == plan::TaskKind::Fire;
            if (!isFire || at(link.to) != task) continue;
            const TaskOutlook& fire = outlook_.tasks[at(link.from)];
            if (fire.state == TaskState::Skipped) {
                waitForFireBefore(at(link.from));
                continue;
            }
            made_.ready = std::max(made_.ready.value_or(fire.finish), fire.finish);
            made_.isReady = made_.isReady && fire.state == TaskState::Done;
        }
    }

    void addReadings() {
        const auto found = day_.grates.find(grate_.id);
        if (found == day_.grates.end()) return;
        for (const auto& [when, held] : found->second.handTests) {
            const auto band = cook::handBand(held);
            made_.handTests.push_back({when, held, band ? std::optional(*band) : std::nullopt});
        }
        made_.thermometer.assign(found->second.readings.begin(), found->second.readings.end());
        made_.added.assign(found->second.coalAdded.begin(), found->second.coalAdded.end());
    }

    Area overCoals() const {
        return Area::ofRectangle(grate_.length - grate_.coolSide, grate_.width);
    }

    void setBed() {
        cook::CoalBed bed;
        bed.ready = *made_.ready;
        if (const auto found = day_.grates.find(grate_.id); found != day_.grates.end()) {
            bed.hand = handReadings(found->second);
            bed.thermometer = thermometerReadings(found->second);
        }
        // More than a full bed is not poured into it at once.
        const Mass full = cook::coalOfBed(overCoals());
        bed.added.reserve(made_.added.size());
        for (const auto& [when, mass] : made_.added)
            if (full > Mass{}) bed.added.push_back({when, std::min(1.0, mass / full)});
        if (const auto outlook = cook::bedOutlook(bed)) made_.bed = *outlook;
    }

    void setNeed() {
        std::optional<Instant> first, last;
        const plan::Problem& problem = day_.sheet->problem;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            const TaskOutlook& task = outlook_.tasks[i];
            if (!liesHere(problem.tasks[i]) || task.state == TaskState::Skipped) continue;
            first = std::min(first.value_or(task.start), task.start);
            last = std::max(last.value_or(task.finish), task.finish);
        }
        if (!first || *last <= *first) return;
        cook::FirePlan plan;
        plan.bed = overCoals();
        plan.cooking = *last - *first;
        const auto wanted = cook::fireFromHandTest(cook::kWantedHand);
        if (!wanted) return;
        plan.fire = *wanted;
        if (auto need = cook::coalNeed(plan)) made_.need = std::move(*need);
    }

    const Day& day_;
    const Outlook& outlook_;
    const event::Grate& grate_;
    std::optional<plan::ResourceIndex> resource_;
    CoalOutlook made_;
};

}  // namespace

std::vector<CoalOutlook> coalOutlooks(const Day& day, const Outlook& outlook) {
    std::vector<CoalOutlook> beds;
    for (const event::Grate& grate : day.event->kit.grates)
        beds.push_back(Bed(day, outlook, grate).run());
    return beds;
}

}  // namespace cinder::live
