#pragma once

/// Random days of one pan that mostly go well, minute by minute, and what is written about them.

#include <cmath>
#include <random>

#include "oracle.h"

namespace samples {

class RandomSheet {
  public:
    explicit RandomSheet(std::uint64_t seed) : random_(seed) {
        stew_.isRaw = below(4) == 0;
        if (below(3) == 0) stew_.since = below(40) == 0 ? -200 : -below(110);
    }

    Sheet make() {
        const bool beginsHot = !stew_.isRaw && below(2) == 0;
        add(beginsHot ? Line::Kind::Hot : Line::Kind::Cold, beginsHot ? hot() : cold());
        for (int count = below(9); count > 0; --count) {
            if (below(25) == 0) add(Line::Kind::Tested, below(3) == 0 ? 11 : below(11));
            if (below(16) == 0) correct();
            step();
        }
        return std::move(sheet_);
    }
    [[nodiscard]] const Stew& stew() const { return stew_; }
    [[nodiscard]] int later() { return minute_ + below(150); }
    int below(int bound) { return std::uniform_int_distribution<int>{0, bound - 1}(random_); }

  private:
    int hot() { return below(12) == 0 ? 480 + below(90) : 575 + below(120); }
    int cold() { return below(12) == 0 ? 51 + below(60) : 10 + below(40); }

