#include "plan/search/bounds_store.h"

#include <algorithm>
#include <utility>

namespace cinder::plan::search {

Side BoundsStore::add(Slot low, Slot high) {
    const auto side = static_cast<Side>(least_.size());
    least_.push_back(low);
    least_.push_back(-high);
    for (int k = 0; k < 2; ++k) {
        lastEntry_.push_back(-1);
        neededEntry_.push_back(-1);
        neededValue_.push_back(0);
        edges_.emplace_back();
        watches_.emplace_back();
    }
    heat_.push_back(0.0);
    return side;
}

void BoundsStore::addDifference(Side from, Side to, Slot lag) {
    edges_[index(from)].push_back({to, lag});
    edges_[index(to ^ 1)].push_back({from ^ 1, lag});
}

bool BoundsStore::raise(Bound bound) {
    if (isTrue(bound)) {
        reasons_.resize(reasonsKept_);
        return true;
    }
    if (isFalse(bound)) {
        because(opposite(bound));
        return contradict();
    }
    Entry entry;
    entry.side = bound.side;
    entry.value = bound.value;
    entry.before = least(bound.side);
    entry.previous = lastEntry_[index(bound.side)];
    entry.level = depth();
    if (entry.level == 0) reasons_.resize(reasonsKept_);  // nobody will ask
    entry.reasonsBegin = static_cast<std::int32_t>(reasonsKept_);
    reasonsKept_ = reasons_.size();
    entry.reasonsEnd = static_cast<std::int32_t>(reasonsKept_);
    lastEntry_[index(bound.side)] = static_cast<std::int32_t>(trail_.size());
    trail_.push_back(entry);
    least_[index(bound.side)] = bound.value;
    return true;
}

bool BoundsStore::contradict() {
    contradiction_.assign(reasons_.begin() + static_cast<std::ptrdiff_t>(reasonsKept_),
                          reasons_.end());
    reasons_.resize(reasonsKept_);
    return false;
}

void BoundsStore::decide(Bound bound) {
    levelBegins_.push_back(static_cast<std::int32_t>(trail_.size()));
    raise(bound);
}

void BoundsStore::backTo(std::int32_t level) {
    if (depth() <= level) return;
    const auto begin = index(levelBegins_[index(level)]);
    while (trail_.size() > begin) {
        const Entry& entry = trail_.back();
        least_[index(entry.side)] = entry.before;
        lastEntry_[index(entry.side)] = entry.previous;
        reasonsKept_ = index(entry.reasonsBegin);
        trail_.pop_back();
    }
    reasons_.resize(reasonsKept_);
    followed_ = std::min(followed_, begin);
    levelBegins_.resize(index(level));
}

bool BoundsStore::propagate(std::vector<Side>& moved) {
    while (followed_ < trail_.size()) {
        const Side side = trail_[followed_++].side;
        moved.push_back(side);
        for (const Edge& edge : edges_[index(side)]) {
            const Bound next{edge.to, least(side) + edge.lag};
            if (isTrue(next)) continue;
            because({side, least(side)});
            if (!raise(next)) return false;
        }
        if (!obey(side)) return false;
    }
    return true;
}

/// Looks at the lessons one of whose watched bounds has just become false. A lesson names a side
/// only once, so whatever it watches instead belongs to another side.
bool BoundsStore::obey(Side side) {
    std::vector<Watch>& watches = watches_[index(side)];
    const auto end = watches.end();
    auto kept = watches.begin();
    auto next = kept;
    const Slot reached = least(side);
    bool isFine = true;
    while (isFine && next != end) {
        const Watch watch = *next++;
        if (reached < watch.threshold || isTrue(watch.other)) {
            *kept++ = watch;
            continue;
        }
        const Range lesson = lessons_[index(watch.lesson)];
        Bound* const bounds = lessonBounds_.data() + lesson.begin;
        if (bounds[0] == opposite({side, watch.threshold})) std::swap(bounds[0], bounds[1]);
        const std::int32_t count = lesson.end - lesson.begin;
        std::int32_t k = isTrue(bounds[0]) ? count : 2;
        while (k < count && isFalse(bounds[k]))
            ++k;
        if (k < count) {
            std::swap(bounds[1], bounds[k]);
            const Bound untrue = opposite(bounds[1]);
            watches_[index(untrue.side)].push_back({watch.lesson, untrue.value, bounds[0]});
            continue;
        }
        *kept++ = {watch.lesson, watch.threshold, bounds[0]};
        if (!isTrue(bounds[0])) isFine = obeyOne(lesson);
    }
    watches.erase(std::copy(next, end, kept), end);
    return isFine;
}

std::optional<Bound> BoundsStore::mostWanted() const {
    constexpr std::size_t kNewest = 1000;
    const std::size_t end = lessons_.size() - std::min(lessons_.size(), kNewest);
    for (std::size_t k = lessons_.size(); k > end; --k) {
        std::optional<Bound> hottest;
        bool isKept = false;
        for (std::int32_t b = lessons_[k - 1].begin; b < lessons_[k - 1].end && !isKept; ++b) {
            const Bound bound = lessonBounds_[index(b)];
            isKept = isTrue(bound);
            if (isFalse(bound)) continue;
            if (!hottest || heat(bound.side) > heat(hottest->side)) hottest = bound;
        }
        if (!isKept && hottest) return hottest;
    }
    return {};
}

/// All bounds of a lesson but the first are false.
bool BoundsStore::obeyOne(const Range& lesson) {
    const Bound* const bounds = lessonBounds_.data() + lesson.begin;
    for (std::int32_t k = 1; k < lesson.end - lesson.begin; ++k)
        because(opposite(bounds[k]));
    return raise(bounds[0]);
}

void BoundsStore::warm(Side side) {
    double& heat = heat_[index(side >> 1)];
    heat += warmth_;
    if (heat < 1e100) return;
    for (double& other : heat_)
        other *= 1e-100;
    warmth_ *= 1e-100;
}

/// Notes a true bound that the contradiction needs; of two on one side the stronger.
void BoundsStore::need(Bound bound) {
    std::int32_t entry = lastEntry_[index(bound.side)];
    while (entry >= 0 && trail_[index(entry)].before >= bound.value)
        entry = trail_[index(entry)].previous;
    if (entry < 0 || trail_[index(entry)].level == 0) return;
    warm(bound.side);
    std::int32_t& known = neededEntry_[index(bound.side)];
    if (known > entry) return;
    Slot& value = neededValue_[index(bound.side)];
    if (known == entry) {
        value = std::max(value, bound.value);
        return;
    }
    if (known < 0) touched_.push_back(bound.side);
    if (entry >= levelBegin_ && known < levelBegin_) ++openAtLevel_;
    known = entry;
    value = bound.value;
}

bool BoundsStore::learn() {
    touched_.clear();
    openAtLevel_ = 0;
    levelBegin_ = 0;
    std::int32_t last = -1;
    for (const Bound bound : contradiction_) {
        need(bound);
        last = std::max(last, neededEntry_[index(bound.side)]);
    }
    if (last < 0) return false;
    const std::int32_t level = trail_[index(last)].level;
    levelBegin_ = levelBegins_[index(level - 1)];
    openAtLevel_ = 0;
    for (const Side side : touched_)
        openAtLevel_ += neededEntry_[index(side)] >= levelBegin_ ? 1 : 0;
    for (;; --last) {
        const Entry& entry = trail_[index(last)];
        if (neededEntry_[index(entry.side)] != last) continue;
        if (openAtLevel_ == 1) break;
        neededEntry_[index(entry.side)] = -2;  // touched, not needed any more
        --openAtLevel_;
        for (std::int32_t r = entry.reasonsBegin; r < entry.reasonsEnd; ++r)
            need(reasons_[index(r)]);
    }
    const std::int32_t back = collectLesson(last);
    for (const Side side : touched_)
        neededEntry_[index(side)] = -1;
    warmth_ /= 0.95;
    backTo(back);
    keepLesson();
    return true;
}

/// Whether the reasons of a needed entry are all needed anyway.
bool BoundsStore::isImplied(std::int32_t entry) const {
    const Entry& held = trail_[index(entry)];
    if (held.reasonsBegin == held.reasonsEnd) return false;
    for (std::int32_t r = held.reasonsBegin; r < held.reasonsEnd; ++r) {
        const Bound reason = reasons_[index(r)];
        const std::int32_t known = neededEntry_[index(reason.side)];
        const bool isNeeded =
            known >= 0 && known < entry && neededValue_[index(reason.side)] >= reason.value;
        if (isNeeded) continue;
        std::int32_t source = lastEntry_[index(reason.side)];
        while (source >= 0 && trail_[index(source)].before >= reason.value)
            source = trail_[index(source)].previous;
        if (source >= 0 && trail_[index(source)].level > 0) return false;
    }
    return true;
}

/// Fills `lesson_`, the bound that must now hold first and the one that was true last second;
/// returns how far to go back.
std::int32_t BoundsStore::collectLesson(std::int32_t last) {
    lesson_.clear();
    const Side first = trail_[index(last)].side;
    lesson_.push_back(opposite({first, neededValue_[index(first)]}));
    std::int32_t back = 0;
    std::int32_t latest = -1;
    for (const Side side : touched_) {
        const std::int32_t entry = neededEntry_[index(side)];
        if (entry < 0 || entry == last || isImplied(entry)) continue;
        lesson_.push_back(opposite({side, neededValue_[index(side)]}));
        if (entry <= latest) continue;
        latest = entry;
        back = trail_[index(entry)].level;
        std::swap(lesson_[1], lesson_.back());
    }
    return back;
}

void BoundsStore::keepLesson() {
    const auto begin = static_cast<std::int32_t>(lessonBounds_.size());
    lessonBounds_.insert(lessonBounds_.end(), lesson_.begin(), lesson_.end());
    const Range range{begin, static_cast<std::int32_t>(lessonBounds_.size())};
    if (lesson_.size() > 1) {
        lessons_.push_back(range);
        watch(static_cast<std::int32_t>(lessons_.size()) - 1);
    }
    obeyOne(range);
}

/// Watches the first two bounds of a lesson.
void BoundsStore::watch(std::int32_t lesson) {
    const Bound* const bounds = lessonBounds_.data() + lessons_[index(lesson)].begin;
    for (int k = 0; k < 2; ++k) {
        const Bound untrue = opposite(bounds[k]);
        watches_[index(untrue.side)].push_back({lesson, untrue.value, bounds[1 - k]});
    }
}

void BoundsStore::restart() {
    backTo(0);
    if (lessons_.size() > mostLessons_) forget();
}

/// Without decisions all that is known has been followed to its end: a lesson of which no bound is
/// true has two at least that may still become so.
void BoundsStore::forget() {
    constexpr std::int32_t kShort = 5;
    for (auto& watches : watches_)
        watches.clear();
    const std::vector<Range> all = std::exchange(lessons_, {});
    std::int32_t end = 0;
    for (std::size_t k = 0; k < all.size(); ++k) {
        const auto from = lessonBounds_.begin() + all[k].begin;
        const auto until = lessonBounds_.begin() + all[k].end;
        const bool isOld = k < all.size() / 2;
        if (isOld && all[k].end - all[k].begin > kShort) continue;
        if (std::any_of(from, until, [&](Bound bound) { return isTrue(bound); })) continue;
        const auto kept = lessonBounds_.begin() + end;
        const auto keptEnd =
            std::copy_if(from, until, kept, [&](Bound bound) { return !isFalse(bound); });
        lessons_.push_back({end, static_cast<std::int32_t>(keptEnd - lessonBounds_.begin())});
        end = lessons_.back().end;
        watch(static_cast<std::int32_t>(lessons_.size()) - 1);
    }
    lessonBounds_.resize(index(end));
    mostLessons_ += mostLessons_ / 5;
}

}  // namespace cinder::plan::search
