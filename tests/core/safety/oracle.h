#pragma once

/// A second opinion on whether a pan may be kept, written from the rules' text alone: it looks at
/// the whole list of what was written down, in minutes and tenths of a degree, and knows nothing of
/// the code it judges. Random days to hold against it come with it.

#include <algorithm>
#include <random>
#include <vector>

#include "kitchen_log.h"

namespace samples {

/// One line somebody wrote on a sheet.
struct Line {
    enum class Kind { Hot, Cold, Reheated, OnTheWay, Acted, TimeStarted, CoolingBegun, Thrown };
    int minute = 0;
    Kind kind = Kind::Hot;
    int tenths = 0;         ///< of a degree Celsius
    std::size_t about = 0;  ///< of an action: the line it is about
    safety::Action action = safety::Action::Discard;
    safety::TimeRule rule = safety::TimeRule::Hot;
};
using Sheet = std::vector<Line>;

// FDA Food Code 2022: 3-501.16 (57, 5), 3-403.11 (74), 3-501.14 (57, 21, 5; 2 h, 6 h), 3-501.19
// (4 h, 6 h). USDA FSIS, 2-hour rule: the longest hole in the record.
inline constexpr int kHot = 570, kCold = 50, kHeated = 740, kMiddle = 210;
inline constexpr int kHole = 120, kMend = 120, kTime = 240;

class Oracle {
  public:
    Oracle(const Sheet& sheet, int now) : sheet_(sheet), now_(now) {}

    /// Whether what is left over may go into a box, cold or to be cooled.
    [[nodiscard]] bool mayStay() const {
        if (has(Line::Kind::Thrown) || has(Line::Kind::TimeStarted)) return false;
        const std::size_t cooling = first(Line::Kind::CoolingBegun);
        const std::vector<Line> before = readings(0, cooling);
        if (before.empty() || !areMended(cooling)) return false;
        const int end = cooling < sheet_.size() ? sheet_[cooling].minute : now_;
        if (hasHole(before, end) || !isHandledRight(before)) return false;
        return cooling == sheet_.size() || isCooledRight(before, cooling);
    }

    /// Whether it may be given to guests, for sure not: true means that nobody may.
    [[nodiscard]] bool mustNotBeServed() const {
        if (has(Line::Kind::Thrown)) return true;
        for (const Line& line : sheet_)
            if (line.kind == Line::Kind::TimeStarted &&
                now_ >= line.minute + (line.rule == safety::TimeRule::ColdLong ? 360 : kTime))
                return true;
        return !has(Line::Kind::TimeStarted) && !mayStay();
    }

  private:
    static bool isReading(const Line& line) {
        return line.kind == Line::Kind::Hot || line.kind == Line::Kind::Cold ||
               line.kind == Line::Kind::Reheated || line.kind == Line::Kind::OnTheWay;
    }
    bool has(Line::Kind kind) const { return first(kind) < sheet_.size(); }
    std::size_t first(Line::Kind kind) const {
        return static_cast<std::size_t>(
            std::find_if(sheet_.begin(), sheet_.end(),
                         [&](const Line& line) { return line.kind == kind; }) -
            sheet_.begin());
    }
    std::vector<Line> readings(std::size_t from, std::size_t to) const {
        std::vector<Line> found;
        for (std::size_t i = from; i < std::min(to, sheet_.size()); ++i)
            if (isReading(sheet_[i]) && sheet_[i].kind != Line::Kind::OnTheWay)
                found.push_back(sheet_[i]);
        return found;
    }
    static bool hasHole(const std::vector<Line>& lines, int end) {
        for (std::size_t i = 1; i < lines.size(); ++i)
            if (lines[i].minute - lines[i - 1].minute > kHole) return true;
        return end - lines.back().minute > kHole;
    }

    /// Hot food that was cold before has to have been heated through.
    bool wasColdBefore(std::size_t i) const {
        for (std::size_t k = i; k-- > 0;) {
            if (!isReading(sheet_[k]) || sheet_[k].kind == Line::Kind::OnTheWay) continue;
            if (sheet_[k].kind == Line::Kind::Cold && sheet_[k].tenths <= kCold) return true;
            if (sheet_[k].kind == Line::Kind::Reheated && sheet_[k].tenths >= kHeated) return false;
            if (sheet_[k].kind == Line::Kind::Hot && sheet_[k].tenths >= kHeated) return false;
            if (sheet_[k].kind == Line::Kind::Hot && sheet_[k].tenths >= kHot && !wasColdBefore(k))
                return false;
        }
        return false;
    }
    bool isIn(std::size_t i) const {
        const Line& line = sheet_[i];
        if (line.kind == Line::Kind::Cold) return line.tenths <= kCold;
        if (line.kind == Line::Kind::Reheated) return line.tenths >= kHeated;
        return line.tenths >= (wasColdBefore(i) ? kHeated : kHot);
    }
    /// Whether line k heats food through, or cools it again, for a bad line i.
    bool shows(std::size_t k, std::size_t i) const {
        const Line& line = sheet_[k];
        if (sheet_[i].kind == Line::Kind::Cold)
            return line.kind == Line::Kind::Cold && line.tenths <= kCold;
        const bool isThrough =
            line.kind == Line::Kind::Reheated || (line.kind == Line::Kind::Hot && wasColdBefore(k));
        return isThrough && line.tenths >= kHeated;
    }