    void step() {
        const int what = below(20);
        if (isCooling_ || what < 12) {
            hold();
        } else if (what < 14) {
            heat();
        } else if (what < 17 && isHot_) {
            add(Line::Kind::CoolingBegun, 0);
            isCooling_ = true;
            temperature_ = 560 + below(60);
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

    /// Degrees Celsius in tenths, written on the scale of the thermometer.
    void add(Line::Kind kind, int tenths) {
        if (!sheet_.empty()) minute_ += 1 + (below(15) == 0 ? 100 + below(60) : below(100));
        Line line;
        line.minute = minute_;
        line.kind = kind;
        line.tenths = tenths;
        line.isFahrenheit = kind != Line::Kind::Tested && below(4) == 0;
        if (line.isFahrenheit) line.tenths = static_cast<int>(std::lround(tenths * 1.8)) + 320;
        sheet_.push_back(line);
        if (sheet_.size() == 1) isHot_ = kind == Line::Kind::Hot;
    }
    void heat() {
        const int kind = below(stew_.isRaw ? 4 : 3);
        add(kind == 3   ? Line::Kind::Cooked
            : kind == 2 ? Line::Kind::Packed
                        : Line::Kind::Reheated,
            kind == 2 ? 560 + below(200) : 700 + below(120));
        const bool isPack = kind == 2 && !stew_.isRaw && isAtLeast(sheet_.back(), kHot);
        isHot_ = isPack || isAtLeast(sheet_.back(), kHeated) || isHot_;
        act();
    }
    void hold() {
        if (isCooling_) {
            temperature_ = std::max(20, temperature_ * (30 + below(60)) / 100);
            add(temperature_ <= kCold.celsius && below(2) == 0 ? Line::Kind::Cold
                                                               : Line::Kind::OnTheWay,
                temperature_);
            return;
        }
        add(isHot_ ? Line::Kind::Hot : Line::Kind::Cold, isHot_ ? hot() : cold());
        act();
    }
    /// Another value beside that of the last line of food, on the same scale.
    void correct() {
        std::size_t about = sheet_.size();
        while (about > 0 && !isFood(sheet_[about - 1]))
            --about;
        if (isCooling_ || about == 0) return;
        const Line first = sheet_[about - 1];
        add(Line::Kind::Corrected, 0);
        sheet_.back().about = about - 1;
        sheet_.back().isFahrenheit = first.isFahrenheit;
        sheet_.back().tenths = first.tenths + below(100) - 50;
    }
    /// About the last line; often followed by the reading that shows that it worked.
    void act() {
        const std::size_t about = sheet_.size() - 1;
        const Line bad = sheet_[about];
        const bool isCold = bad.kind == Line::Kind::Cold;
        const bool isRaw = stew_.isRaw && !isHot_;
        const bool mustBeHeated = isRaw || bad.kind != Line::Kind::Hot;
        const bool isBad = isCold ? !isAtMost(bad, ::samples::kCold)
                                  : !isAtLeast(bad, mustBeHeated ? kHeated : kHot);
        if (!isBad || below(5) == 0) return;
        add(Line::Kind::Acted, 0);
        sheet_.back().about = about;
        const auto right = isCold                                    ? safety::Action::Chill
                           : isRaw || bad.kind == Line::Kind::Cooked ? safety::Action::CookOn
                                                                     : safety::Action::Reheat;
        const auto wrong = isCold ? safety::Action::Reheat : safety::Action::Chill;
        sheet_.back().action = below(8) == 0 ? wrong : right;
        if (below(4) == 0) return;
        // What was heated is often called held at the keypad.
        const bool isCalledHeld = below(2) == 0;
        add(isCold         ? Line::Kind::Cold
            : isCalledHeld ? Line::Kind::Hot
                           : Line::Kind::Reheated,
            isCold ? 20 + below(35) : 730 + below(60));
        isHot_ = isHot_ || (!isCold && isAtLeast(sheet_.back(), kHeated));
    }

    std::mt19937_64 random_;
    Stew stew_;
    Sheet sheet_;
    int minute_ = 0;
    bool isHot_ = false;
    bool isCooling_ = false;
    int temperature_ = 0;
};

[[nodiscard]] inline FoodRule ruleOf(const Stew& stew) {
    FoodRule rule;
    rule.isCookedHere = stew.isRaw;
    if (stew.isRaw) rule.food = event::Food::Poultry;
    if (stew.since) rule.since = kEleven + std::chrono::minutes{*stew.since};
    return rule;
}

/// The same sheet as entries of a record. From line `moved` on the food is in pan 2, filled out of
/// the first.
[[nodiscard]] inline std::vector<Entry> entriesOf(const Sheet& sheet,
                                                  std::optional<std::size_t> moved = {}) {
    using Kind = Line::Kind;
    Log log;
    std::vector<EntryId> ids;
    for (std::size_t i = 0; i < sheet.size(); ++i) {
        const Line& line = sheet[i];
        const Instant at = kEleven + std::chrono::minutes{line.minute};
        const Reading reading =
            line.isFahrenheit ? inFahrenheit(line.tenths / 10.0) : inCelsius(line.tenths / 10.0);
        const bool isMoved = moved && i >= *moved;
        const Pan pan{kPan.dish, isMoved ? kPan.number + 1 : kPan.number};
        std::optional<std::int32_t> from;
        if (moved == i) from = kPan.number;
        const auto measure = [&](Purpose purpose) {
            return log.add(FoodMeasured{pan, purpose, reading, kProbe, {}, {}, {}, at, from});
        };
        switch (line.kind) {
            case Kind::Hot:
                ids.push_back(measure(Purpose::HoldHot));
                break;
            case Kind::Cold:
                ids.push_back(measure(Purpose::HoldCold));
                break;
            case Kind::Reheated:
                ids.push_back(measure(Purpose::Reheat));
                break;
            case Kind::Packed:
                ids.push_back(measure(Purpose::ReheatPacked));
                break;
            case Kind::Cooked:
                ids.push_back(measure(Purpose::Cook));
                break;
            case Kind::OnTheWay:
                ids.push_back(measure(Purpose::Cooling));
                break;
            case Kind::Acted:
                ids.push_back(log.add(ActionTaken{ids[line.about], line.action, at}));
                break;
            case Kind::TimeStarted:
                ids.push_back(log.add(ControlLeft{pan, line.rule, reading, kProbe, at, from}));
                break;
            case Kind::CoolingBegun:
                ids.push_back(log.add(CoolingBegun{pan, CoolingRoute::Cooked, at}));
                break;
            case Kind::Thrown:
                ids.push_back(log.add(PanDiscarded{pan, at}));
                break;
            case Kind::Corrected: {
                auto again = std::get<FoodMeasured>(log.entries[line.about].fact);
                again.reading = reading;
                again.corrects = ids[line.about];
                again.reason = "mistyped";
                again.at = at;
                ids.push_back(log.add(again));
                break;
            }
            case Kind::Tested:
                ids.push_back(log.add(ThermometerTested{kProbe, reading, at}));
                break;
        }
    }
    return log.entries;
}

}  // namespace samples
