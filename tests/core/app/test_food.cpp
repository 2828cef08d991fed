#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "event/json.h"
#include "food_day.h"

using namespace cinder;
using namespace std::chrono_literals;
using namespace samples;
using app::Refusal;

TEST_CASE("every dish that needs a record has its checks from arrival to strike") {
    FoodDay day;
    const auto food = day.session->look()->food;

    std::vector<std::string> dishes;
    for (const auto& card : food.pans)
        dishes.push_back(card.pan.dish.text());
    CHECK(dishes == std::vector<std::string>{"slaw", "potatoes", "stew", "halloumi", "chicken",
                                             "lamb", "herb-sauce", "tomato-sauce"});
    for (const std::string& dish : dishes) {
        CAPTURE(dish);
        for (const char* occasion : {"arrival", "before-service", "strike"})
            CHECK(std::any_of(food.checks.begin(), food.checks.end(), [&](const auto& check) {
                return check.name == occasion + (":" + dish) + ":1" && !check.isDone;
            }));
    }
    const auto isLamb = [](const auto& check) { return check.name == "cooked:lamb:1"; };
    const auto cooked = std::find_if(food.checks.begin(), food.checks.end(), isLamb);
    REQUIRE(cooked != food.checks.end());
    CHECK(cooked->purpose == safety::Purpose::Cook);
    CHECK(std::is_sorted(food.checks.begin(), food.checks.end(),
                         [](const auto& a, const auto& b) { return a.due < b.due; }));
}

TEST_CASE("a step that asks for its temperature is asked after by the record, fresh food too") {
    auto event = event::parse(samples::orchard()).value();
    for (event::Dish& dish : event.menu)
        if (dish.id.text() == "flatbread") dish.method.front().checkEvery = 10min;
    Device day(kMorning);
    REQUIRE(day.session->importEvent(event::write(event)));
    const auto food = day.session->look()->food;
    const auto check = [&](const std::string& name) -> std::optional<safety::PlannedCheck> {
        for (const auto& one : food.checks)
            if (one.name == name) return one;
        return std::nullopt;
    };
    // Its step asks every 15 min; the record by itself every hour at most.
    REQUIRE(check("during-service:chicken:1"));
    CHECK(check("during-service:chicken:1")->due == event.serve.at + 15min);
    // Bread comes as it is: nothing to measure before it is warm, and nothing lost without it.
    CHECK_FALSE(check("arrival:flatbread:1"));
    REQUIRE(check("cooked:flatbread:1"));
    REQUIRE(check("during-service:flatbread:1"));
    CHECK(check("during-service:flatbread:1")->due == event.serve.at + 10min);
    for (const auto& one : food.checks)
        if (one.dish == DishId{"flatbread"}) CHECK(one.due >= check("cooked:flatbread:1")->due);
    day.clock.advance(event.serve.at - day.clock.wall());
    const auto atBell = day.session->look()->food.pans;
    const auto bread = std::find_if(atBell.begin(), atBell.end(), [](const auto& card) {
        return card.pan.dish == DishId{"flatbread"};
    });
    REQUIRE(bread != atBell.end());
    CHECK(bread->nextPurpose == safety::Purpose::Reheat);
    CHECK_FALSE(bread->standing.lost);
}

TEST_CASE("a reading answers its check, survives the battery and can be kept by") {
    FoodDay day;
    const EventId event = day.session->look()->event;
    REQUIRE(day.session->measureFood(kSlaw, safety::Purpose::ArriveCold, safety::inFahrenheit(39),
                                     kProbe));
    day.restart();
    REQUIRE(day.session->open(event));

    CHECK(day.pan(kSlaw).standing.control == safety::Control::Cold);
    CHECK(day.pan(kSlaw).standing.leftover == safety::Leftover::Keep);
    const auto checks = day.session->look()->food.checks;
    const auto arrival = std::find_if(checks.begin(), checks.end(), [](const auto& check) {
        return check.name == "arrival:slaw:1";
    });
    REQUIRE(arrival != checks.end());
    CHECK(arrival->isDone);
    CHECK(day.session->keepFood(kSlaw));
    CHECK_FALSE(day.session->keepFood(kStew));
}