    /// Every reading out of limit: an action of the right kind, and a reading that shows it worked,
    /// both in time.
    bool areMended(std::size_t cooling) const {
        std::vector<bool> isMended(sheet_.size(), true);
        int lastGood = -100'000;
        std::vector<std::size_t> open;
        for (std::size_t i = 0; i < std::min(cooling, sheet_.size()); ++i) {
            const Line& line = sheet_[i];
            if (!isReading(line) || line.kind == Line::Kind::OnTheWay) continue;
            if (isIn(i)) {
                open.erase(std::remove_if(open.begin(), open.end(),
                                          [&](std::size_t bad) {
                                              return shows(i, bad) && actedBy(bad) <= line.minute;
                                          }),
                           open.end());
                if (open.empty()) lastGood = line.minute;
                continue;
            }
            open.push_back(i);
            const bool wasReheating = line.kind == Line::Kind::Reheated || wasColdBefore(i);
            const bool isFirst = lastGood < -1000;
            if (line.kind == Line::Kind::Cold && (isFirst || line.minute - lastGood > kTime))
                return false;
            if (line.kind == Line::Kind::Hot && !wasReheating &&
                (isFirst || line.minute - lastGood > kTime))
                return false;
            int by = line.minute + kMend;
            if (!isFirst) by = std::min(by, lastGood + kTime);
            const int acted = actedBy(i);
            int shown = 100'000;
            for (std::size_t k = i + 1; k < std::min(cooling, sheet_.size()) && shown > 99'999; ++k)
                if (isReading(sheet_[k]) && sheet_[k].kind != Line::Kind::OnTheWay && shows(k, i))
                    shown = sheet_[k].minute;
            if (acted > by || shown > by || acted > now_ || shown > now_) return false;
        }
        return true;
    }
    int actedBy(std::size_t bad) const {
        const auto wanted =
            sheet_[bad].kind == Line::Kind::Cold ? safety::Action::Chill : safety::Action::Reheat;
        for (const Line& line : sheet_)
            if (line.kind == Line::Kind::Acted && line.about == bad && line.action == wanted)
                return line.minute;
        return 100'000;
    }

    /// Hot food does not turn cold by itself, and cold food is heated through within two hours.
    bool isHandledRight(const std::vector<Line>& before) const {
        bool isHot = false;
        bool isWarming = false;
        int lastCold = -1;
        for (const Line& line : before) {
            if (line.kind == Line::Kind::Cold && line.tenths <= kCold) {
                if (isHot) return false;
                // Warming that was broken off leaves the two hours running.
                if (!isWarming) lastCold = line.minute;
            } else if (line.kind != Line::Kind::Cold) {
                isWarming = isWarming || (!isHot && lastCold >= 0 && line.tenths < kHeated);
                if (line.tenths < kHot) continue;
                if (!isHot && lastCold >= 0) {
                    if (line.tenths < kHeated) continue;
                    if (line.minute - lastCold > kMend) return false;
                }
                isHot = isHot || line.kind == Line::Kind::Hot || line.tenths >= kHeated;
            }
        }
        return true;
    }

    bool isCooledRight(const std::vector<Line>& before, std::size_t cooling) const {
        int start = -1;
        for (const Line& line : before)
            if (line.kind != Line::Kind::Cold && line.tenths >= kHot) start = line.minute;
        if (start < 0) return false;
        int middle = -1, end = -1;
        bool hasFallen = false;
        std::vector<Line> after;
        for (std::size_t i = cooling; i < sheet_.size(); ++i) {
            const Line& line = sheet_[i];
            if (!isReading(line)) continue;
            // Called on the way or not, it is a reading of food that is cold.
            if (end >= 0) {
                after.push_back(line);
                continue;
            }
            if (line.minute > start + (middle < 0 ? 120 : 360)) return false;
            if (line.tenths >= kHot) {
                if (hasFallen) return false;
                start = line.minute;
                continue;
            }
            hasFallen = true;
            if (middle >= 0 && line.tenths > kMiddle) return false;
            if (middle < 0 && line.tenths <= kMiddle) middle = line.minute;
            if (line.tenths <= kCold) {
                end = line.minute;
                after.push_back(line);
            }
        }
        if (end < 0) return now_ <= start + (middle < 0 ? 120 : 360);
        // From here on it is cold food; the sheets below write only cold readings of it.
        for (const Line& line : after)
            if (line.tenths > kCold) return false;
        return !hasHole(after, now_);
    }

    const Sheet& sheet_;
    int now_;
};

/// A day of one pan that mostly goes well, minute by minute, and what is written about it.
class RandomSheet {
  public:
    explicit RandomSheet(std::uint64_t seed) : random_(seed) {}

