#include <catch2/catch.hpp>

#include "lamb_day.h"

using namespace cinder;
using namespace std::chrono_literals;
using samples::Device;
using samples::kMorning;
using samples::LambDay;

TEST_CASE("a bed is ready when the last step of its fire is left out") {
    LambDay day;
    const TaskId spread{"spread"};
    for (const auto& asked : day.session->look()->food.beforeFire)
        REQUIRE(day.session->readyBeforeFire(asked.item));
    REQUIRE(day.session->finish(TaskId{"burn-in"}));
    REQUIRE(day.session->skip(spread));
    const auto seen = day.session->look();
    REQUIRE(seen->fire.grates.size() == 1);
    CHECK(seen->fire.grates[0].coal.isReady);
}

TEST_CASE("hand tests are kept over time, beside the coal for the day") {
    LambDay day;
    REQUIRE(day.session->testByHand(day.grate, 3s));
    day.wait(20min);
    REQUIRE(day.session->testByHand(day.grate, 5s));
    const auto coal = day.session->look()->fire.grates[0].coal;
    REQUIRE(coal.handTests.size() == 2);
    CHECK(coal.handTests[0].held == 3s);
    REQUIRE(coal.handTests[0].low);
    CHECK(coal.handTests[0].low->celsius() == Approx(190));
    REQUIRE(coal.need);
    CHECK(coal.need->bags >= 1);
    CHECK(coal.need->load >= coal.need->byDepth);
}

TEST_CASE("a fading fire is seen before it is weak, and a weak one at once") {
    LambDay day;
    day.readyBed();
    REQUIRE(day.session->testByHand(day.grate, 3s));
    const auto begun = day.coal();
    REQUIRE(begun.left);
    day.wait(20min);
    const auto believed = day.coal();
    CHECK(believed.left->likely == begun.left->likely - 20min);

    REQUIRE(day.session->testByHand(day.grate, 5s));
    const auto fading = day.coal();
    CHECK(fading.left->likely > 0min);
    CHECK(fading.left->likely < believed.left->likely);
    CHECK(fading.left->high < believed.left->high);
    REQUIRE(fading.topUpBy);
    CHECK(*fading.topUpBy < *believed.topUpBy);

    day.wait(1min);
    REQUIRE(day.session->testByHand(day.grate, 9s));
    CHECK(day.coal().left->likely == 0min);
    CHECK(day.coal().left->high == 0min);
}

TEST_CASE("a handful of coal is no new bed, and does not hide what the hand feels") {
    LambDay day;
    day.readyBed();
    REQUIRE(day.session->testByHand(day.grate, 3s));
    day.wait(20min);
    const auto before = day.coal();
    REQUIRE(day.session->addCoal(day.grate, Mass::fromGrams(100)));
    const auto fed = day.coal();
    CHECK(fed.left->likely >= before.left->likely);
    CHECK(fed.left->likely < before.left->likely + 2min);

    day.wait(10min);
    REQUIRE(day.session->testByHand(day.grate, 9s));
    CHECK(day.coal().left->likely == 0min);
    CHECK(*day.coal().topUpBy < day.session->now());

    // The coal of half a bed brings it back when it has burnt in.
    REQUIRE(day.session->undo());
    REQUIRE(day.session->addCoal(day.grate, day.coal().need->byDepth));
    CHECK(day.coal().left->likely > fed.left->likely);
}

TEST_CASE("a fire as it is wanted is not weak, however late it is felt first") {
    LambDay day;
    day.readyBed();
    day.wait(80min);
    CHECK(day.coal().left->likely == 0min);
    REQUIRE(day.session->testByHand(day.grate, 3s));
    CHECK(day.coal().left->likely > 0min);
}

TEST_CASE(
    "the coal for the day is for the fire that is wanted, however weak the one that was felt") {
    LambDay day;
    const auto need = [&] { return day.session->look()->fire.grates[0].coal.need.value(); };
    const auto before = need();
    REQUIRE(day.session->testByHand(day.grate, 9s));
    CHECK(need().byHeat.high == before.byHeat.high);
    CHECK(need().load == before.load);
}

TEST_CASE("the pack list and the fire board want the same fire") {
    Device day(kMorning);
    REQUIRE(day.session->importEvent(samples::orchard()));
    const auto card = day.session->look()->fire.grates[0];
    const auto* figure = quantity::findFigure(day.session->lists()->all, "coal/" + card.id.text());
    REQUIRE(card.coal.need);
    REQUIRE(figure);
    REQUIRE(figure->inputs.size() == 4);
    CHECK(figure->inputs[3].amount.value ==
          Approx(double(card.coal.need->byHeat.high.grams())).epsilon(0.001));
}
