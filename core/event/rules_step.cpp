#include <algorithm>

#include "event/reader.h"
#include "event/rules.h"

namespace cinder::event {

namespace {

std::string minutes(Duration duration) {
    return plainNumber(static_cast<double>(duration.count()) / 60000.0);
}
std::string inQuotes(const std::string& word) {
    return '"' + word + '"';
}

/// One step under examination.
struct Examined {
    const Step& step;
    const Dish* dish;
    const std::string& path;
    const Event& event;
    const Defined& defined;
    Faults& faults;

    void blame(Fault::What what, const std::string& member, std::string found,
               std::string allowed) const {
        faults.push_back({what, path + member, std::move(found), std::move(allowed), {}});
    }
    void contradict(const std::string& member, std::string found, const std::string& other) const {
        blame(Fault::What::Contradiction, member, std::move(found), path + other);
    }
};

void checkDuration(const Examined& it) {
    const Estimate& estimate = it.step.duration;
    if (estimate.low > estimate.usual)
        it.contradict("/minutes/low", minutes(estimate.low), "/minutes/usual");
    if (estimate.high < estimate.usual)
        it.contradict("/minutes/high", minutes(estimate.high), "/minutes/usual");
    if (const auto* start = std::get_if<HandsAtStart>(&it.step.hands))
        if (start->length > estimate.usual)
            it.contradict("/hands/minutes", minutes(start->length), "/minutes/usual");
    if (const auto* tended = std::get_if<HandsTended>(&it.step.hands)) {
        if (tended->putOn + tended->takeOff > estimate.usual)
            it.contradict("/hands/takeOffMinutes", minutes(tended->takeOff), "/minutes/usual");
        if (tended->turnEvery <= tended->touch)
            it.contradict("/hands/touchMinutes", minutes(tended->touch), "/hands/turnEveryMinutes");
        if (tended->putOn > tended->turnEvery)
            it.contradict("/hands/putOnMinutes", minutes(tended->putOn), "/hands/turnEveryMinutes");
    }
    if (!it.step.shortestPiece) return;
    const auto* whole = std::get_if<HandsWhole>(&it.step.hands);
    if (whole == nullptr || whole->workers.people != 1)
        it.contradict("/shortestPieceMinutes", minutes(*it.step.shortestPiece), "/hands");
    if (*it.step.shortestPiece > estimate.usual)
        it.contradict("/shortestPieceMinutes", minutes(*it.step.shortestPiece), "/minutes/usual");
}

void checkPeople(const Examined& it) {
    if (!it.step.station.empty() && !it.defined.stations.contains(it.step.station))
        it.blame(Fault::What::Dangling, "/station", inQuotes(it.step.station.text()),
                 "/site/stations");
    const Workers* workers = workersOf(it.step.hands);
    if (workers == nullptr || workers->skill.empty()) return;
    const auto skilled = it.defined.peopleBySkill.find(workers->skill);
    if (skilled == it.defined.peopleBySkill.end()) {
        it.blame(Fault::What::Dangling, "/hands/skill", inQuotes(workers->skill.text()), "/skills");
    } else if (skilled->second == 0) {
        it.blame(Fault::What::Nobody, "/hands/skill", inQuotes(workers->skill.text()), "/crew");
    } else if (skilled->second < workers->people) {
        it.blame(Fault::What::Nobody, "/hands/people", std::to_string(workers->people),
                 "1.." + std::to_string(skilled->second));
    }
}

/// Lies the piece on the grate either way round at all?
bool fits(const Pieces& pieces, const Grate& grate) {
    const Length room = grate.length - grate.coolSide;
    return (pieces.length <= room && pieces.width <= grate.width) ||
           (pieces.width <= room && pieces.length <= grate.width);
}

void checkGrates(const Examined& it) {
    const Step& step = it.step;
    if (!step.onGrates.empty() && (it.dish == nullptr || !it.dish->pieces))
        it.blame(
            Fault::What::Contradiction, "/onGrates", "[…]",
            it.dish == nullptr ? "/menu" : it.path.substr(0, it.path.rfind("/method")) + "/pieces");
    if (step.mostPieces && step.onGrates.empty())
        it.contradict("/mostPieces", std::to_string(*step.mostPieces), "/onGrates");
    if (step.isEachBatch) {
        const bool hasBatches =
            it.dish != nullptr &&
            std::any_of(it.dish->method.begin(), it.dish->method.end(),
                        [](const Step& other) { return !other.onGrates.empty(); });
        if (!hasBatches) it.contradict("/eachBatch", "true", "/onGrates");
    }
    for (std::size_t i = 0; i < step.onGrates.size(); ++i) {
        const auto& id = step.onGrates[i];
        if (id.empty()) continue;
        const std::string member = joinPath("/onGrates", i);
        const auto grate = it.defined.grates.find(id);
        if (grate == it.defined.grates.end()) {
            it.blame(Fault::What::Dangling, member, inQuotes(id.text()), "/kit/grates");
        } else if (it.dish != nullptr && it.dish->pieces &&
                   !fits(*it.dish->pieces, *grate->second)) {
            it.blame(Fault::What::Contradiction, member, inQuotes(id.text()),
                     it.path.substr(0, it.path.rfind("/method")) + "/pieces/lengthMm");
        }
    }
}

void checkUses(const Examined& it) {
    for (std::size_t i = 0; i < it.step.uses.size(); ++i) {
        const Use& use = it.step.uses[i];
        const std::string member = joinPath("/uses", i);
        if (use.resource.empty()) continue;
        const auto units = it.defined.units.find(use.resource);
        if (units == it.defined.units.end()) {
            it.blame(Fault::What::Dangling, member + "/resource", inQuotes(use.resource.text()),
                     "/kit");
        } else if (use.units > units->second) {
            it.blame(Fault::What::OutOfRange, member + "/units", std::to_string(use.units),
                     "1.." + std::to_string(units->second));
        }
    }
}

void checkLinks(const Examined& it) {
    for (std::size_t i = 0; i < it.step.after.size(); ++i) {
        const After& after = it.step.after[i];
        const std::string member = joinPath("/after", i);
        if (!after.step.empty() && !it.defined.steps.contains(after.step))
            it.blame(Fault::What::Dangling, member + "/step", inQuotes(after.step.text()),
                     it.defined.steps.empty() ? "/work" : "dish/step|step");
        if (after.maxLag && *after.maxLag < after.minLag)
            it.contradict(member + "/maxMinutes", minutes(*after.maxLag), member + "/minMinutes");
    }
}

/// Where a moment lies from the bell; nothing when it hangs on an arrival that is not fixed or
/// that is itself at fault.
std::optional<Duration> fromBell(const Moment& moment, const Event& event) {
    if (moment.anchor == Moment::Anchor::Serve) return moment.offset;
    if (!event.site.arrival || event.site.arrival->at >= event.serve.at) return std::nullopt;
    return (event.site.arrival->at - event.serve.at) + moment.offset;
}

void checkWindow(const Examined& it) {
    const Step& step = it.step;
    const auto checkAnchor = [&](const std::optional<Moment>& moment, const char* member) {
        if (moment && moment->anchor == Moment::Anchor::Arrival && !it.event.site.arrival)
            it.blame(Fault::What::Contradiction, std::string(member) + "/from", "\"arrival\"",
                     "/site/arrival");
    };
    checkAnchor(step.earliestStart, "/earliestStart");
    checkAnchor(step.latestFinish, "/latestFinish");
    if (!step.earliestStart || !step.latestFinish) return;
    const auto earliest = fromBell(*step.earliestStart, it.event);
    const auto latest = fromBell(*step.latestFinish, it.event);
    if (earliest && latest && *earliest + step.duration.usual > *latest)
        it.contradict("/latestFinish/minutes", minutes(step.latestFinish->offset),
                      "/earliestStart/minutes");
}

}  // namespace

void checkStep(const Step& step, const Dish* dish, const std::string& path, const Event& event,
               const Defined& defined, Faults& faults) {
    const Examined it{step, dish, path, event, defined, faults};
    checkDuration(it);
    checkPeople(it);
    checkGrates(it);
    checkUses(it);
    checkLinks(it);
    checkWindow(it);
}

}  // namespace cinder::event