TEST_CASE("a reading out of limit asks for an allowed action before the record can be signed") {
    FoodDay day;
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(50), kProbe));
    const auto open = day.pan(kStew).standing.open;
    REQUIRE(open.size() == 1);
    CHECK(day.session->look()->food.withoutAction == 1);

    const auto refused = day.session->signRecord("Ines", "");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().why == Refusal::Why::NotNow);

    CHECK_FALSE(day.session->takeAction(open[0].entry, safety::Action::Chill));
    CHECK(day.session->takeAction(open[0].entry, safety::Action::Discard));
    CHECK(day.session->look()->food.withoutAction == 0);
    CHECK(day.pan(kStew).standing.control == safety::Control::Discarded);
}

TEST_CASE("the clock of time control starts once and survives an undo that comes too late") {
    FoodDay day;
    REQUIRE(day.session->leaveControl(kSlaw, safety::TimeRule::Cold, safety::inCelsius(4), kProbe));
    const auto started = day.pan(kSlaw).standing.time;
    REQUIRE(started);
    day.wait(1h);

    CHECK_FALSE(
        day.session->leaveControl(kSlaw, safety::TimeRule::Cold, safety::inCelsius(4), kProbe));
    CHECK_FALSE(day.session->undo());
    CHECK(day.pan(kSlaw).standing.time == started);
    day.wait(3h);
    CHECK_FALSE(day.pan(kSlaw).standing.mayServe);
    CHECK(day.session->look()->food.toDiscard >= 1);
}

TEST_CASE("what must be discarded is no longer asked to be measured") {
    FoodDay day;
    const auto isAsked = [&] {
        const auto& checks = day.session->look()->food.checks;
        return std::any_of(checks.begin(), checks.end(), [](const safety::PlannedCheck& check) {
            return check.dish == kSlaw.dish && !check.isDone;
        });
    };
    REQUIRE(isAsked());
    REQUIRE(day.session->discardFood(kSlaw));
    CHECK_FALSE(isAsked());
}

TEST_CASE("raw meat stays raw on the record when its cooking is left out of the plan") {
    FoodDay day;
    const safety::Pan lamb{DishId{"lamb"}, 1};
    const auto toServe = [&] { return day.pan(lamb).standing.mayServe; };
    int skipped = 0;
    const auto before = day.session->look();
    for (const auto& card : before->tasks)
        if (card.id.text().find("lamb/") == 0 && card.kind == plan::TaskKind::Cook) {
            REQUIRE(day.session->skip(card.id));
            ++skipped;
        }
    REQUIRE(skipped > 0);
    REQUIRE(
        day.session->measureFood(lamb, safety::Purpose::ArriveCold, safety::inCelsius(3), kProbe));
    CHECK_FALSE(toServe());
    // FDA Food Code 2022, 3-401.11(A)(1): whole meat, 63 degC for 15 s.
    REQUIRE(day.session->measureFood(lamb, safety::Purpose::Cook, safety::inCelsius(63), kProbe));
    CHECK(toServe());
}

TEST_CASE("hot food is checked as often when its holding is left out of the plan") {
    FoodDay day;
    const auto holding = [&] {
        const auto seen = day.session->look();
        std::vector<Instant> dues;
        for (const auto& check : seen->food.checks)
            if (check.dish == DishId{"chicken"} && check.occasion == safety::Occasion::Hold)
                dues.push_back(check.due);
        return dues;
    };
    const auto skip = [&](plan::TaskKind kind) {
        const auto before = day.session->look();
        for (const auto& card : before->tasks)
            if (card.id.text().find("chicken/") == 0 && card.kind == kind)
                REQUIRE(day.session->skip(card.id));
    };
    const auto asPlanned = holding();
    skip(plan::TaskKind::Hold);
    CHECK(holding() == asPlanned);
    // What is never put on the fire is held as it came.
    skip(plan::TaskKind::Cook);
    CHECK(holding().size() < asPlanned.size());
}

