#include <catch2/catch.hpp>

#include <set>

#include "kitchen_log.h"
#include "safety/cooked.h"

using namespace samples;

TEST_CASE("a local authority makes a limit stricter and the food is judged by it") {
    const auto limits = Limits::with(
        {"Orchard County Health", {{"hotHold", inFahrenheit(140)}, {"timeControl", Duration{2h}}}});
    REQUIRE(limits);

    CHECK_FALSE(limits->meets(Degree::HotHold, inFahrenheit(139.9)));
    CHECK(limits->meets(Degree::HotHold, inFahrenheit(140)));
    CHECK_FALSE(limits->meets(Degree::HotHold, inCelsius(59.9)));
    CHECK(limits->meets(Degree::HotHold, inCelsius(60)));
    CHECK(limits->length(Span::TimeControl) == Duration{2h});
    CHECK(limits->isLocal(Degree::HotHold));
    CHECK_FALSE(limits->isLocal(Degree::ColdHold));

    Log log;
    log.limits = *limits;
    log.leave(0min, TimeRule::Cold, inCelsius(4));
    CHECK(log.at(10min).time->discardAt == kEleven + 2h);
}

TEST_CASE(
    "a longer local time at the minimum has to be watched, and no other row takes its place") {
    // FDA Food Code 2022, 3-401.11(A)(2): 68 degC for 17 s, 70 degC for less than a second; (A)(1):
    // 63 degC for 15 s. The local times are invented.
    const auto limits = Limits::with(
        {"Orchard County", {{"cookGroundHold", Duration{60s}}, {"cookIntactHold", Duration{30s}}}});
    REQUIRE(limits);
    using event::Food;
    CHECK(cookedBy(Food::GroundMeat, *limits, inCelsius(68), 20s) == Cooked::No);
    CHECK(cookedBy(Food::GroundMeat, *limits, inCelsius(70), 20s) == Cooked::No);
    CHECK(cookedBy(Food::GroundMeat, *limits, inCelsius(63), 3min) == Cooked::No);
    CHECK(cookedBy(Food::GroundMeat, *limits, inCelsius(68), {}) == Cooked::No);
    CHECK(cookedBy(Food::GroundMeat, *limits, inCelsius(68), 60s) == Cooked::AtMinimum);
    CHECK(cookedBy(Food::WholeMeat, *limits, inCelsius(63), 20s) == Cooked::No);
    CHECK(cookedBy(Food::WholeMeat, *limits, inCelsius(60), 12min) == Cooked::No);

    const auto row = rowInReach(Food::GroundMeat, *limits, inFahrenheit(156));
    REQUIRE(row);
    CHECK(row->hold == Duration{60s});
    CHECK(row->fahrenheit == Approx(155));
    CHECK(cookedBy(Food::GroundMeat, Limits{}, inCelsius(68), 20s) == Cooked::AtMinimum);
}

TEST_CASE("the degrees the record judges by are those some reading, clock or stage is held to") {
    // The stages of cooling and the warmest of a time control belong to no single reading.
    std::set<Degree> used{Degree::CoolStart, Degree::CoolMiddle, Degree::CoolEnd,
                          Degree::TimeWarmest};
    using event::Food;
    for (const Food food : {Food::Poultry, Food::GroundMeat, Food::WholeMeat, Food::Plant})
        for (int purpose = 0; purpose <= static_cast<int>(Purpose::Cooling); ++purpose)
            for (const bool isRoast : {false, true})
                if (const auto degree = limitOf(static_cast<Purpose>(purpose), food, isRoast))
                    used.insert(*degree);
    for (int rule = 0; rule <= static_cast<int>(TimeRule::ColdLong); ++rule)
        used.insert(startOf(static_cast<TimeRule>(rule)));
    for (const DegreeLimit& limit : publishedDegrees()) {
        CAPTURE(limit.field);
        CHECK(isJudged(limit.degree) == (used.count(limit.degree) == 1));
    }
}

TEST_CASE("a shorter time the record judges by loses food sooner, whichever it is") {
    const auto with = [](const char* field, Duration length) {
        Log log;
        log.limits = Limits::with({"Office", {{field, length}}}).value();
        return log;
    };
    Log reheated = with("reheatWithin", 30min);
    reheated.measure(0min, Purpose::HoldCold, inCelsius(4));
    reheated.measure(40min, Purpose::Reheat, inCelsius(75));
    CHECK(isLostBy(reheated.at(41min), Lost::Why::OutOfControl));
    for (const auto& [field, length] :
         {std::pair{"coolMiddleWithin", 60min}, std::pair{"coolEndWithin", 90min}}) {
        Log cooled = with(field, length);
        cooled.measure(0min, Purpose::HoldHot, inCelsius(60));
        cooled.cool(1min);
        if (length > 60min) cooled.measure(50min, Purpose::Cooling, inCelsius(20));
        cooled.measure(95min, Purpose::Cooling, inCelsius(15));
        CHECK(isLostBy(cooled.at(96min), Lost::Why::CoolingSlow));
    }
    Log longTime = with("timeControlLong", 5h);
    longTime.leave(0min, TimeRule::ColdLong, inCelsius(4));
    CHECK(longTime.at(1min).time->discardAt == kEleven + 5h);
    Log unread = with("holdGap", 90min);
    unread.measure(0min, Purpose::HoldHot, inCelsius(60));
    CHECK(isLostBy(unread.at(91min), Lost::Why::Gap));
    for (const Span span : {Span::ReheatWithin, Span::CoolMiddleWithin, Span::CoolEndWithin,
                            Span::TimeControl, Span::TimeControlLong, Span::HoldGap,
                            Span::HoldEvery, Span::CookIntactHold, Span::CookGroundHold})
        CHECK(isJudged(span));
    for (const Span span : {Span::FirstHeating, Span::CoolAmbientWithin, Span::HandWash})
        CHECK_FALSE(isJudged(span));
}

