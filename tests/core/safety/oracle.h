#pragma once

/// A second opinion on whether a pan may be kept, written from the rules' text alone: it looks at
/// the whole list of what was written down, in minutes and tenths of a degree, and knows nothing of
/// the code it judges. Random days to hold against it: random_days.h.

#include <algorithm>
#include <optional>
#include <vector>

#include "kitchen_log.h"

namespace samples {

/// One line somebody wrote on a sheet.
struct Line {
    enum class Kind {
        Hot,
        Cold,
        Reheated,
        Packed,  ///< heated from a sealed pack
        Cooked,
        OnTheWay,
        Acted,
        TimeStarted,
        CoolingBegun,
        Thrown,
        Corrected,
        Tested,  ///< in ice water, degrees Celsius
    };
    int minute = 0;
    Kind kind = Kind::Hot;
    int tenths = 0;  ///< of a degree of its own scale
    bool isFahrenheit = false;
    std::size_t about = 0;  ///< of an action or a correction: the line it is about
    safety::Action action = safety::Action::Discard;
    safety::TimeRule rule = safety::TimeRule::Hot;
};
using Sheet = std::vector<Line>;

/// What is known of the dish: poultry that comes raw, or a stew that does not.
struct Stew {
    bool isRaw = false;
    std::optional<int> since;  ///< from when on it must be measured
};

/// As printed in both scales, in tenths.
struct Figure {
    int celsius = 0;
    int fahrenheit = 0;
};
// FDA Food Code 2022: 3-501.16 (57, 5), 3-403.11 (74; 57 from a sealed pack), 3-401.11(A)(3) (74),
// 3-501.14 (57, 21, 5; 2 h, 6 h), 3-501.19 (4 h, 6 h). USDA FSIS, 2-hour rule: the longest hole in
// the record, and that time out of limit is added up.
inline constexpr Figure kHot{570, 1350}, kCold{50, 410}, kHeated{740, 1650}, kMiddle{210, 700};
inline constexpr int kHole = 120, kMend = 120, kTime = 240, kFirstStage = 120, kBothStages = 360;
/// The ice point, at most so far off (4-203.11), in tenths.
inline constexpr int kIce = 10;

inline bool isAtLeast(const Line& line, Figure figure) {
    return line.tenths >= (line.isFahrenheit ? figure.fahrenheit : figure.celsius);
}
inline bool isAtMost(const Line& line, Figure figure) {
    return line.tenths <= (line.isFahrenheit ? figure.fahrenheit : figure.celsius);
}
/// A reading of food that does not cool.
inline bool isFood(const Line& line) {
    using Kind = Line::Kind;
    return line.kind == Kind::Hot || line.kind == Kind::Cold || line.kind == Kind::Reheated ||
           line.kind == Kind::Packed || line.kind == Kind::Cooked;
}

class Oracle {
  public:
    Oracle(const Sheet& sheet, const Stew& stew, int now)
        : sheet_(sheet), stew_(stew), now_(now), isTrusted_(sheet.size(), true) {
        for (std::size_t i = 0; i < sheet.size(); ++i)
            isTrusted_[i] = trustsAt(sheet[i].minute);
        for (const Line& line : sheet) {
            if (line.kind != Line::Kind::Corrected) continue;
            Line& first = sheet_[line.about];
            // Both values stand, and the worse one is believed.
            first.tenths = first.kind == Line::Kind::Cold ? std::max(first.tenths, line.tenths)
                                                          : std::min(first.tenths, line.tenths);
            isTrusted_[line.about] = isTrusted_[line.about] && trustsAt(line.minute);
        }
    }

