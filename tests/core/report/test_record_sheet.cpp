#include <catch2/catch.hpp>

#include "../safety/kitchen_log.h"
#include "report/csv.h"
#include "report/record_sheet.h"

using namespace samples;

namespace {

live::Day writtenDay() {
    Log log;
    log.measure(0min, Purpose::HoldHot, inFahrenheit(140));
    log.measure(1min, Purpose::HoldHot, inFahrenheit(14));
    log.entries.back().isTakenBack = true;
    const EntryId bad = log.measure(60min, Purpose::HoldHot, inCelsius(50));
    log.add(FoodMeasured{kPan,
                         Purpose::HoldHot,
                         inCelsius(52),
                         kProbe,
                         {},
                         bad,
                         "misread, \"52\"",
                         kEleven + 61min});
    log.act(62min, bad, Action::Discard);
    live::Day day;
    day.record = log.entries;
    return day;
}

std::vector<safety::FoodPlan> plans() {
    safety::FoodPlan plan;
    plan.dish = kPan.dish;
    return {plan};
}

}  // namespace

TEST_CASE("the record on paper shows old and corrected values, what was taken back, and actions") {
    const auto document = report::recordSheet(writtenDay(), plans(), kEleven + 70min, {});

    const auto tables = report::tablesOf(document);
    REQUIRE(tables.size() == 2);
    CHECK(tables[0]->rows.at(0).cells ==
          std::vector<std::string>{"stew, pan 1", "discarded", "discard"});
    const auto& rows = tables[1]->rows;
    REQUIRE(rows.size() == 5);
    CHECK(rows[0].cells[3] == "140.0 °F");
    CHECK(rows[1].cells[2] == "[taken back] held hot");
    CHECK(rows[2].cells[3] == "50.0 °C");
    CHECK(rows[3].cells[2] == "held hot; corrects tablet-3: misread, \"52\"");
    CHECK(rows[4].cells[2] == "corrective action: discard");
    const auto says = [&](const char* words) {
        for (const report::Block& block : document.blocks)
            if (const auto* note = std::get_if<report::Note>(&block))
                if (note->text.find(words) != std::string::npos) return true;
        return false;
    };
    CHECK(says("FDA Food Code 2022"));
    CHECK(says("On this sheet: tablet: 5 entries, last tablet-5."));
    CHECK(says("Local codes and the licensed food protection manager decide"));
}

TEST_CASE("what a pan was filled out of is on paper") {
    Log log;
    log.measure(0min, Purpose::HoldHot, inCelsius(60));
    log.add(FoodMeasured{
        {kPan.dish, 2}, Purpose::HoldHot, inCelsius(58), kProbe, {}, {}, {}, kEleven + 30min, 1});
    live::Day day;
    day.record = log.entries;
    const auto said = [&](const char* language) {
        report::Style style;
        style.language = language;
        const auto document = report::recordSheet(day, plans(), kEleven + 40min, style);
        return report::tablesOf(document).at(1)->rows.at(1).cells[2];
    };
    CHECK(said("en") == "held hot, filled out of pan 1");
    CHECK(said("es").find(", llenada de la charola 1") != std::string::npos);
}

TEST_CASE("the record as CSV has every entry with both scales and both instants") {
    const std::string text = report::csv(report::recordTable(writtenDay()));

    CHECK(text.find("entry,at,written,person,about,what,celsius,fahrenheit,thermometer,"
                    "taken_back\r\n") == 0);
    CHECK(text.find("tablet-1,2027-09-18T15:00:00Z,2027-09-18T15:00:00Z,,\"stew, pan 1\",held hot,"
                    "60.0,140.0,probe-1,no\r\n") != std::string::npos);
    CHECK(text.find("corrects tablet-3: misread, \"\"52\"\"") != std::string::npos);
}
