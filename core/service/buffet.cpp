#include "service/buffet.h"

#include <algorithm>
#include <map>
#include <string>

namespace cinder::service {

namespace {

/// Where a dish's guests lie between 0 and 1, and which number decides.
struct Taking {
    double from = 0;
    double share = 1;
    std::uint32_t draw = 0;
};

std::optional<double> shareOf(const event::Dish& dish) {
    if (!dish.serving || !dish.serving->takePercent) return std::nullopt;
    return std::min(1.0, static_cast<double>(*dish.serving->takePercent) / 100.0);
}

std::string choiceOf(const event::Dish& dish) {
    return dish.serving && dish.serving->choice ? *dish.serving->choice : std::string{};
}

class Arranging {
  public:
    Arranging(const event::Event& event, std::span<const DishId> order, const Staffing& staffing,
              const Habits& habits)
        : staffing_(staffing), habits_(habits) {
        for (const DishId& id : order)
            for (const event::Dish& dish : event.menu)
                if (dish.id == id) dishes_.push_back(&dish);
    }

    Buffet buffet() {
        share();
        Buffet buffet;
        buffet.sides = std::max(1, staffing_.sides);
        buffet.stops.push_back(forEverybody(habits_.plates));
        const event::Dish* before = nullptr;
        for (std::size_t i = 0; i < dishes_.size(); ++i) {
            const event::Dish& dish = *dishes_[i];
            const bool isSameStop = before && isServed(*before) && isServed(dish);
            if (!isSameStop) buffet.stops.push_back(stopOf(dish));
            buffet.stops.back().options.push_back(
                {dish.id, takings_[i].from, takings_[i].share, timeOf(dish), takings_[i].draw});
            before = &dish;
        }
        buffet.stops.push_back(forEverybody(habits_.cutlery));
        for (std::size_t i = 1; i < buffet.stops.size(); ++i)
            buffet.stops[i].room =
                buffet.stops[i].servers > 0 ? habits_.roomBeforeServer : habits_.room;
        return buffet;
    }

  private:
    static bool isServed(const event::Dish& dish) { return dish.course == event::Course::Main; }

    Spread timeOf(const event::Dish& dish) const {
        using event::Course;
        if (isServed(dish)) return habits_.served;
        const bool isSmall = dish.course == Course::Bread || dish.course == Course::Sauce;
        return isSmall ? habits_.small : habits_.dish;
    }

    Stop forEverybody(const Spread& time) {
        Stop stop;
        stop.everybody = time;
        stop.draw = nextDraw_++;
        return stop;
    }

    Stop stopOf(const event::Dish& dish) {
        Stop stop;
        stop.past = habits_.past;
        stop.servers = isServed(dish) ? std::max(1, staffing_.servers) : 0;
        stop.team = isServed(dish) ? 1 : 0;
        stop.draw = nextDraw_++;
        stop.further = habits_.further;
        return stop;
    }

    /// Dishes of one choice lie side by side between 0 and 1, as long as there is room.
    void share() {
        std::map<std::string, std::vector<std::size_t>> choices;
        takings_.resize(dishes_.size());
        for (std::size_t i = 0; i < dishes_.size(); ++i) {
            const std::string choice = choiceOf(*dishes_[i]);
            if (!choice.empty()) {
                choices[choice].push_back(i);
                continue;
            }
            takings_[i] = {0, shareOf(*dishes_[i]).value_or(1.0), nextDraw_++};
        }
        for (const auto& [name, members] : choices)
            shareChoice(members);
    }

    void shareChoice(const std::vector<std::size_t>& members) {
        double known = 0;
        std::int32_t unknown = 0;
        for (const std::size_t i : members) {
            const auto share = shareOf(*dishes_[i]);
            known += share.value_or(0);
            unknown += share ? 0 : 1;
        }
        // Percentages that were rounded may come to 101.
        const bool isOneEach = known < 1.02;
        const double scale = known > 1 && isOneEach ? 1 / known : 1;
        const double rest = unknown > 0 ? std::max(0.0, 1 - known) / unknown : 0;
        const std::uint32_t draw = nextDraw_++;
        double from = 0;
        for (const std::size_t i : members) {
            const auto share = shareOf(*dishes_[i]);
            if (!isOneEach) {
                takings_[i] = {0, share.value_or(1.0), nextDraw_++};
                continue;
            }
            takings_[i] = {from, share ? *share * scale : rest, draw};
            from += takings_[i].share;
        }
    }

    const Staffing& staffing_;
    const Habits& habits_;
    std::vector<const event::Dish*> dishes_;
    std::vector<Taking> takings_;
    std::uint32_t nextDraw_ = 1;
};

}  // namespace

Buffet buffetOf(const event::Event& event, std::span<const DishId> order, const Staffing& staffing,
                const Habits& habits) {
    return Arranging(event, order, staffing, habits).buffet();
}

}  // namespace cinder::service