    /// Whether what is left over may go into a box, cold or to be cooled.
    [[nodiscard]] bool mayStay() const {
        if (has(Line::Kind::Thrown) || has(Line::Kind::TimeStarted)) return false;
        const std::size_t cooling = first(Line::Kind::CoolingBegun);
        if (!isHeldRight(cooling)) return false;
        return cooling == sheet_.size() || isCooledRight(cooling);
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
    /// A reading out of limit nobody has put right.
    struct Open {
        std::size_t line = 0;
        safety::Action wanted = safety::Action::Reheat;
        bool isPack = false;
        int by = 0;
    };

    bool has(Line::Kind kind) const { return first(kind) < sheet_.size(); }
    std::size_t first(Line::Kind kind) const {
        return static_cast<std::size_t>(
            std::find_if(sheet_.begin(), sheet_.end(),
                         [&](const Line& line) { return line.kind == kind; }) -
            sheet_.begin());
    }
    /// The thermometer passed the last test before and the next one after, as far as there are any.
    bool trustsAt(int minute) const {
        std::optional<bool> before, after;
        for (const Line& line : sheet_) {
            if (line.kind != Line::Kind::Tested) continue;
            if (line.minute <= minute) before = line.tenths <= kIce;
            if (line.minute > minute && !after) after = line.tenths <= kIce;
        }
        return before.value_or(true) && after.value_or(true);
    }
    /// When the right thing was done about a bad line.
    int actedBy(const Open& open) const {
        for (const Line& line : sheet_)
            if (line.kind == Line::Kind::Acted && line.about == open.line &&
                line.action == open.wanted)
                return line.minute;
        return 100'000;
    }
    /// Heated through, or cooled again; a pack, as far as a pack asks.
    static bool shows(const Line& line, bool isPack, const Open& open) {
        if (open.wanted == safety::Action::Chill) return line.kind == Line::Kind::Cold;
        return line.kind != Line::Kind::Cold && (isAtLeast(line, kHeated) || isPack);
    }

    /// Line by line: measured often enough, each bad line put right in time, all time out of limit
    /// together within the four hours, cold food heated through within two, and nothing hot that
    /// turns up cold.
    bool isHeldRight(std::size_t cooling) const {
        std::vector<Open> open;
        bool isHot = false, isCold = false, isOut = false;
        int out = 0;
        std::optional<int> lastGood, lastRead = stew_.since;
        const auto isRaw = [&] { return stew_.isRaw && !isHot; };
        const auto hasHole = [&](int minute) {
            return lastRead && minute - *lastRead > (isRaw() ? kTime : kHole);
        };
        for (std::size_t i = 0; i < std::min(cooling, sheet_.size()); ++i) {
            const Line& line = sheet_[i];
            if (!isFood(line)) continue;
            if (hasHole(line.minute)) return false;
            for (const Open& one : open)
                if (line.minute > one.by) return false;
            const bool isChilled = line.kind == Line::Kind::Cold;
            const bool isPack =
                line.kind == Line::Kind::Packed && !stew_.isRaw && !isHot &&
                std::all_of(open.begin(), open.end(), [](const Open& one) { return one.isPack; });
            const bool mustBeHeated =
                !isChilled && !isPack &&
                (isRaw() || line.kind != Line::Kind::Hot || (isCold && !isHot));
            const bool isIn =
                isChilled ? isAtMost(line, kCold) : isAtLeast(line, mustBeHeated ? kHeated : kHot);
            const bool isToCook = !isChilled && (isRaw() || line.kind == Line::Kind::Cooked);
            if (isIn) {
                if (isChilled && isHot) return false;
                const bool isReheat = isCold && !isHot && !isChilled && !isToCook;
                if (isReheat && lastGood && line.minute - *lastGood > kMend) return false;
                // Whoever measured it, it was there to be measured.
                if (!lastRead) lastRead = line.minute;
                if (!isTrusted_[i]) continue;
                std::erase_if(open, [&](const Open& one) {
                    return shows(line, isPack, one) && actedBy(one) <= line.minute;
                });
                isHot = isHot || !isChilled;
                isCold = isCold || isChilled;
                if (open.empty()) {
                    if (isOut) out += line.minute - *lastGood;
                    isOut = false;
                    lastGood = line.minute;
                }
            } else {
                const bool isHeld = isChilled || (!mustBeHeated && !isPack);
                const int spent = lastGood ? line.minute - *lastGood : 100'000;
                if (isHeld && spent > kTime - out) return false;
                isOut = isOut || isHeld || (isHot && !isToCook && !isAtLeast(line, kHot));
                int by = line.minute + kMend;
                if (lastGood) by = std::min(by, *lastGood + kTime - (isOut ? out : 0));
                open.push_back({i,
                                isChilled  ? safety::Action::Chill
                                : isToCook ? safety::Action::CookOn
                                           : safety::Action::Reheat,
                                isPack, by});
            }
            if (isTrusted_[i] || !lastRead) lastRead = line.minute;
        }
        const int end = cooling < sheet_.size() ? sheet_[cooling].minute : now_;
        return open.empty() && (isHot || isCold) && !hasHole(end);
    }

    bool isCooledRight(std::size_t cooling) const {
        int start = -1;
        for (std::size_t i = 0; i < cooling; ++i)
            if (isFood(sheet_[i]) && sheet_[i].kind != Line::Kind::Cold && isTrusted_[i] &&
                isAtLeast(sheet_[i], kHot))
                start = sheet_[i].minute;
        if (start < 0) return false;
        int middle = -1, end = -1;
        bool hasFallen = false;
        for (std::size_t i = cooling; i < sheet_.size(); ++i) {
            const Line& line = sheet_[i];
            if (!(isFood(line) || line.kind == Line::Kind::OnTheWay)) continue;
            // Called on the way or not, it is a reading of food that is cold; the sheets write
            // only such of it.
            if (end >= 0) {
                if (line.minute - end > kHole || !isAtMost(line, kCold)) return false;
                if (isTrusted_[i]) end = line.minute;
                continue;
            }
            if (line.minute > start + (middle < 0 ? kFirstStage : kBothStages)) return false;
            if (!isTrusted_[i]) continue;
            if (isAtLeast(line, kHot)) {
                if (hasFallen) return false;
                start = line.minute;
                continue;
            }
            hasFallen = true;
            if (middle >= 0 && !isAtMost(line, kMiddle)) return false;
            if (middle < 0 && isAtMost(line, kMiddle)) middle = line.minute;
            if (isAtMost(line, kCold)) end = line.minute;
        }
        if (end < 0) return now_ <= start + (middle < 0 ? kFirstStage : kBothStages);
        return now_ - end <= kHole;
    }

    Sheet sheet_;
    const Stew& stew_;
    int now_;
    std::vector<bool> isTrusted_;
};

}  // namespace samples
