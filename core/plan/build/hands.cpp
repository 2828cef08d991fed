#include "plan/build/hands.h"

#include <algorithm>

#include "plan/build/half_minutes.h"

namespace cinder::plan {

namespace {

std::vector<HandsOn> tended(const event::HandsTended& hands, HalfMinutes usual, SkillIndex skill) {
    const std::int32_t people = hands.workers.people;
    const HalfMinutes putOn = roundedUp(hands.putOn);
    const HalfMinutes every = std::max(roundedUp(hands.turnEvery), HalfMinutes{1});
    const HalfMinutes touch = std::max(roundedUp(hands.touch), HalfMinutes{1});
    const HalfMinutes takeOff = usual - std::min(roundedUp(hands.takeOff), usual - putOn);

    std::vector<HandsOn> segments;
    if (putOn.count() > 0)
        segments.push_back({HalfMinutes{0}, putOn, skill, people, HandsOn::Act::PutOn});
    HalfMinutes turn = every;
    while (turn < putOn)
        turn += every;
    for (; turn + touch <= takeOff && (takeOff - turn) * 2 >= every; turn += every)
        segments.push_back({turn, touch, skill, people, HandsOn::Act::Turn});
    if (takeOff < usual)
        segments.push_back({takeOff, usual - takeOff, skill, people, HandsOn::Act::TakeOff});
    return segments;
}

}  // namespace

std::vector<HandsOn> handsOn(const event::Hands& hands, HalfMinutes usual, SkillIndex skill) {
    if (const auto* whole = std::get_if<event::HandsWhole>(&hands))
        return {{HalfMinutes{0}, usual, skill, whole->workers.people, HandsOn::Act::Work}};
    if (const auto* start = std::get_if<event::HandsAtStart>(&hands)) {
        const HalfMinutes length = std::min(roundedUp(start->length), usual);
        if (length.count() == 0) return {};
        return {{HalfMinutes{0}, length, skill, start->workers.people, HandsOn::Act::Work}};
    }
    if (const auto* turned = std::get_if<event::HandsTended>(&hands))
        return tended(*turned, usual, skill);
    return {};
}

}  // namespace cinder::plan
