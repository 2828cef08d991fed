#include <algorithm>
#include <tuple>

#include "live/outlook.h"

namespace cinder::live {

namespace {

/// One stretch of work of one person that is not done yet.
struct Stretch {
    /// What comes first when several are due: a touch on the fire, then work in hand, then the
    /// next to begin.
    enum class Rank : std::uint8_t { Touch, InHand, ToBegin };
    Rank rank = Rank::ToBegin;
    Instant start;
    plan::TaskIndex task = 0;
};

bool isEarlier(const Stretch& a, const Stretch& b) {
    return std::tie(a.start, a.rank, a.task) < std::tie(b.start, b.rank, b.task);
}

/// When the stretch `k` of a running task on the grate is due, by what was done last.
Instant touchDue(const Situation& s, std::size_t i, const plan::HandsOn& hands) {
    if (hands.act == plan::HandsOn::Act::Turn && s.tasks[i].nextTurn) {
        Instant due = *s.tasks[i].nextTurn;
        // Later turns follow the next one at their planned distance.
        std::int32_t turn = 0;
        for (const plan::HandsOn& one : s.sheet.problem.tasks[i].hands)
            if (one.act == plan::HandsOn::Act::Turn && ++turn == s.tasks[i].turnsDone + 1)
                due += hands.offset - one.offset;
        return due;
    }
    if (hands.act == plan::HandsOn::Act::TakeOff) return s.due(i);
    return *s.progress[i].started + hands.offset;
}

bool isStretchDone(const Situation& s, std::size_t i, std::size_t k, std::int32_t turnsBefore) {
    const plan::HandsOn& hands = s.sheet.problem.tasks[i].hands[k];
    if (hands.act == plan::HandsOn::Act::Turn) return turnsBefore < s.tasks[i].turnsDone;
    if (hands.act == plan::HandsOn::Act::TakeOff) return false;
    // Put-on, and a start that leaves the pot alone: over when its time is.
    const plan::Task& task = s.sheet.problem.tasks[i];
    const bool isWhole = hands.offset + hands.length >= task.duration.usual;
    return !isWhole && s.now >= *s.progress[i].started + hands.offset + hands.length;
}

void addRunning(const Situation& s, std::size_t i, std::vector<std::vector<Stretch>>& ahead) {
    const plan::Task& task = s.sheet.problem.tasks[i];
    const auto& pieces = s.sheet.schedule.tasks[i].pieces;
    std::int32_t turnsBefore = 0;
    for (std::size_t k = 0; k < task.hands.size() && k < pieces.size(); ++k) {
        const plan::HandsOn& hands = task.hands[k];
        const bool isDone = isStretchDone(s, i, k, turnsBefore);
        if (hands.act == plan::HandsOn::Act::Turn) ++turnsBefore;
        if (isDone) continue;
        const bool isTouch = task.hands.size() > 1 && k > 0;
        const Instant start = isTouch ? touchDue(s, i, hands) : *s.progress[i].started;
        for (const plan::PersonIndex person : pieces[k].people)
            ahead[static_cast<std::size_t>(person)].push_back(
                {isTouch ? Stretch::Rank::Touch : Stretch::Rank::InHand, start,
                 static_cast<plan::TaskIndex>(i)});
    }
}

void addWaiting(const Situation& s, std::size_t i, std::vector<std::vector<Stretch>>& ahead) {
    const plan::PlannedTask& planned = s.sheet.schedule.tasks[i];
    for (const plan::Piece& piece : planned.pieces)
        for (const plan::PersonIndex person : piece.people)
            ahead[static_cast<std::size_t>(person)].push_back(
                {Stretch::Rank::ToBegin, s.tasks[i].start + (piece.start - planned.start),
                 static_cast<plan::TaskIndex>(i)});
}

PersonOutlook outlookOf(const Situation& s, std::vector<Stretch> ahead) {
    std::sort(ahead.begin(), ahead.end(), isEarlier);
    PersonOutlook person;
    const Stretch* now = nullptr;
    for (const Stretch& one : ahead) {
        const bool mayBegin = one.rank != Stretch::Rank::ToBegin ||
                              s.tasks[static_cast<std::size_t>(one.task)].state == TaskState::Ready;
        if (one.start > s.now || !mayBegin) continue;
        if (!now || one.rank < now->rank) now = &one;
    }
    if (now) person.now = now->task;
    for (const Stretch& one : ahead) {
        // Something due that waits while another is done comes next, and so does what lies ahead.
        if (&one == now || (person.now == one.task && one.start <= s.now)) continue;
        person.next = one.task;
        person.nextAt = std::max(one.start, s.now);
        break;
    }
    return person;
}

}  // namespace

std::vector<PersonOutlook> peopleOf(const Situation& s) {
    std::vector<std::vector<Stretch>> ahead(s.sheet.problem.crew.size());
    for (std::size_t i = 0; i < s.tasks.size(); ++i) {
        if (s.progress[i].isRunning())
            addRunning(s, i, ahead);
        else if (!s.progress[i].isOut())
            addWaiting(s, i, ahead);
    }
    std::vector<PersonOutlook> people;
    people.reserve(ahead.size());
    for (auto& stretches : ahead)
        people.push_back(outlookOf(s, std::move(stretches)));
    return people;
}

}  // namespace cinder::live
