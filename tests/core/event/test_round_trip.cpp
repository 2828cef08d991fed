#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "documents.h"
#include "event/json.h"

using namespace cinder;
using Json = nlohmann::ordered_json;

namespace {

/// Adds a member nobody knows to every object whose members are fixed by the format.
void addStrangers(Json& value) {
    if (value.is_array())
        for (auto& entry : value)
            addStrangers(entry);
    if (!value.is_object()) return;
    const bool isText = value.contains("en");
    for (auto& [name, member] : value.items())
        addStrangers(member);
    if (!isText) value["zz-later"] = Json{{"kept", {1, 2.5, "three", nullptr, true}}};
}

}  // namespace

TEST_CASE("A document with every member once comes back word for word") {
    const auto text = Json::parse(test::everyMember());
    const auto event = event::parse(test::everyMember());
    REQUIRE(event.has_value());
    CHECK(Json::parse(event::write(*event)) == text);
    CHECK(event::parse(event::write(*event)) == event);
}

TEST_CASE("Members this version does not know survive a round trip at every level") {
    auto document = Json::parse(test::everyMember());
    addStrangers(document);
    const auto event = event::parse(document.dump());
    REQUIRE(event.has_value());
    CHECK(Json::parse(event::write(*event)) == document);
}

TEST_CASE("Times keep their offset and their milliseconds") {
    const auto event = event::parse(test::everyMember());
    REQUIRE(event.has_value());
    CHECK(formatRfc3339(event->serve) == "2027-05-01T12:00:00.500+02:00");
    REQUIRE(event->site.arrival);
    CHECK(event->serve.at - event->site.arrival->at == std::chrono::hours{2} + Duration{500});
}

TEST_CASE("A name comes in the language asked for") {
    const auto event = event::parse(test::everyMember());
    REQUIRE(event.has_value());
    CHECK(event->site.name.in("es-MX") == "Patio");
    CHECK(event->name.in("es-MX") == "Every member once");
}

TEST_CASE("A document of a newer version opens read-only") {
    const auto newer = test::replaced(test::everyMember(), "\"version\": 1", "\"version\": 2");
    const auto event = event::parse(newer);
    REQUIRE(event.has_value());
    CHECK(event->isReadOnly());
    CHECK_FALSE(event::parse(test::everyMember())->isReadOnly());
    CHECK(event::parse(event::write(*event))->version == 2);
}

TEST_CASE("The demo files are written as the app itself writes them") {
    for (const auto& file : test::demoFiles()) {
        INFO(file);
        const auto text = test::sourceText(file);
        const auto event = event::parse(text);
        REQUIRE(event.has_value());
        CHECK(event::write(*event) == text);
    }
}

TEST_CASE("Every name in the demo files is there in English and in Spanish") {
    for (const auto& file : test::demoFiles()) {
        const auto event = event::parse(test::sourceText(file));
        REQUIRE(event.has_value());
        const auto check = [&](const LocalText& text) {
            INFO(file << ": " << text.in("en"));
            CHECK(text.byLanguage().contains("en"));
            CHECK(text.byLanguage().contains("es"));
        };
        const auto checkStep = [&](const event::Step& step) {
            check(step.name);
            for (const auto& line : step.checklist)
                check(line);
        };
        check(event->name);
        check(event->site.name);
        for (const auto& station : event->site.stations)
            check(station.name);
        for (const auto& skill : event->skills)
            check(skill.name);
        for (const auto& grate : event->kit.grates)
            check(grate.name);
        for (const auto& equipment : event->kit.equipment)
            check(equipment.name);
        for (const auto& table : event->kit.tables)
            check(table.name);
        for (const auto& dish : event->menu) {
            check(dish.name);
            for (const auto& step : dish.method)
                checkStep(step);
        }
        for (const auto& step : event->work)
            checkStep(step);
    }
}

TEST_CASE("Pieces are counted by guest and rounded up") {
    event::Guests guests;
    guests.adults = 20;
    guests.children = 3;
    event::Pieces pieces;
    pieces.perHundredGuests = 50;
    CHECK(event::pieceCount(pieces, guests) == 12);  // 11.5
    pieces.perHundredGuests.reset();
    pieces.total = 7;
    CHECK(event::pieceCount(pieces, guests) == 7);
}
