// The menu and its steps (edit.h).

#include <algorithm>
#include <map>

#include "event/edit.h"
#include "event/edit_parts.h"
#include "event/method_card.h"

namespace cinder::event {

namespace {

Fault unknownDish(const DishId& dish) {
    return {Fault::What::Dangling, "/menu", '"' + dish.text() + '"', "/menu", {}};
}

/// Links from outside to a step that is to go. `isGoing` tells of a step's full name, `isInside` of
/// the step that holds the link.
template <class IsGoing, class IsInside>
Faults waitingFor(const Event& draft, IsGoing isGoing, IsInside isInside,
                  const std::string& where) {
    Faults waiting;
    forEachStep(draft, [&](const Dish* dish, const Step& step, const std::string& path) {
        if (isInside(dish, step)) return;
        for (std::size_t i = 0; i < step.after.size(); ++i)
            if (isGoing(step.after[i].step))
                waiting.push_back({Fault::What::Contradiction,
                                   joinPath(path + "/after", i) + "/step",
                                   '"' + step.after[i].step.text() + '"',
                                   where,
                                   {}});
    });
    return waiting;
}

/// "Slaw 2" in every language; the first number that makes it unlike every other dish.
LocalText freeName(const Event& draft, const LocalText& name) {
    const auto numbered = [&](int n) {
        std::map<std::string, std::string> texts = name.byLanguage();
        for (auto& [language, text] : texts)
            text += " " + std::to_string(n);
        return LocalText(std::move(texts));
    };
    int n = 2;
    while (std::any_of(draft.menu.begin(), draft.menu.end(),
                       [&](const Dish& dish) { return dish.name == numbered(n); }))
        ++n;
    return numbered(n);
}

/// The steps of a dish, or of the work that belongs to none.
std::vector<Step>* stepsOf(Event& draft, const DishId& dish) {
    if (dish.empty()) return &draft.work;
    const auto there = findById(draft.menu, dish);
    return there == draft.menu.end() ? nullptr : &there->method;
}

}  // namespace

Edited withCard(Event draft, const Dish& card) {
    draft.menu.push_back(copiedInto(draft, card));
    return settled(draft);
}

Edited withCopyOf(Event draft, const DishId& dish) {
    const auto there = findById(draft.menu, dish);
    if (there == draft.menu.end()) return refused(unknownDish(dish));
    Dish copy = copiedInto(draft, *there);
    copy.name = freeName(draft, there->name);
    draft.menu.push_back(std::move(copy));
    return settled(draft);
}

Edited withDish(Event draft, Dish dish) {
    const auto there = findById(draft.menu, dish.id);
    if (there == draft.menu.end()) return refused(unknownDish(dish.id));
    // Steps that go may be what others wait for.
    const auto isGoing = [&](const StepId& step) {
        const bool isOurs = step.text().starts_with(dish.id.text() + "/");
        return isOurs &&
               std::any_of(there->method.begin(), there->method.end(),
                           [&](const Step& one) { return fullName(dish.id, one.id) == step; }) &&
               std::none_of(dish.method.begin(), dish.method.end(),
                            [&](const Step& one) { return fullName(dish.id, one.id) == step; });
    };
    auto waiting = waitingFor(
        draft, isGoing, [&](const Dish* holder, const Step&) { return holder == &*there; },
        joinPath("/menu", static_cast<std::size_t>(there - draft.menu.begin())));
    if (!waiting.empty()) return fail(std::move(waiting));
    *there = std::move(dish);
    return settled(draft);
}

Edited withoutDish(Event draft, const DishId& dish) {
    const auto there = findById(draft.menu, dish);
    if (there == draft.menu.end()) return refused(unknownDish(dish));
    const auto place = static_cast<std::size_t>(there - draft.menu.begin());
    const std::string own = dish.text() + "/";
    auto waiting = waitingFor(
        draft, [&](const StepId& step) { return step.text().starts_with(own); },
        [&](const Dish* holder, const Step&) { return holder && holder->id == dish; },
        joinPath("/menu", place));
    if (!waiting.empty()) return fail(std::move(waiting));
    draft.menu.erase(there);
    if (draft.quantities) {
        std::erase(draft.quantities->lineOrder, dish);
        // "buy/oil/for/lamb" and "buy/oil/for/lamb/packs": what only this dish asks for.
        std::erase_if(draft.quantities->overrides, [&](const Override& one) {
            return one.figure.starts_with("dish/" + own) ||
                   (one.figure + '/').find("/for/" + own) != std::string::npos;
        });
    }
    return settled(draft);
}

Edited withNobodyWaitingFor(Event draft, const DishId& dish) {
    if (findById(draft.menu, dish) == draft.menu.end()) return refused(unknownDish(dish));
    const std::string own = dish.text() + "/";
    const auto cut = [&](std::vector<Step>& steps) {
        for (Step& step : steps)
            std::erase_if(step.after,
                          [&](const After& after) { return after.step.text().starts_with(own); });
    };
    for (Dish& other : draft.menu)
        if (other.id != dish) cut(other.method);
    cut(draft.work);
    return settled(draft);
}

Edited withStep(Event draft, const DishId& dish, Step step) {
    std::vector<Step>* steps = stepsOf(draft, dish);
    if (!steps) return refused(unknownDish(dish));
    put(*steps, std::move(step), "step");
    return settled(draft);
}

Edited withoutStep(Event draft, const DishId& dish, const StepId& step) {
    std::vector<Step>* steps = stepsOf(draft, dish);
    if (!steps) return refused(unknownDish(dish));
    const auto there = findById(*steps, step);
    if (there == steps->end())
        return refused({Fault::What::Dangling,
                        dish.empty() ? "/work" : "/menu",
                        '"' + step.text() + '"',
                        "dish/step|step",
                        {}});
    const StepId name = dish.empty() ? step : fullName(dish, step);
    auto waiting = waitingFor(
        draft, [&](const StepId& other) { return other == name; },
        [](const Dish*, const Step&) { return false; }, '"' + name.text() + '"');
    if (!waiting.empty()) return fail(std::move(waiting));
    steps->erase(there);
    return settled(draft);
}

}  // namespace cinder::event