    Sheet make() {
        const bool beginsHot = below(2) == 0;
        add(beginsHot ? Line::Kind::Hot : Line::Kind::Cold, beginsHot ? hot() : cold());
        for (int count = below(9); count > 0; --count) {
            const int what = below(20);
            if (isCooling_ || what < 12) {
                hold();
            } else if (what < 14) {
                add(Line::Kind::Reheated, 700 + below(120));
                isHot_ = sheet_.back().tenths >= kHeated || isHot_;
                act();
            } else if (what < 17 && isHot_) {
                cool();
            } else if (what == 17) {
                add(Line::Kind::TimeStarted, isHot_ ? hot() : cold());
                sheet_.back().rule = isHot_          ? safety::TimeRule::Hot
                                     : below(2) == 0 ? safety::TimeRule::Cold
                                                     : safety::TimeRule::ColdLong;
            } else if (what == 18) {
                add(Line::Kind::Thrown, 0);
            } else {
                add(below(2) == 0 ? Line::Kind::Hot : Line::Kind::Cold, below(900));
                act();
            }
        }
        return std::move(sheet_);
    }
    [[nodiscard]] int later() { return minute_ + below(150); }
    int below(int bound) { return std::uniform_int_distribution<int>{0, bound - 1}(random_); }

  private:
    int hot() { return below(12) == 0 ? 480 + below(90) : 570 + below(120); }
    int cold() { return below(12) == 0 ? 51 + below(60) : 10 + below(41); }

    void add(Line::Kind kind, int tenths) {
        if (!sheet_.empty()) minute_ += 1 + (below(15) == 0 ? 100 + below(60) : below(100));
        Line line;
        line.minute = minute_;
        line.kind = kind;
        line.tenths = tenths;
        sheet_.push_back(line);
        if (sheet_.size() == 1) isHot_ = kind == Line::Kind::Hot;
    }
    void hold() {
        if (isCooling_) {
            temperature_ = std::max(20, temperature_ * (30 + below(60)) / 100);
            add(temperature_ <= kCold && below(2) == 0 ? Line::Kind::Cold : Line::Kind::OnTheWay,
                temperature_);
            return;
        }
        add(isHot_ ? Line::Kind::Hot : Line::Kind::Cold, isHot_ ? hot() : cold());
        act();
    }
    void cool() {
        add(Line::Kind::CoolingBegun, 0);
        isCooling_ = true;
        temperature_ = 560 + below(60);
    }
    /// About the last line; often followed by the reading that shows that it worked.
    void act() {
        const std::size_t about = sheet_.size() - 1;
        const Line bad = sheet_[about];
        const bool isCold = bad.kind == Line::Kind::Cold;
        const bool isBad = isCold
                               ? bad.tenths > kCold
                               : bad.tenths < (bad.kind == Line::Kind::Reheated ? kHeated : kHot);
        if (!isBad || below(5) == 0) return;
        add(Line::Kind::Acted, 0);
        sheet_.back().about = about;
        sheet_.back().action = below(8) == 0
                                   ? (isCold ? safety::Action::Reheat : safety::Action::Chill)
                               : isCold ? safety::Action::Chill
                                        : safety::Action::Reheat;
        if (below(4) == 0) return;
        add(isCold ? Line::Kind::Cold : Line::Kind::Reheated,
            isCold ? 20 + below(35) : 730 + below(60));
        isHot_ = !isCold && sheet_.back().tenths >= kHeated ? true : isHot_;
    }

    std::mt19937_64 random_;
    Sheet sheet_;
    int minute_ = 0;
    bool isHot_ = false;
    bool isCooling_ = false;
    int temperature_ = 0;
};

/// The same sheet as entries of a record.
inline std::vector<Entry> entriesOf(const Sheet& sheet) {
    Log log;
    std::vector<EntryId> ids;
    for (const Line& line : sheet) {
        const Duration at = std::chrono::minutes{line.minute};
        const Reading reading = inCelsius(line.tenths / 10.0);
        const auto measure = [&](Purpose purpose) { return log.measure(at, purpose, reading); };
        switch (line.kind) {
            case Line::Kind::Hot:
                ids.push_back(measure(Purpose::HoldHot));
                break;
            case Line::Kind::Cold:
                ids.push_back(measure(Purpose::HoldCold));
                break;
            case Line::Kind::Reheated:
                ids.push_back(measure(Purpose::Reheat));
                break;
            case Line::Kind::OnTheWay:
                ids.push_back(measure(Purpose::Cooling));
                break;
            case Line::Kind::Acted:
                ids.push_back(log.add(ActionTaken{ids[line.about], line.action, kEleven + at}));
                break;
            case Line::Kind::TimeStarted:
                ids.push_back(log.add(ControlLeft{kPan, line.rule, reading, kProbe, kEleven + at}));
                break;
            case Line::Kind::CoolingBegun:
                ids.push_back(
                    log.add(safety::CoolingBegun{kPan, CoolingRoute::Cooked, kEleven + at}));
                break;
            case Line::Kind::Thrown:
                ids.push_back(log.add(PanDiscarded{kPan, kEleven + at}));
                break;
        }
    }
    return log.entries;
}

}  // namespace samples
