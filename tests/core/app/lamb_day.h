#pragma once

/// The orchard lunch at its fire, at the moment its lamb is to go on.

#include <algorithm>
#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/json.h"

namespace samples {

using namespace cinder;
using namespace std::chrono_literals;

inline constexpr Instant kMorning{1'821'000'000'000ms};

inline Temperature celsius(double degrees) {
    return Temperature::fromCelsius(degrees);
}

inline double minutes(Duration duration) {
    return std::chrono::duration<double, std::ratio<60>>(duration).count();
}

/// The orchard with legs that take longer than is planned: the fire has something to say.
inline std::string orchardWithThickLegs() {
    auto event = event::parse(orchard()).value();
    for (event::Dish& dish : event.menu) {
        if (dish.id != DishId("lamb")) continue;
        double millimetres = 35;
        for (auto& kind : dish.pieces->thickness) {
            kind.thickness = Length::fromMillimetres(millimetres);
            millimetres += 13.5;
        }
    }
    return event::write(event);
}

/// That orchard at the moment its lamb is to go on: eight legs, thin, middle and thick.
struct LambDay : Device {
    LambDay() : Device(kMorning) {
        REQUIRE(session->importEvent(orchardWithThickLegs()));
        const auto* sheet = session->sheet();
        const auto& tasks = sheet->problem.tasks;
        for (std::size_t i = 0; i < tasks.size(); ++i)
            if (tasks[i].id == lamb)
                clock.advance(sheet->bell + sheet->schedule.tasks[i].start - clock.wall());
        const auto id = session->events().value().at(0).id;
        restart();
        REQUIRE(session->open(id));
    }
    void wait(Duration time) { clock.advance(time); }
    [[nodiscard]] app::BatchCard batch() {
        const auto seen = session->look();
        const app::BatchCard* found = seen->fire.find(lamb);
        REQUIRE(found);
        return *found;
    }
    [[nodiscard]] app::PieceCard piece(std::int32_t number) {
        for (const auto& one : batch().pieces)
            if (one.number == number) return one;
        FAIL("no piece " << number);
        return {};
    }
    [[nodiscard]] app::TaskCard card(const TaskId& id) {
        for (const auto& one : session->look()->tasks)
            if (one.id == id) return one;
        FAIL("no task " << id.text());
        return {};
    }
    /// Numbers of the pieces of a class, 0 thin to 2 thick.
    [[nodiscard]] std::vector<std::int32_t> ofKind(std::int32_t kind) {
        std::vector<std::int32_t> numbers;
        for (const auto& one : batch().pieces)
            if (one.kind == kind) numbers.push_back(one.number);
        return numbers;
    }
    /// Fire felt and meat laid: everything a forecast starts from.
    void begin(Duration hand = 4s) {
        REQUIRE(session->testByHand(grate, hand));
        REQUIRE(session->layPieces(lamb, celsius(8)));
    }

    /// The coals are burnt in and lie as they should.
    void readyBed() {
        for (const auto& asked : session->look()->food.beforeFire)
            REQUIRE(session->readyBeforeFire(asked.item));
        REQUIRE(session->finish(TaskId{"burn-in"}));
        REQUIRE(session->finish(TaskId{"spread"}));
        REQUIRE(coal().isReady);
    }
    [[nodiscard]] app::CoalCard coal() { return session->look()->fire.grates.at(0).coal; }

    TaskId lamb{"lamb/cook/1"};
    TaskId slice{"lamb/slice/1"};
    ResourceId grate{"grate"};
};

inline app::Refusal::Why whyNot(const Result<void, app::Refusal>& taken) {
    REQUIRE_FALSE(taken);
    return taken.error().why;
}

}  // namespace samples
