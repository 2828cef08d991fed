// One step of a dish: how long, whose hands, which turns, how long it may wait.

#include <algorithm>

#include "event/limits.h"
#include "fields.h"

namespace cinder::face {

using event::Event;
using event::Step;
using Kind = NumberEntry::Kind;

class StepFields {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::StepFields)

  public:
    StepFields(FieldList& fields, const DishId& holder)
        : list(fields), draft(fields.draft), dish(holder) {}

    void show(const StepId& id) {
        find(id);
        if (path.empty()) return;
        list.text(path + "/name", tr("Name"), list.words.name(now.name),
                  [this_ = *this](const std::string& text) {
                      return this_.changed([text](Step& s) { s.name = LocalText(text); });
                  });
        kind();
        duration();
        hands();
        holding();
        list.removal(
                tr("Take this step out"),
                [dish = dish, id](Event e) { return event::withoutStep(std::move(e), dish, id); },
                QStringLiteral("dish:") + toText(dish.text()))
            .path = path;
    }

    /// Everything it could wait for: the other steps of its dish, then the work of the day.
    void others(const StepId& id) {
        find(id);
        if (path.empty()) return;
        for (const auto& one : draft.menu)
            for (const auto& step : one.method)
                if (one.id == dish && step.id != id)
                    offer(event::fullName(one.id, step.id), list.words.name(step.name));
        list.heading(tr("Work of the day"));
        for (const auto& step : draft.work)
            offer(step.id, list.words.name(step.name));
    }

  private:
    void find(const StepId& id) {
        for (std::size_t d = 0; d < draft.menu.size(); ++d)
            for (std::size_t s = 0; s < draft.menu[d].method.size(); ++s)
                if (draft.menu[d].id == dish && draft.menu[d].method[s].id == id) {
                    now = draft.menu[d].method[s];
                    path = pointer(pointer("/menu", d) + "/method", s);
                }
    }

    [[nodiscard]] QString placeOf(const char* kind) const {
        return toText(kind + event::fullName(dish, now.id).text());
    }

    void offer(const StepId& full, const QString& name) {
        if (std::any_of(now.after.begin(), now.after.end(),
                        [&](const auto& one) { return one.step == full; }))
            return;
        list.act(toText("after:" + full.text()), name, tr("Wait for it"), changed([full](Step& s) {
                     event::After link;
                     link.step = full;
                     s.after.push_back(std::move(link));
                 }))
            .target = placeOf("step:");
    }

    template <class Change>
    [[nodiscard]] app::Edit changed(Change change) const {
        return [step = now, dish = dish, change](Event e) mutable {
            change(step);
            return event::withStep(std::move(e), dish, step);
        };
    }

    template <class Set>
    Field& time(const std::string& member, const QString& name, Duration value,
                event::Range<double> range, Set set) {
        return list.number(path + member, name, Kind::Minutes, inMinutes(value), range.low,
                           range.high, [this_ = *this, set](double v) {
                               return this_.changed([set, v](Step& s) { set(s, fromMinutes(v)); });
                           });
    }

    void kind() {
        Field& kind = list.choice(
            path + "/kind", tr("What it is"), false, [this_ = *this](const std::string& key) {
                return this_.changed([key](Step& s) {
                    s.kind = event::valueOf<event::StepKind>(key).value_or(s.kind);
                });
            });
        for (const auto& word : event::wordsOf(event::StepKind{}))
            FieldList::option(kind, word.text, ChoiceWords::of(word.value), now.kind == word.value);
        Field& station = list.choice(
            path + "/station", tr("Where"), false, [this_ = *this](const std::string& key) {
                return this_.changed([key](Step& s) { s.station = StationId(key); });
            });
        for (const auto& one : draft.site.stations)
            FieldList::option(station, one.id.text(), list.words.name(one.name),
                              now.station == one.id);
    }

    void duration() {
        list.heading(tr("How long"));
        time("/minutes/usual", tr("Usually"), now.duration.usual, event::kStepMinutes,
             [](Step& s, Duration v) {
                 // The other two give way: nobody means a usual time outside of them.
                 s.duration.usual = v;
                 s.duration.low = std::min(s.duration.low, v);
                 s.duration.high = std::max(s.duration.high, v);
             });
        time("/minutes/low", tr("At best"), now.duration.low, event::kStepMinutes,
             [](Step& s, Duration v) { s.duration.low = v; });
        time("/minutes/high", tr("At worst"), now.duration.high, event::kStepMinutes,
             [](Step& s, Duration v) { s.duration.high = v; });
    }

