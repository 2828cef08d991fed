#include "event/method_card.h"

#include <algorithm>
#include <array>
#include <set>

#include "event/read_event.h"
#include "event/rules.h"
#include "event/write_parts.h"

namespace cinder::event {

namespace {

/// Kinds of kit by the ids cards use.
struct UsualKit {
    std::string_view id;
    EquipmentKind kind;
};
constexpr std::array<UsualKit, 5> kUsualKit{{{"hot-box", EquipmentKind::HotBox},
                                             {"cold-box", EquipmentKind::ColdBox},
                                             {"chafer", EquipmentKind::Chafer},
                                             {"burner", EquipmentKind::Burner},
                                             {"carving-board", EquipmentKind::WorkTop}}};

DishId freeId(const Event& event, const DishId& wanted) {
    const auto isTaken = [&](const DishId& id) {
        return std::any_of(event.menu.begin(), event.menu.end(),
                           [&](const Dish& dish) { return dish.id == id; });
    };
    DishId id = wanted;
    for (int n = 2; isTaken(id); ++n)
        id = DishId(wanted.text() + "-" + std::to_string(n));
    return id;
}

/// Steps of work a grate waits for: fires that no other fire comes after.
std::vector<StepId> readyFires(const Event& event) {
    std::set<StepId> followed;
    for (const Step& step : event.work)
        if (step.kind == StepKind::Fire)
            for (const After& after : step.after)
                followed.insert(after.step);
    std::vector<StepId> last;
    for (const Step& step : event.work)
        if (step.kind == StepKind::Fire && !followed.contains(step.id)) last.push_back(step.id);
    return last;
}

class Copy {
  public:
    Copy(const Event& event, Dish dish) : event_(event), dish_(std::move(dish)) {}

    Dish make() {
        const DishId old = dish_.id;
        dish_.id = freeId(event_, old);
        dish_.order = 1;
        for (const Dish& other : event_.menu)
            dish_.order = std::max(dish_.order, other.order + 1);
        for (Step& step : dish_.method) {
            settleGrates(step);
            settleKit(step);
            settleLinks(step, old);
        }
        return std::move(dish_);
    }

  private:
    void settleGrates(Step& step) const {
        const auto isKnown = [&](const ResourceId& id) {
            return std::any_of(event_.kit.grates.begin(), event_.kit.grates.end(),
                               [&](const Grate& grate) { return grate.id == id; });
        };
        if (step.onGrates.empty() || event_.kit.grates.empty() ||
            std::all_of(step.onGrates.begin(), step.onGrates.end(), isKnown))
            return;
        step.onGrates.clear();
        for (const Grate& grate : event_.kit.grates)
            step.onGrates.push_back(grate.id);
    }

    void settleKit(Step& step) const {
        for (Use& use : step.uses) {
            const auto find = [&](auto is) {
                return std::find_if(event_.kit.equipment.begin(), event_.kit.equipment.end(), is);
            };
            const auto none = event_.kit.equipment.end();
            if (find([&](const Equipment& kit) { return kit.id == use.resource; }) != none)
                continue;
            for (const UsualKit& usual : kUsualKit) {
                if (usual.id != use.resource.text()) continue;
                const auto like =
                    find([&](const Equipment& kit) { return kit.kind == usual.kind; });
                if (like != none) use.resource = like->id;
            }
        }
    }

    /// Of the work or of another dish. Nothing waits for a dish that is new, so no link of it can
    /// close a circle.
    [[nodiscard]] bool hasStep(const StepId& id) const {
        const auto isOf = [&](const Dish& dish) {
            return std::any_of(dish.method.begin(), dish.method.end(),
                               [&](const Step& step) { return fullName(dish.id, step.id) == id; });
        };
        return std::any_of(event_.work.begin(), event_.work.end(),
                           [&](const Step& step) { return step.id == id; }) ||
               std::any_of(event_.menu.begin(), event_.menu.end(), isOf);
    }

    void settleLinks(Step& step, const DishId& old) const {
        std::vector<After> settled;
        const std::string own = old.text() + "/";
        bool waitsForFire = false;
        for (After& after : step.after) {
            if (after.step.text().starts_with(own)) {
                after.step = fullName(dish_.id, StepId(after.step.text().substr(own.size())));
                settled.push_back(after);
            } else if (hasStep(after.step)) {
                waitsForFire = waitsForFire || after.step.text() == "spread";
                settled.push_back(after);
            }
        }
        if (!step.onGrates.empty() && !waitsForFire) {
            for (const StepId& fire : readyFires(event_)) {
                After after;
                after.step = fire;
                settled.push_back(after);
            }
        }
        step.after = std::move(settled);
    }

    const Event& event_;
    Dish dish_;
};

}  // namespace

Result<Dish, Faults> parseDish(std::string_view document) {
    GuardedText guarded = guardText(document);
    if (!guarded.isReadable) return fail(std::move(guarded.faults));
    Faults faults = std::move(guarded.faults);
    const Json json = Json::parse(document, nullptr, false);
    Dish dish;
    readDish(Node{json, {}, faults}, dish);
    // What could not be read has a value of nobody's choosing: no rules about that.
    if (faults.empty()) checkCard(dish, faults);
    if (!faults.empty()) return fail(std::move(faults));
    return dish;
}

std::string writeDish(const Dish& dish) {
    return write(dish).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Dish copiedInto(const Event& event, const Dish& card) {
    return Copy(event, card).make();
}

}  // namespace cinder::event
