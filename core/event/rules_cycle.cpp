#include <vector>

#include "event/reader.h"
#include "event/rules.h"

namespace cinder::event {

namespace {

/// The steps as a graph: who waits for whom, and where that is written.
struct Waits {
    std::vector<StepId> names;
    std::vector<std::vector<std::pair<std::size_t, std::string>>> after;
};

Waits gather(const Event& event) {
    Waits waits;
    std::map<StepId, std::size_t> index;
    std::vector<std::pair<const Step*, std::string>> steps;
    const auto add = [&](const StepId& name, const Step& step, std::string path) {
        index.emplace(name, steps.size());
        waits.names.push_back(name);
        steps.emplace_back(&step, std::move(path));
    };
    for (std::size_t d = 0; d < event.menu.size(); ++d) {
        const auto& dish = event.menu[d];
        for (std::size_t s = 0; s < dish.method.size(); ++s)
            add(fullName(dish.id, dish.method[s].id), dish.method[s],
                joinPath(joinPath("/menu", d) + "/method", s));
    }
    for (std::size_t s = 0; s < event.work.size(); ++s)
        add(event.work[s].id, event.work[s], joinPath("/work", s));
    waits.after.resize(steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto& links = steps[i].first->after;
        for (std::size_t k = 0; k < links.size(); ++k)
            if (const auto to = index.find(links[k].step); to != index.end())
                waits.after[i].emplace_back(to->second,
                                            joinPath(steps[i].second + "/after", k) + "/step");
    }
    return waits;
}

struct Visit {
    std::size_t step = 0;
    std::size_t nextLink = 0;
};

std::string chain(const Waits& waits, const std::vector<Visit>& trail, std::size_t back) {
    std::string text;
    bool isOn = false;
    for (const auto& visit : trail) {
        isOn = isOn || visit.step == back;
        if (isOn) text += waits.names[visit.step].text() + " > ";
    }
    return text + waits.names[back].text();
}

}  // namespace

void checkCycles(const Event& event, Faults& faults) {
    enum class Colour : std::uint8_t { White, Grey, Black };
    const Waits waits = gather(event);
    std::vector<Colour> colour(waits.names.size(), Colour::White);
    for (std::size_t root = 0; root < colour.size(); ++root) {
        if (colour[root] != Colour::White) continue;
        // Depth first with a trail of our own: a long chain of steps must not use up the stack.
        std::vector<Visit> trail{{root, 0}};
        colour[root] = Colour::Grey;
        while (!trail.empty()) {
            auto& visit = trail.back();
            if (visit.nextLink == waits.after[visit.step].size()) {
                colour[visit.step] = Colour::Black;
                trail.pop_back();
                continue;
            }
            const auto& [next, path] = waits.after[visit.step][visit.nextLink++];
            if (colour[next] == Colour::Grey) {
                faults.push_back({Fault::What::Cycle, path, chain(waits, trail, next), {}, {}});
            } else if (colour[next] == Colour::White) {
                colour[next] = Colour::Grey;
                trail.push_back({next, 0});
            }
        }
    }
}

}  // namespace cinder::event