TEST_CASE("fresh leaves control only what was neither kept cold nor is meat, fish or egg") {
    FoodDay day;
    const auto leave = [&](const char* dish) {
        return day.session->leaveControl({DishId{dish}, 0}, safety::TimeRule::Fresh,
                                         safety::inCelsius(20), kProbe);
    };
    CHECK_FALSE(leave("chicken"));
    REQUIRE(
        day.session->measureFood(kSlaw, safety::Purpose::ArriveCold, safety::inCelsius(4), kProbe));
    CHECK_FALSE(leave("slaw"));
    CHECK(leave("tomato-sauce"));
}

TEST_CASE("what was thrown away stays so when the clock comes back earlier than it was") {
    FoodDay day;
    const EventId event = day.session->look()->event;
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(70), kProbe));
    REQUIRE(day.pan(kStew).standing.mayServe);
    day.wait(30min);
    REQUIRE(day.session->discardFood(kStew));
    const Instant discarded = day.clock.wall();

    for (const Instant wrong : {discarded - 15min, Instant{}}) {
        CAPTURE(wrong.time_since_epoch().count());
        day.clock.setWall(wrong);
        day.restart();
        REQUIRE(day.session->open(event));

        CHECK(day.session->now() == discarded);
        CHECK(day.pan(kStew).standing.control == safety::Control::Discarded);
        CHECK_FALSE(day.pan(kStew).standing.mayServe);
        CHECK(day.session->look()->undo);
    }
}

TEST_CASE("a slip of the finger is taken back at once and stays to be seen") {
    FoodDay day;
    REQUIRE(day.session->measureFood(kSlaw, safety::Purpose::ArriveCold, safety::inCelsius(40),
                                     kProbe));
    REQUIRE(day.session->look()->undo);
    CHECK(day.session->look()->undo->what == app::UndoOffer::What::Record);
    REQUIRE(day.session->undo());

    CHECK(day.pan(kSlaw).standing.open.empty());
}

TEST_CASE("what is asked before the fire is answered, or passed over with a reason, on record") {
    FoodDay day;
    REQUIRE(day.session->readyBeforeFire(safety::FireItem::Extinguisher));
    REQUIRE(day.session->skipBeforeFire(safety::FireItem::Clearance, "the hedge is wet"));

    const auto before = day.session->look()->food.beforeFire;
    REQUIRE(before.size() == 3);
    CHECK(before[0].ready);
    CHECK_FALSE(before[0].skipped);
    CHECK(before[1].skipped);
    CHECK_FALSE(before[2].isAnswered());
}

TEST_CASE("no fire is lit or called ready before its three questions are answered or skipped") {
    FoodDay day;
    const auto tasks = day.session->look()->tasks;
    const auto light = std::find_if(tasks.begin(), tasks.end(), [](const auto& card) {
        return card.kind == plan::TaskKind::Fire;
    });
    REQUIRE(light != tasks.end());
    REQUIRE_FALSE(light->checklist.empty());
    const auto isRefused = [&] {
        for (const auto& taken : {day.session->start(light->id), day.session->finish(light->id),
                                  day.session->tick(light->id, 0)})
            if (taken || taken.error().why != Refusal::Why::AskFirst) return false;
        return true;
    };
    CHECK(isRefused());
    CHECK(app::describe(day.session->start(light->id).error()).find("extinguisher") !=
          std::string::npos);
    REQUIRE(day.session->readyBeforeFire(safety::FireItem::Extinguisher));
    REQUIRE(day.session->readyBeforeFire(safety::FireItem::Clearance));
    CHECK(isRefused());
    REQUIRE(day.session->skipBeforeFire(safety::FireItem::OpenAir, {}));

    CHECK(day.session->start(light->id));
    CHECK(day.session->look()->food.beforeFire[2].skipped);
    const auto broken = day.session->verify();
    REQUIRE(broken);
    CHECK_FALSE(broken->has_value());
}

