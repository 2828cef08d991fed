#include <catch2/catch.hpp>

#include <algorithm>

#include "demo_day.h"
#include "event/json.h"
#include "event/menu.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using journal::Packed;
using samples::Device;

namespace {

constexpr Instant kMorning{1'821'000'000'000ms};

/// The orchard, days before it.
struct Office : Device {
    Office() : Device(kMorning) { event = session->importEvent(samples::orchard()).value(); }
    [[nodiscard]] double figure(const char* key) {
        const auto lists = session->lists();
        const auto* found = quantity::findFigure(lists->all, key);
        REQUIRE(found != nullptr);
        return found->amount.value;
    }
    [[nodiscard]] app::PackCard row(const char* key) {
        for (const auto& card : session->lists()->pack)
            if (card.key == key) return card;
        FAIL("no row " << key);
        return {};
    }
    void killAndOpen() {
        restart();
        REQUIRE(session->open(event));
    }
    EventId event;
};

Refusal whyNot(const Result<void, Refusal>& taken) {
    REQUIRE_FALSE(taken);
    return taken.error();
}

}  // namespace

TEST_CASE("an own value takes the place of a figure, with what follows, and can be taken back") {
    Office day;
    const double portions = day.figure("dish/slaw/portions");
    const double weight = day.figure("dish/slaw/weight");
    REQUIRE(day.session->setFigure("dish/slaw/portions", portions * 2, "they love it"));

    CHECK(day.figure("dish/slaw/portions") == portions * 2);
    CHECK(day.figure("dish/slaw/weight") > 1.9 * weight);
    const auto lists = day.session->lists();
    const auto* figure = quantity::findFigure(lists->all, "dish/slaw/portions");
    CHECK(figure->isOverridden());
    CHECK(figure->reckoned == portions);
    CHECK(figure->note == "they love it");
    CHECK(day.session->look()->undo->what == app::UndoOffer::What::Figure);

    REQUIRE(day.session->undo());
    CHECK(day.figure("dish/slaw/portions") == portions);
}

TEST_CASE("an own value outlives the battery, and the app's own comes back when asked for") {
    Office day;
    const double ice = day.figure("supply/ice");
    REQUIRE(day.session->setFigure("supply/ice", ice + 4000));
    REQUIRE(day.session->setFigure("supply/ice", ice + 9000));
    day.killAndOpen();
    CHECK(day.figure("supply/ice") == ice + 9000);
    CHECK(day.session->described()->quantities->overrides.size() == 1);

    REQUIRE(day.session->clearFigure("supply/ice"));
    CHECK(day.figure("supply/ice") == ice);
    CHECK(whyNot(day.session->clearFigure("supply/ice")).why == Refusal::Why::NotNow);
}

