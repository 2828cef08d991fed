#include <algorithm>

#include "demo.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using quantity::Line;
using quantity::reckon;

namespace {

bool overlap(const quantity::Stand& a, const quantity::Stand& b) {
    return a.x < b.x + b.length && b.x < a.x + a.length && a.y < b.y + b.width &&
           b.y < a.y + a.width;
}

std::vector<std::string> order(const Line& line) {
    std::vector<std::string> ids;
    for (const auto& stand : line.stands)
        if (ids.empty() || ids.back() != stand.dish.text()) ids.push_back(stand.dish.text());
    return ids;
}

void checkGeometry(const Line& line) {
    for (std::size_t i = 0; i < line.stands.size(); ++i) {
        const auto& stand = line.stands[i];
        const auto& table = line.tables[stand.table];
        INFO(stand.dish.text() << " at " << stand.x.millimetres());
        CHECK(stand.x >= table.x);
        CHECK(stand.x + stand.length <= table.x + table.length);
        CHECK(stand.y >= quantity::kCardStrip);
        CHECK(stand.y + stand.width <= table.width);
        CHECK_FALSE((stand.isOnRiser && stand.vessel == event::Vessel::Chafer));
        for (std::size_t k = i + 1; k < line.stands.size(); ++k)
            CHECK_FALSE(overlap(stand, line.stands[k]));
    }
}

}  // namespace

TEST_CASE("Salads stand first and served mains last") {
    CHECK(order(reckon(test::orchard()).line) ==
          std::vector<std::string>{"slaw", "potatoes", "flatbread", "stew", "herb-sauce",
                                   "tomato-sauce", "halloumi", "chicken", "lamb"});
}

TEST_CASE("Nothing overlaps, hangs over an edge or stands across a joint") {
    for (const auto* name : {"orchard-harvest-lunch", "last-apple-feast", "pruning-day-supper"})
        checkGeometry(reckon(test::demo(name)).line);
}

TEST_CASE("Every dish on the line has one card with its allergens") {
    const auto event = test::orchard();
    const auto line = reckon(event).line;
    REQUIRE(line.cards.size() == event.menu.size());
    for (const auto& card : line.cards) {
        const auto dish = std::find_if(event.menu.begin(), event.menu.end(),
                                       [&](const auto& one) { return one.id == card.dish; });
        CHECK(card.contains == dish->contains);
    }
}

TEST_CASE("A person's order holds, and a main that stands early is pointed out") {
    auto event = test::orchard();
    event.quantities->lineOrder = {DishId("lamb"), DishId("herb-sauce")};
    const auto line = reckon(event).line;
    const auto ids = order(line);
    CHECK(ids[0] == "lamb");
    CHECK(ids[1] == "herb-sauce");
    CHECK(ids[2] == "slaw");
    checkGeometry(line);
    const auto prompt = std::find_if(
        line.prompts.begin(), line.prompts.end(),
        [](const quantity::Prompt& one) { return one.what == quantity::Prompt::What::Order; });
    REQUIRE(prompt != line.prompts.end());
    CHECK(prompt->dishes == std::vector<DishId>{DishId("lamb")});
}

TEST_CASE("A short table says by how much, and how many more would do") {
    auto event = test::orchard();
    event.kit.tables[0].count = 1;
    const auto all = reckon(event);
    CHECK(all.line.available == Length::fromMillimetres(1829));
    CHECK(all.line.shortBy == all.line.needed - all.line.available);
    CHECK(all.line.shortBy > Length::fromMillimetres(1000));
    CHECK(all.line.moreTables == 1);
    CHECK_FALSE(all.line.waiting.empty());
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].path == "/kit/tables/0/count");
    CHECK(all.faults[0].allowed == "2..1000");
    checkGeometry(all.line);

    // With that many there is room: what was said was true.
    event.kit.tables[0].count = 1 + all.line.moreTables;
    CHECK(reckon(event).line.shortBy == Length{});
}

namespace {

/// The bread and the sauces are loaded at a bar with a table of its own.
event::Event withBar() {
    auto event = test::orchard();
    event.site.stations.push_back({StationId("bar"), LocalText("Bar"), {}});
    for (event::Dish& dish : event.menu)
        if (dish.course == event::Course::Bread || dish.course == event::Course::Sauce)
            for (event::Step& step : dish.method)
                if (step.kind == event::StepKind::Load) step.station = StationId("bar");
    event::Table bar = event.kit.tables.front();
    bar.id = ResourceId("bar-table");
    bar.count = 1;
    bar.station = StationId("bar");
    event.kit.tables.insert(event.kit.tables.begin(), bar);
    return event;
}

}  // namespace

TEST_CASE("Each station where dishes are loaded has a line of its own") {
    const auto event = withBar();
    const auto all = reckon(event);
    CHECK(all.faults.empty());
    checkGeometry(all.line);
    REQUIRE(all.line.stands.size() >= event.menu.size());
    for (const auto& stand : all.line.stands) {
        const bool isAtBar =
            stand.course == event::Course::Bread || stand.course == event::Course::Sauce;
        INFO(stand.dish.text());
        CHECK(all.line.tables[stand.table].station == StationId(isAtBar ? "bar" : "line"));
    }
    CHECK(all.line.cards.size() == event.menu.size());
    // Tables that do not stand end to end have no joint to tie.
    const auto tables = all.line.tables.size();
    CHECK(quantity::jointCount(all.line) == tables - 2);
    const auto ties = std::find_if(all.pack.begin(), all.pack.end(),
                                   [](const auto& row) { return row.key == "pack/ties"; });
    CHECK((ties == all.pack.end() ? 0 : ties->amount.value) == static_cast<double>(tables - 2));
    // Mains at the end of one line do not stand before the sauces of another.
    CHECK(std::none_of(all.line.prompts.begin(), all.line.prompts.end(), [](const auto& prompt) {
        return prompt.what == quantity::Prompt::What::Order;
    }));
}

TEST_CASE("A line that is short is blamed at its own tables, though another has room to spare") {
    auto event = withBar();
    event.kit.tables[0].count = 9;  // the bar
    event.kit.tables[1].count = 1;  // the line
    const auto all = reckon(event);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].path == "/kit/tables/1/count");
    CHECK(all.line.needed < all.line.available);
    CHECK(all.line.shortBy > Length{});
    CHECK_FALSE(all.line.waiting.empty());
    event.kit.tables[1].count = 1 + all.line.moreTables;
    CHECK(reckon(event).faults.empty());
}

TEST_CASE("A dish that is loaded where no table stands is on the first line, not lost") {
    auto event = test::orchard();
    for (event::Step& step : event.menu[0].method)
        if (step.kind == event::StepKind::Load) step.station = StationId("fire");
    CHECK(order(reckon(event).line).front() == "slaw");
}

TEST_CASE("No table on the line is told, not laid on the ground") {
    auto event = test::orchard();
    event.kit.tables.clear();
    const auto all = reckon(event);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].path == "/kit/tables");
    CHECK(all.line.stands.empty());
}

TEST_CASE("Wind, shade and cover are asked for where they matter") {
    const auto line = reckon(test::orchard()).line;
    const auto dishes = [&](quantity::Prompt::What what) {
        for (const auto& prompt : line.prompts)
            if (prompt.what == what) return prompt.dishes.size();
        return std::size_t{0};
    };
    CHECK(dishes(quantity::Prompt::What::Wind) == 4);
    CHECK(dishes(quantity::Prompt::What::Shade) == 2);
    CHECK(dishes(quantity::Prompt::What::Cover) == 5);
}