TEST_CASE("the minimum in force says whose it is") {
    const Minimum published = minimumInForce(event::Food::GroundMeat, {});
    // FDA Food Code 2022, 3-401.11(A)(2).
    CHECK(published.temperature.celsius() == Approx(68));
    CHECK(published.hold == 17s);
    CHECK_FALSE(published.isLocal);
    CHECK(published.source == "FDA Food Code 2022, 3-401.11(A)(2)");

    // An invented authority.
    const auto warmer = Limits::with({"Office", {{"cookGround", inCelsius(71)}}}).value();
    const Minimum local = minimumInForce(event::Food::GroundMeat, warmer);
    CHECK(local.temperature.celsius() == Approx(71));
    CHECK(local.hold == 17s);
    CHECK(local.isLocal);
    CHECK(local.source == "Office; FDA Food Code 2022, 3-401.11(A)(2)");
    CHECK_FALSE(minimumInForce(event::Food::Poultry, warmer).isLocal);

    const auto longer = Limits::with({"Office", {{"cookGroundHold", Duration{30s}}}}).value();
    CHECK(minimumInForce(event::Food::GroundMeat, longer).isLocal);
    CHECK(minimumInForce(event::Food::GroundMeat, longer).hold == 30s);
}

TEST_CASE("no published limit can be made looser, on either scale") {
    for (const DegreeLimit& limit : publishedDegrees()) {
        const double off = limit.sense == Sense::AtLeast ? -0.1 : 0.1;
        for (const Reading& looser :
             {inCelsius(limit.celsius + off), inFahrenheit(limit.fahrenheit + off)}) {
            const auto made = Limits::with({"Office", {{std::string(limit.field), looser}}});
            REQUIRE_FALSE(made);
            CHECK(made.error().why == LimitFault::Why::Looser);
            CHECK(made.error().field == limit.field);
            CHECK(describe(made.error()).find(limit.field) == 0);
        }
        CHECK(Limits::with({"Office", {{std::string(limit.field), inCelsius(limit.celsius)}}}));
    }
    for (const SpanLimit& limit : publishedSpans()) {
        const Duration off{limit.sense == Sense::AtLeast ? -1 : 1};
        const auto made =
            Limits::with({"Office", {{std::string(limit.field), limit.length + off}}});
        REQUIRE_FALSE(made);
        CHECK(made.error().why == LimitFault::Why::Looser);
        CHECK(made.error().field == limit.field);
        CHECK(Limits::with({"Office", {{std::string(limit.field), limit.length}}}));
    }
}

TEST_CASE("what is no limit is named") {
    const auto fault = [](LocalRules rules) { return Limits::with(std::move(rules)).error(); };

    CHECK(fault({"", {}}).why == LimitFault::Why::NoAuthority);
    CHECK(fault({"Office", {{"sauceHold", inCelsius(60)}}}).why == LimitFault::Why::UnknownField);
    CHECK(fault({"Office", {{"hotHold", Duration{1h}}}}).why == LimitFault::Why::WrongKind);
    CHECK(fault({"Office", {{"timeControl", inCelsius(60)}}}).why == LimitFault::Why::WrongKind);
    CHECK(fault({"Office", {{"hotHold", inCelsius(400)}}}).why == LimitFault::Why::OutOfRange);
    CHECK(fault({"Office", {{"timeControl", Duration{0}}}}).why == LimitFault::Why::OutOfRange);
    CHECK(describe(fault({"Office", {{"hotHold", inCelsius(50)}}})) ==
          "hotHold: 50.0 degC is looser than the published limit; give 57.0 degC or more");
}

TEST_CASE("local rules on record that are looser are passed over") {
    Log log;
    log.add(LocalRulesNamed{{"Office", {{"hotHold", inCelsius(60)}}}, kEleven});
    log.add(LocalRulesNamed{{"Office", {{"hotHold", inCelsius(40)}}}, kEleven + 1min});

    const Limits limits = limitsIn(log.entries, kEleven + 2min);

    CHECK(limits.figure(Degree::HotHold, Scale::Celsius) == Temperature::fromCelsius(60));
    CHECK(limits.authority() == "Office");
}

TEST_CASE("each thing asked before the fire is answered or passed over, and both are on record") {
    Log log;
    log.add(FireItemReady{FireItem::Extinguisher, kEleven});
    log.add(FireItemSkipped{FireItem::Clearance, "hedge at two metres", kEleven});

    const auto answers = fireAnswers(log.entries, kEleven);

    REQUIRE(answers.size() == 3);
    CHECK(answers[0].ready);
    CHECK(answers[1].skipped);
    CHECK(answers[1].reason == "hedge at two metres");
    CHECK_FALSE(answers[2].isAnswered());
}
