#include <algorithm>
#include <catch2/catch.hpp>

#include "app/service_plan.h"
#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::LessonCard;
using app::Refusal;
using samples::Device;

namespace {

/// The orchard's first task, done in so many times its length.
struct Looked : Device {
    explicit Looked(double ratio) : Device(event::parse(samples::orchard()).value().serve.at - 4h) {
        REQUIRE(session->importEvent(samples::orchard()));
        const auto first = session->look()->tasks.front();
        task = first.id;
        const Duration length = first.finish - first.start;
        REQUIRE(session->start(task));
        clock.advance(std::chrono::floor<std::chrono::seconds>(
            Duration{static_cast<std::int64_t>(static_cast<double>(length.count()) * ratio)}));
        REQUIRE(session->finish(task));
    }
    [[nodiscard]] LessonCard lesson(const app::Debrief& debrief) const {
        const auto found = std::find_if(
            debrief.lessons.begin(), debrief.lessons.end(),
            [&](const LessonCard& card) { return card.figure == "length/" + task.text(); });
        REQUIRE(found != debrief.lessons.end());
        return *found;
    }
    TaskId task;
};

}  // namespace

TEST_CASE("a task that took longer stands planned against actual, and teaches") {
    Looked day(1.6);
    const auto debrief = day.session->debrief();
    REQUIRE(debrief);
    REQUIRE(debrief->tasks.size() == 1);
    CHECK(debrief->tasks.front().actual.task == day.task);
    CHECK(debrief->tasks.front().actual.actualLength > debrief->tasks.front().actual.plannedLength);
    CHECK(debrief->events == 1);
    const LessonCard lesson = day.lesson(*debrief);
    CHECK(lesson.learned > lesson.planned);
    CHECK(lesson.low <= lesson.learned);
    CHECK(lesson.high >= lesson.learned);
    CHECK(lesson.events == 1);
    CHECK(lesson.answer == LessonCard::Answer::None);
}

TEST_CASE("an interrupted task does not count, until it does again") {
    Looked day(1.6);
    REQUIRE(day.session->markInterrupted(day.task, true));
    auto debrief = day.session->debrief().value();
    CHECK(debrief.tasks.front().isInterrupted);
    CHECK(debrief.lessons.empty());
    CHECK(day.session->look()->undo->what == app::UndoOffer::What::Interrupted);
    CHECK(day.session->markInterrupted(day.task, true).error().why == Refusal::Why::NotNow);
    CHECK(day.session->markInterrupted(TaskId{"none"}, true).error().why ==
          Refusal::Why::UnknownTask);
    REQUIRE(day.session->undo());
    debrief = day.session->debrief().value();
    CHECK_FALSE(debrief.tasks.front().isInterrupted);
    CHECK_FALSE(debrief.lessons.empty());
}

TEST_CASE(
    "what is accepted goes into the next event made from this one, what is ignored does not") {
    Looked day(1.6);
    const EventId past = day.session->look()->event;
    const auto figure = "length/" + day.task.text();
    const auto usual = [&] {
        const auto document = day.session->documentOf(past).value();
        const auto event = event::parse(document).value();
        for (const auto& step : event.work)
            if (step.id.text() == day.task.text()) return step.duration.usual;
        FAIL("no step " << day.task.text());
        return Duration{};
    };
    const Duration planned = usual();
    REQUIRE(day.session->answerLesson(figure, false));
    CHECK(day.lesson(day.session->debrief().value()).answer == LessonCard::Answer::Ignored);
    CHECK(usual() == planned);

    REQUIRE(day.session->answerLesson(figure, true));
    const LessonCard lesson = day.session->debrief().value().lessons.front();
    CHECK(lesson.answer == LessonCard::Answer::Accepted);
    CHECK(usual().count() == lesson.learned);

    // It survives the battery, and the draft begins with it.
    day.restart();
    CHECK(usual().count() == lesson.learned);
    const auto draft = day.session->newDraft({day.session->documentOf(past).value(),
                                              {},
                                              {Instant{1'821'000'000'000ms} + 24h, UtcOffset{}},
                                              {}});
    REQUIRE(draft);
    bool isFound = false;
    for (const auto& step : day.session->draft()->work)
        if (step.id.text() == day.task.text())
            isFound = step.duration.usual.count() == lesson.learned;
    CHECK(isFound);

    REQUIRE(day.session->open(past));
    CHECK(day.session->answerLesson("length/no-such-step", true).error().why ==
          Refusal::Why::NotNow);
}