    static event::HandsMode modeOf(const event::Hands& hands) {
        return static_cast<event::HandsMode>(hands.index());
    }
    void hands() {
        list.heading(tr("Whose hands"));
        Field& mode = list.choice(
            path + "/hands/mode", tr("Hands are on it"), false,
            [this_ = *this, skill = draft.skills.empty() ? SkillId{} : draft.skills.back().id](
                const std::string& key) {
                return this_.changed([key, skill](Step& s) {
                    const auto* old = workersOf(s.hands);
                    const event::Workers workers = old ? *old : event::Workers{skill, 1};
                    using std::chrono::minutes;
                    using std::chrono::seconds;
                    if (key == "none") s.hands = event::HandsFree{};
                    if (key == "whole") s.hands = event::HandsWhole{workers};
                    if (key == "start") s.hands = event::HandsAtStart{workers, minutes(1)};
                    if (key == "tended")
                        s.hands = event::HandsTended{workers, minutes(1), minutes(5), seconds(30),
                                                     minutes(1)};
                });
            });
        for (const auto& word : event::wordsOf(event::HandsMode{}))
            FieldList::option(mode, word.text, ChoiceWords::of(word.value),
                              modeOf(now.hands) == word.value);
        const event::Workers* workers = workersOf(now.hands);
        if (workers == nullptr) return;
        Field& skill = list.choice(path + "/hands/skill", tr("Skill"), false,
                                   [this_ = *this](const std::string& key) {
                                       return this_.changed([key](Step& s) {
                                           if (auto* w = workersOf(s.hands))
                                               w->skill = SkillId(key);
                                       });
                                   });
        for (const auto& one : draft.skills)
            FieldList::option(skill, one.id.text(), list.words.name(one.name),
                              workers->skill == one.id);
        list.number(path + "/hands/people", tr("People at once"), Kind::Count, workers->people,
                    event::kPeopleRange.low, event::kPeopleRange.high, [this_ = *this](double v) {
                        return this_.changed([v](Step& s) {
                            if (auto* w = workersOf(s.hands))
                                w->people = static_cast<std::int32_t>(v);
                        });
                    });
        turns();
    }

    void turns() {
        if (const auto* start = std::get_if<event::HandsAtStart>(&now.hands))
            time("/hands/minutes", tr("At the start, for"), start->length, event::kStepMinutes,
                 [](Step& s, Duration v) { std::get<event::HandsAtStart>(s.hands).length = v; });
        const auto* tended = std::get_if<event::HandsTended>(&now.hands);
        if (tended == nullptr) return;
        const auto part = [&](const char* member, const QString& name,
                              Duration event::HandsTended::*field) {
            time(std::string("/hands/") + member, name, tended->*field, event::kMinutes,
                 [field](Step& s, Duration v) { std::get<event::HandsTended>(s.hands).*field = v; })
                .stepBy = 0.5;
        };
        part("turnEveryMinutes", tr("Turn every"), &event::HandsTended::turnEvery);
        part("putOnMinutes", tr("Putting on takes"), &event::HandsTended::putOn);
        part("touchMinutes", tr("One turn takes"), &event::HandsTended::touch);
        part("takeOffMinutes", tr("Taking off takes"), &event::HandsTended::takeOff);
    }

    void holding() {
        list.heading(tr("Starts only after"));
        for (std::size_t i = 0; i < now.after.size(); ++i) {
            const event::After& after = now.after[i];
            const QString name = nameOf(after.step);
            const std::string member = pointer("/after", i);
            time(member + "/minMinutes", tr("%1: wait at least").arg(name), after.minLag,
                 event::kMinutes, [i](Step& s, Duration v) { s.after.at(i).minLag = v; });
            if (after.maxLag)
                time(member + "/maxMinutes", tr("%1: wait at most").arg(name), *after.maxLag,
                     event::kMinutes, [i](Step& s, Duration v) { s.after.at(i).maxLag = v; });
            list.takeOut(toText(path + member), tr("No longer wait for %1").arg(name),
                         changed([step = after.step](Step& s) {
                             std::erase_if(s.after,
                                           [&](const auto& one) { return one.step == step; });
                         }));
        }
        list.go(placeOf("after:"), tr("Wait for something more"), {}, path + "#after");
        if (now.checkEvery)
            time("/checkEveryMinutes", tr("Take the temperature every"), *now.checkEvery,
                 event::kStepMinutes, [](Step& s, Duration v) { s.checkEvery = v; })
                .stepBy = 5;
    }

    [[nodiscard]] QString nameOf(const StepId& full) const {
        for (const auto& one : draft.menu)
            for (const auto& step : one.method)
                if (event::fullName(one.id, step.id) == full) return list.words.name(step.name);
        for (const auto& step : draft.work)
            if (step.id == full) return list.words.name(step.name);
        return toText(full.text());
    }

    FieldList& list;
    const Event& draft;
    DishId dish;
    Step now;
    std::string path;
};

void addStep(FieldList& list, const DishId& dish, const StepId& id) {
    StepFields(list, dish).show(id);
}
void addOthers(FieldList& list, const DishId& dish, const StepId& id) {
    StepFields(list, dish).others(id);
}

}  // namespace cinder::face