TEST_CASE("an event written out with its own values and revised again holds each once") {
    Office day;
    REQUIRE(day.session->setFigure("supply/ice", 30'000));
    REQUIRE(day.session->redescribe(event::write(*day.session->described())));
    REQUIRE(day.session->setFigure("supply/ice", 31'000));

    CHECK(day.session->described()->quantities->overrides.size() == 1);
    CHECK(day.figure("supply/ice") == 31'000);
}

TEST_CASE("a figure that is not one, or cannot be, is refused beside its field") {
    Office day;
    const auto before = day.store->read(day.event)->size();
    CHECK(whyNot(day.session->setFigure("dish/soup/portions", 4)).why == Refusal::Why::UnknownTask);
    for (const double value : {-1.0, 2e9, std::nan("")})
        CHECK(whyNot(day.session->setFigure("supply/plates", value)).faults.front().path ==
              "/value");
    CHECK(whyNot(day.session->setFigure("supply/plates", 2.5)).faults.front().allowed ==
          "whole numbers");
    CHECK(day.store->read(day.event)->size() == before);
}

TEST_CASE("every figure may be nothing, and the reckoning still says what it can") {
    Office day;
    const auto lists = day.session->lists();
    std::vector<std::string> keys;
    for (const auto& dish : lists->all.dishes)
        for (const auto* figure : {&dish.portions, &dish.weight, &dish.vessels, &dish.onLine})
            if (*figure) keys.push_back((*figure)->key);
    for (const auto& figure : lists->all.supplies)
        keys.push_back(figure.key);
    REQUIRE(keys.size() > 30);
    for (const std::string& key : keys) {
        CAPTURE(key);
        REQUIRE(day.session->setFigure(key, 0));
        CHECK(day.figure(key.c_str()) == 0);
        REQUIRE(day.session->clearFigure(key));
    }
    CHECK(day.session->lists()->all.faults == lists->all.faults);
}

TEST_CASE("other guests change what is reckoned; asking what if changes nothing") {
    Office day;
    const double plates = day.figure("supply/plates");
    const auto before = day.store->read(day.event)->size();
    const auto more = day.session->listsFor(150, 10);
    REQUIRE(more);
    CHECK(quantity::findFigure((*more)->all, "supply/plates")->amount.value > plates);
    CHECK(day.figure("supply/plates") == plates);
    CHECK(day.store->read(day.event)->size() == before);

    REQUIRE(day.session->setGuests(150, 10));
    CHECK(day.figure("supply/plates") ==
          quantity::findFigure((*more)->all, "supply/plates")->amount.value);
    day.killAndOpen();
    CHECK(event::headCount(day.session->described()->guests) == 160);
}

TEST_CASE("guests and the plan made for them are taken back in one touch") {
    Office day;
    const auto before = *day.session->sheet();
    REQUIRE(day.session->setGuests(150, 10));
    REQUIRE(day.session->undo());
    CHECK(event::headCount(day.session->described()->guests) == 96);
    CHECK(*day.session->sheet() == before);
}

TEST_CASE("no allergy is forgotten because fewer, and then more, are to come") {
    Office day;
    const auto described = day.session->described()->guests;
    REQUIRE_FALSE(described.allergens.empty());
    REQUIRE(day.session->setGuests(1, 0));
    for (const auto& one : day.session->described()->guests.allergens)
        CHECK(one.count == 1);
    REQUIRE(day.session->setGuests(described.adults, described.children));
    CHECK(day.session->described()->guests == described);
}

TEST_CASE("nobody, or more than can be, are no guests") {
    Office day;
    CHECK(whyNot(day.session->setGuests(0, 0)).faults.front().path == "/guests/adults");
    CHECK(whyNot(day.session->setGuests(5001, 0)).faults.front().allowed == "1..5000");
    CHECK(whyNot(day.session->setGuests(3, -1)).faults.front().path == "/guests/children");
    CHECK_FALSE(day.session->listsFor(0, 0));
}

TEST_CASE("the set-up list is the line as it was rearranged") {
    Office day;
    const auto before = day.session->look()->line;
    REQUIRE(before.size() > 4);
    REQUIRE(day.session->pack(before.front().key, Packed::Where::Line, 1));
    REQUIRE(day.session->pack(before.back().key, Packed::Where::Line, 1));
    CHECK(day.session->look()->line.front().isPlaced);

    std::vector<DishId> order;
    for (const auto& card : before)
        if (std::find(order.begin(), order.end(), card.dish) == order.end())
            order.push_back(card.dish);
    std::swap(order[0], order[1]);
    REQUIRE(day.session->orderLine(order));

    const auto after = day.session->look()->line;
    CHECK(after.front().dish == order.front());
    CHECK(after.front().dish == before[1].dish);
    // What moved has to be put in its new place; what did not still stands.
    for (const auto& card : after)
        CHECK(card.isPlaced == (card.key == before.back().key));
    CHECK(whyNot(day.session->orderLine({DishId{"soup"}})).why == Refusal::Why::UnknownTask);

    REQUIRE(day.session->undo());
    CHECK(day.session->look()->line.front().isPlaced);
}

TEST_CASE("what went out and did not come home is missing by name") {
    Office day;
    const auto lists = day.session->lists();
    const auto chafers = std::find_if(lists->pack.begin(), lists->pack.end(), [](const auto& card) {
        return card.comesBack && card.wanted >= 3;
    });
    REQUIRE(chafers != lists->pack.end());
    const char* key = chafers->key.c_str();
    REQUIRE(day.session->pack(key, Packed::Where::Out, chafers->wanted));
    CHECK(day.row(key).missing == chafers->wanted);
    REQUIRE(day.session->pack(key, Packed::Where::Home, chafers->wanted - 1));
    CHECK(day.row(key).missing == 1);
    day.killAndOpen();
    CHECK(day.row(key).out == chafers->wanted);
    REQUIRE(day.session->pack(key, Packed::Where::Home, chafers->wanted));
    CHECK(day.row(key).missing == 0);

    CHECK(whyNot(day.session->pack("pack/piano", Packed::Where::Out, 1)).why ==
          Refusal::Why::UnknownTask);
    CHECK(whyNot(day.session->pack(key, Packed::Where::Out, -1)).faults.front().path == "/count");
    CHECK(whyNot(day.session->pack("pack/supply/ice", Packed::Where::Home, 1)).why ==
          Refusal::Why::NotNow);
}

TEST_CASE("when the bell moves, the van and the kitchen follow") {
    Office day;
    const auto before = day.session->lists();
    REQUIRE(day.session->moveServe(before->event.serve.at + 30min));
    const auto after = day.session->lists();
    CHECK(after->all.kitchen.front().finishBy == before->all.kitchen.front().finishBy + 30min);
}
