#include <catch2/catch.hpp>

#include <algorithm>

#include "app/promise.h"
#include "demo_day.h"
#include "event/json.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

/// The orchard lunch, but the crew may only come so much later.
event::Event arrivingLater(Duration by) {
    auto event = event::parse(samples::orchard()).value();
    event.site.arrival->at += by;
    return event;
}

app::Promise reckoned(const event::Event& event) {
    plan::Search quick;
    quick.budget.schedules = 200;
    quick.budget.exactNodes = 0;
    auto promise = app::reckonPromise(event, quick);
    REQUIRE(promise);
    return *std::move(promise);
}

}  // namespace

TEST_CASE("a promise with time to spare needs no remedy") {
    const auto promise = reckoned(arrivingLater(0min));
    CHECK(promise.explanation.missing <= plan::HalfMinutes{0});
    CHECK(promise.explanation.remedies.empty());
}

TEST_CASE("more time is no remedy for a step that must be over so long after the arrival") {
    auto event = arrivingLater(0min);
    const auto unload = std::find_if(event.work.begin(), event.work.end(),
                                     [](const auto& step) { return step.id == StepId("unload"); });
    REQUIRE(unload != event.work.end());
    // It takes longer than that, and whatever time there is more comes before the arrival.
    unload->latestFinish =
        event::Moment{event::Moment::Anchor::Arrival, unload->duration.usual / 2};
    const auto promise = app::reckonPromise(event, {{200, std::nullopt}});
    REQUIRE(promise);
    REQUIRE_FALSE(promise->explanation.remedies.empty());
    for (const auto& remedy : promise->explanation.remedies) {
        using Kind = plan::Remedy::Kind;
        if (remedy.kind == Kind::EarlierArrival || remedy.kind == Kind::LaterServe)
            CHECK_FALSE(remedy.isEnough);
    }
}

TEST_CASE("a remedy that is not on the list is refused") {
    const auto refused = app::accepted(reckoned(arrivingLater(0min)), 0);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == app::Refusal::Why::NotNow);
}

TEST_CASE("each remedy said to be enough keeps the promise when it is accepted") {
    const auto promise = reckoned(arrivingLater(20min));
    REQUIRE(promise.explanation.missing > plan::HalfMinutes{0});
    REQUIRE_FALSE(promise.explanation.remedies.empty());
    int enough = 0;
    for (std::size_t i = 0; i < promise.explanation.remedies.size(); ++i) {
        if (!promise.explanation.remedies[i].isEnough) continue;
        const auto document = app::accepted(promise, i);
        if (!document) {
            // A change may be beyond what an event may hold; then it names the field.
            CHECK_FALSE(document.error().faults.empty());
            continue;
        }
        ++enough;
        CAPTURE(i, static_cast<int>(promise.explanation.remedies[i].kind));
        CHECK(reckoned(event::parse(*document).value()).explanation.missing <=
              plan::HalfMinutes{0});
    }
    CHECK(enough >= 2);
}

TEST_CASE("an event is described anew only while nothing has been done") {
    Device device(Instant{1'821'000'000'000ms});
    REQUIRE(device.session->importEvent(samples::orchard()));
    auto changed = *device.session->described();
    changed.serve.at += 15min;
    REQUIRE(device.session->redescribe(event::write(changed)));
    CHECK(device.session->described()->serve == changed.serve);
    CHECK(device.session->look()->serve == changed.serve.at);
    CHECK(device.session->sheet()->bell == changed.serve.at);

    auto other = changed;
    other.id = EventId("another");
    const auto mistaken = device.session->redescribe(event::write(other));
    REQUIRE_FALSE(mistaken);
    CHECK(mistaken.error().why == Refusal::Why::NotNow);
    const auto broken = device.session->redescribe("{");
    REQUIRE_FALSE(broken);
    CHECK(broken.error().why == Refusal::Why::BadEvent);

    REQUIRE(device.session->start(TaskId{"unload"}));
    const auto late = device.session->redescribe(event::write(changed));
    REQUIRE_FALSE(late);
    CHECK(late.error().why == Refusal::Why::HasBegun);
}

TEST_CASE("an event whose crew comes too late opens, says how late, and takes a remedy") {
    const auto late = arrivingLater(20min);
    Device device(late.site.arrival->at - 30min);
    REQUIRE(device.session->importEvent(event::write(late)));
    CHECK(device.session->look()->lateness > 5min);
    CHECK(device.session->look()->arrival == late.site.arrival->at);

    const auto promise = reckoned(*device.session->described());
    const auto& remedies = promise.explanation.remedies;
    const auto earlier = std::find_if(remedies.begin(), remedies.end(), [](const auto& remedy) {
        return remedy.kind == plan::Remedy::Kind::EarlierArrival;
    });
    REQUIRE(earlier != remedies.end());
    const auto document =
        app::accepted(promise, static_cast<std::size_t>(earlier - remedies.begin()));
    REQUIRE(document);
    REQUIRE(device.session->redescribe(*document));
    CHECK(device.session->look()->lateness <= 0min);
}
