#include "event/read_step.h"

#include "event/limits.h"

namespace cinder::event {

namespace {

const auto kRead = [](const Node& node, auto& out) { readInto(node, out); };
const auto kWord = [](const Node& node, auto& out) { readWord(node, out); };
const auto kDuration = [](const Node& node, Duration& out) { readMinutes(node, kMinutes, out); };
const auto kShift = [](const Node& node, Duration& out) { readMinutes(node, kSignedMinutes, out); };

void readEstimate(const Node& node, Estimate& out) {
    const auto minutes = [](const Node& n, Duration& d) { readMinutes(n, kStepMinutes, d); };
    Members members(node);
    members.required("low", out.low, minutes);
    members.required("usual", out.usual, minutes);
    members.required("high", out.high, minutes);
    out.unknown = members.unknown();
}

void readWorkers(Members& members, Workers& out) {
    members.required("skill", out.skill, kRead);
    members.optional("people", out.people, [](const Node& node, std::int32_t& people) {
        readWhole(node, kPeopleRange, people);
    });
}

Hands readHandsOf(HandsMode mode, Members& members) {
    switch (mode) {
        case HandsMode::Whole: {
            HandsWhole whole;
            readWorkers(members, whole.workers);
            return whole;
        }
        case HandsMode::Start: {
            HandsAtStart start;
            readWorkers(members, start.workers);
            members.required("minutes", start.length, kDuration);
            return start;
        }
        case HandsMode::Tended: {
            HandsTended tended;
            readWorkers(members, tended.workers);
            members.required("putOnMinutes", tended.putOn, kDuration);
            members.required("turnEveryMinutes", tended.turnEvery, kDuration);
            members.required("touchMinutes", tended.touch, kDuration);
            members.required("takeOffMinutes", tended.takeOff, kDuration);
            return tended;
        }
        case HandsMode::None:
            break;
    }
    return HandsFree{};
}

void readHands(const Node& node, Step& out) {
    Members members(node);
    HandsMode mode = HandsMode::None;
    members.required("mode", mode, kWord);
    out.hands = readHandsOf(mode, members);
    out.handsUnknown = members.unknown();
}

void readUse(const Node& node, Use& out) {
    Members members(node);
    members.required("resource", out.resource, kRead);
    members.required("units", out.units, [](const Node& n, std::int32_t& units) {
        readWhole(n, {1, kCountRange.high}, units);
    });
    out.unknown = members.unknown();
}

void readAfter(const Node& node, After& out) {
    Members members(node);
    members.required("step", out.step, [](const Node& n, StepId& step) {
        std::string name;
        readStepName(n, name);
        step = StepId(std::move(name));
    });
    members.optional("fromEnd", out.fromEnd, kWord);
    members.optional("toEnd", out.toEnd, kWord);
    members.optional("minMinutes", out.minLag, kShift);
    members.optional("maxMinutes", out.maxLag, kShift);
    out.unknown = members.unknown();
}

void readMoment(const Node& node, Moment& out) {
    Members members(node);
    members.required("from", out.anchor, kWord);
    members.required("minutes", out.offset, kShift);
    out.unknown = members.unknown();
}

void readRest(Members& members, Step& out) {
    members.optional("earliestStart", out.earliestStart, readMoment);
    members.optional("latestFinish", out.latestFinish, readMoment);
    members.optional("shortestPieceMinutes", out.shortestPiece,
                     [](const Node& node, Duration& d) { readMinutes(node, kStepMinutes, d); });
    members.optional("lean", out.lean, kWord);
    members.optional("staleness", out.staleness, [](const Node& node, std::int32_t& staleness) {
        readWhole(node, kStalenessRange, staleness);
    });
    members.optional("endsByItself", out.endsByItself, kRead);
    members.optional("checklist", out.checklist, [](const Node& node, auto& lines) {
        readList(node, kAnyEntries, lines, kRead);
    });
    members.optional("checkEveryMinutes", out.checkEvery, [](const Node& node, Duration& every) {
        readMinutes(node, {1, kMinutes.high}, every);
    });
}

}  // namespace

void readStep(const Node& node, Step& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("kind", out.kind, kWord);
    members.required("station", out.station, kRead);
    members.required("minutes", out.duration, readEstimate);
    members.required("hands", out, readHands);
    members.optional("uses", out.uses,
                     [](const Node& n, auto& uses) { readList(n, kAnyEntries, uses, readUse); });
    members.optional("onGrates", out.onGrates,
                     [](const Node& n, auto& grates) { readList(n, kAnyEntries, grates, kRead); });
    members.optional("mostPieces", out.mostPieces,
                     [](const Node& n, std::int32_t& most) { readWhole(n, kPieceRange, most); });
    members.optional("eachBatch", out.isEachBatch, kRead);
    members.optional("after", out.after, [](const Node& n, auto& after) {
        readList(n, kAnyEntries, after, readAfter);
    });
    readRest(members, out);
    out.unknown = members.unknown();
}

}  // namespace cinder::event
