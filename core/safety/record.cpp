#include "safety/record.h"

#include <map>

namespace cinder::safety {

namespace {

/// Calls `take` with every counting fact of one type up to `now`.
template <class Kind, class Take>
void each(const std::vector<Entry>& entries, Instant now, Take take) {
    for (const Entry& entry : entries)
        if (const auto* fact = std::get_if<Kind>(&entry.fact))
            if (!entry.isTakenBack && fact->at <= now) take(*fact);
}

}  // namespace

std::vector<FireAnswer> fireAnswers(const std::vector<Entry>& entries, Instant now) {
    std::vector<FireAnswer> answers;
    for (const FireItem item : {FireItem::Extinguisher, FireItem::Clearance, FireItem::OpenAir}) {
        FireAnswer answer;
        answer.item = item;
        each<FireItemReady>(entries, now, [&](const FireItemReady& fact) {
            if (fact.item == item && (!answer.ready || fact.at < *answer.ready))
                answer.ready = fact.at;
        });
        each<FireItemSkipped>(entries, now, [&](const FireItemSkipped& fact) {
            if (fact.item != item || (answer.skipped && *answer.skipped <= fact.at)) return;
            answer.skipped = fact.at;
            answer.reason = fact.reason;
        });
        answers.push_back(std::move(answer));
    }
    return answers;
}

Limits limitsIn(const std::vector<Entry>& entries, Instant now) {
    Limits limits;
    each<LocalRulesNamed>(entries, now, [&](const LocalRulesNamed& fact) {
        if (auto named = Limits::with(fact.rules)) limits = std::move(*named);
    });
    return limits;
}

std::vector<ThermometerState> thermometersIn(const std::vector<Entry>& entries, Instant now) {
    std::map<ThermometerId, ThermometerState> byId;
    const auto know = [&](const ThermometerId& id) -> ThermometerState& {
        ThermometerState& state = byId[id];
        state.id = id;
        return state;
    };
    each<FoodMeasured>(entries, now, [&](const FoodMeasured& fact) { know(fact.thermometer); });
    each<ControlLeft>(entries, now, [&](const ControlLeft& fact) { know(fact.thermometer); });
    each<ThermometerTested>(entries, now, [&](const ThermometerTested& fact) {
        ThermometerState& state = know(fact.thermometer);
        if (!state.lastTest || state.lastTest->at <= fact.at) state.lastTest = fact;
    });
    std::vector<ThermometerState> states;
    states.reserve(byId.size());
    for (auto& [id, state] : byId)
        states.push_back(std::move(state));
    return states;
}

std::optional<RecordSigned> signatureOf(const std::vector<Entry>& entries) {
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        if (entry->isTakenBack) continue;
        if (const auto* fact = std::get_if<RecordSigned>(&entry->fact)) return *fact;
        return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace cinder::safety