TEST_CASE("checks that are due call together, once, and fewer when some are answered") {
    FoodDay day;
    const auto calls = [&] {
        std::vector<live::Timer> ringing;
        for (const auto& timer : day.session->look()->timers)
            if (timer.dish && timer.isRinging(day.session->now())) ringing.push_back(timer);
        return ringing;
    };
    auto ringing = calls();
    REQUIRE(ringing.size() == 1);
    CHECK(ringing[0].name.find("food:arrival:") == 0);
    CHECK(ringing[0].count == 8);
    REQUIRE(day.session->measureFood(kSlaw, safety::Purpose::ArriveCold, safety::inFahrenheit(39),
                                     kProbe));
    ringing = calls();
    REQUIRE(ringing.size() == 1);
    CHECK(ringing[0].count == 7);
    REQUIRE(day.session->acknowledge(ringing[0].name));
    CHECK(calls().empty());
}

TEST_CASE("serving that goes on longer than planned calls once for the last readings") {
    FoodDay day;
    const auto sheet = *day.session->sheet();
    Instant end = sheet.bell;
    std::vector<TaskId> serving;
    for (std::size_t i = 0; i < sheet.problem.tasks.size(); ++i)
        if (sheet.problem.tasks[i].kind == plan::TaskKind::Serve) {
            serving.push_back(sheet.problem.tasks[i].id);
            end = std::max(end, sheet.bell + sheet.schedule.tasks[i].finish);
        }
    day.clock.advance(sheet.bell - day.clock.wall());
    for (const TaskId& task : serving)
        REQUIRE(day.session->start(task));
    const auto ringing = [&] {
        std::set<std::string> names;
        for (const auto& timer : day.session->look()->timers)
            if (timer.name.find("food:strike:") == 0 && timer.isRinging(day.session->now()))
                names.insert(timer.name);
        return names;
    };
    day.clock.advance(end + 10min - day.clock.wall());
    const auto called = ringing();
    REQUIRE(called.size() == 1);
    day.clock.advance(5s);
    CHECK(ringing() == called);
    REQUIRE(day.session->acknowledge(*called.begin()));
    day.clock.advance(10min);
    CHECK(ringing().empty());
}

TEST_CASE("a reading that was corrected warns as if it had been right at once") {
    FoodDay day;
    FoodDay right;
    const auto hold = [&](FoodDay& of, double degrees) {
        REQUIRE(of.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(degrees),
                                        kProbe));
    };
    hold(day, 86);
    hold(right, 68);
    day.wait(5min);
    right.wait(5min);
    REQUIRE(day.session->correctFood(day.session->look()->food.entries.back().id,
                                     safety::inCelsius(68), "typed wrong"));
    CHECK(day.session->look()->food.warnings == right.session->look()->food.warnings);
}

TEST_CASE("a second pan nobody reads is named by its check and calls again before it is lost") {
    FoodDay day;
    const safety::Pan second{kStew.dish, 2};
    const auto read = [&](const safety::Pan& pan) {
        REQUIRE(
            day.session->measureFood(pan, safety::Purpose::HoldHot, safety::inCelsius(70), kProbe));
    };
    const auto calls = [&](const std::string& stem) {
        std::vector<live::Timer> ringing;
        for (const auto& timer : day.session->look()->timers)
            if (timer.dish == kStew.dish && timer.name.find(stem) == 0 &&
                timer.isRinging(day.session->now()))
                ringing.push_back(timer);
        return ringing;
    };
    day.wait(1min);
    read(kStew);
    read(second);
    const Instant started = day.clock.wall();
    while (calls("food:hold:").empty() && day.clock.wall() < started + 90min)
        day.wait(1min);
    REQUIRE(calls("food:hold:").size() == 1);
    CHECK_FALSE(calls("food:hold:")[0].pan);
    read(kStew);
    REQUIRE(calls("food:hold:").size() == 1);
    CHECK(calls("food:hold:")[0].pan == 2);

    // Silenced and not read: USDA FSIS, 2-hour rule, less our 20 min.
    REQUIRE(day.session->acknowledge(calls("food:hold:")[0].name));
    day.clock.advance(started + 99min - day.clock.wall());
    CHECK(calls("food:last:").empty());
    day.wait(1min);
    REQUIRE(calls("food:last:").size() == 1);
    CHECK(calls("food:last:")[0].pan == 2);
    CHECK_FALSE(day.pan(second).standing.lost);
    read(second);
    CHECK(calls("food:last:").empty());
}