TEST_CASE("a rehearsal is looked back upon and teaches nothing") {
    Device device(event::parse(samples::orchard()).value().serve.at - 4h);
    REQUIRE(device.session->importEvent(samples::orchard()));
    REQUIRE(device.session->rehearse(1, 0min));
    const TaskId task = device.session->look()->tasks.front().id;
    REQUIRE(device.session->start(task));
    device.clock.advance(1h);
    REQUIRE(device.session->finish(task));
    const auto debrief = device.session->debrief().value();
    CHECK(debrief.isRehearsal);
    CHECK(debrief.tasks.size() == 1);
    CHECK(debrief.lessons.empty());
    CHECK(device.session->answerLesson("length/" + task.text(), true).error().why ==
          Refusal::Why::NotNow);
}

TEST_CASE("a second event with the same steps supports the figure") {
    Looked day(1.6);
    const EventId past = day.session->look()->event;
    const auto serve = event::parse(samples::orchard()).value().serve;
    REQUIRE(day.session->newDraft(
        {day.session->documentOf(past).value(), {}, {serve.at + 24h * 7, serve.offset}, {}}));
    day.clock.advance(24h * 7 - 1h);
    REQUIRE(day.session->planDraft());
    REQUIRE(day.session->start(day.task));
    day.clock.advance(20min);
    REQUIRE(day.session->finish(day.task));
    const auto debrief = day.session->debrief().value();
    CHECK(debrief.events == 2);
    CHECK(day.lesson(debrief).events == 2);
}

// Seconds are part of what is cooked: eaten up to the last planned portion, a dish was taken as
// planned.
TEST_CASE("a menu eaten exactly as it was planned teaches nothing") {
    const auto event = event::parse(samples::orchard()).value();
    const auto plan = app::planService(event, 1);
    live::ServiceDay day;
    day.counts = {{0, event.serve.at}, {plan.guests, event.serve.at + 15min}};
    day.last = event.serve.at + 16min;
    std::vector<learn::Appetite> appetites;
    for (const auto& pan : plan.pans) {
        live::PanDay& seen = day.pans[pan.dish];
        for (std::int32_t next = 2; next <= pan.plan.pans; ++next)
            seen.set[next] = event.serve.at + 1min * next;
        seen.levels[pan.plan.pans][event.serve.at + 20min] = 0;
        auto one = learn::appetiteOf(pan.dish, pan.plan, day, plan.guests);
        REQUIRE(one);
        one->name = pan.name;
        for (const event::Dish& dish : event.menu)
            if (dish.id == pan.dish) one->takePercent = dish.serving->takePercent.value();
        CAPTURE(pan.dish.text());
        // Guests who take it are whole, and so are portions: rounded up, five of the fewest.
        CHECK(one->taken / one->planned == Approx(1).margin(0.05));
        appetites.push_back(*one);
    }
    REQUIRE(appetites.size() >= 6);
    CHECK(std::any_of(plan.pans.begin(), plan.pans.end(),
                      [](const auto& pan) { return pan.plan.seconds >= 0.1; }));
    CHECK(learn::takesFor(event, {appetites, appetites, appetites}).empty());
}

TEST_CASE("without an event there is nothing to look back upon") {
    Device device(Instant{1'821'000'000'000ms});
    CHECK(device.session->debrief().error().why == Refusal::Why::NoEvent);
}