TEST_CASE("the end of time control calls for the discard, and cooling food is asked after") {
    FoodDay day;
    REQUIRE(day.session->leaveControl(kSlaw, safety::TimeRule::Cold, safety::inCelsius(4), kProbe));
    const auto timer = [&](const std::string& stem) -> std::optional<live::Timer> {
        for (const auto& one : day.session->look()->timers)
            if (one.name.find(stem) == 0) return one;
        return std::nullopt;
    };
    const auto discard = timer("discard:slaw#0");
    REQUIRE(discard);
    CHECK(discard->occasion == live::TimerOccasion::Discard);
    // FDA Food Code 2022, 3-501.19(B): four hours.
    CHECK(discard->due == day.clock.wall() + 4h);

    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(70), kProbe));
    REQUIRE(day.session->beginCooling(kStew, safety::CoolingRoute::Cooked));
    const auto first = timer("cool:stew#1:");
    REQUIRE(first);
    CHECK(first->due == day.clock.wall() + 30min);
    day.wait(30min);
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::Cooling, safety::inCelsius(40), kProbe));
    const auto second = timer("cool:stew#1:");
    REQUIRE(second);
    CHECK(second->name != first->name);
    day.wait(60min);
    // At or below 41 degF (5 degC) it is cold, 3-501.14(A)(2): nothing more is asked.
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::Cooling, safety::inCelsius(5), kProbe));
    CHECK_FALSE(timer("cool:stew#1:"));
}

TEST_CASE("a looser local rule is refused with its field named") {
    FoodDay day;
    const auto refused =
        day.session->nameLocalRules({"Orchard County", {{"hotHold", safety::inCelsius(50)}}});

    REQUIRE_FALSE(refused);
    CHECK(refused.error().detail.find("hotHold") == 0);
    CHECK(day.session->nameLocalRules({"Orchard County", {{"hotHold", safety::inCelsius(60)}}}));
    CHECK(day.session->look()->food.limits.authority() == "Orchard County");
}

TEST_CASE("an event made from another takes its stricter local limits along") {
    FoodDay day;
    const EventId past = day.session->look()->event;
    REQUIRE(day.session->nameLocalRules({"Orchard County", {{"hotHold", safety::inCelsius(60)}}}));
    app::NewEvent wanted{
        day.session->documentOf(past).value(), {}, {day.clock.wall() + 24h, UtcOffset{}}, {}, past};
    REQUIRE(day.session->newDraft(wanted));
    CHECK(day.session->limits().isLocal(safety::Degree::HotHold));
    REQUIRE(day.session->planDraft());
    const auto& limits = day.session->look()->food.limits;
    CHECK(limits.authority() == "Orchard County");
    CHECK(limits.isLocal(safety::Degree::HotHold));

    wanted.from.reset();
    wanted.serve.at += 24h;
    REQUIRE(day.session->newDraft(wanted));
    REQUIRE(day.session->planDraft());
    CHECK(day.session->look()->food.limits.authority().empty());
}

TEST_CASE("a pan that will soon fall to its limit is warned of, and that is no measurement") {
    FoodDay day;
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::ArriveHot, safety::inCelsius(66), kProbe));
    day.wait(30min);
    REQUIRE(
        day.session->measureFood(kStew, safety::Purpose::HoldHot, safety::inCelsius(60), kProbe));

    const auto food = day.session->look()->food;
    REQUIRE(food.warnings.size() == 1);
    CHECK(food.warnings[0].pan == kStew);
    CHECK(food.warnings[0].limit == Temperature::fromCelsius(57));
    CHECK(food.warnings[0].basedOn == day.clock.wall());
    const auto in = [&](Instant at) {
        return std::chrono::duration<double, std::ratio<60>>(at - day.clock.wall()).count();
    };
    // Newton cooling in air of 22 degC: from 66 to 60 in 30 min is tau = 30/ln(44/38) = 204.6 min,
    // so 60 to 57 takes 204.6*ln(38/35) = 16.8 min; the prior on a covered pan draws it shorter.
    CHECK(in(food.warnings[0].fallsTo.likely) > 5);
    CHECK(in(food.warnings[0].fallsTo.likely) < 17);
    CHECK(day.pan(kStew).standing.mayServe);
}
