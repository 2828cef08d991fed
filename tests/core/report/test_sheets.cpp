#include <algorithm>

#include "core/quantity/demo.h"
#include "plan/build/build.h"
#include "plan/planner.h"
#include "quantity/build/reckon.h"
#include "report/csv.h"
#include "report/sheets.h"

using namespace cinder;
using namespace cinder::report;

namespace {

const Style kEnglish{};
const Style kSpanish{"es", Measures::Metric, Hours::TwentyFour};

struct Prepared {
    event::Event event = test::orchard();
    quantity::Reckoning all = quantity::reckon(event);
};

std::size_t rowsOf(const Document& document) {
    std::size_t rows = 0;
    for (const Table* table : tablesOf(document))
        rows += table->rows.size();
    return rows;
}

/// All text of a document, to look for words in.
std::string textOf(const Document& document) {
    std::string text = document.title + "\n" + document.subtitle + "\n";
    const auto add = [&](const std::string& words) { text += words + "\n"; };
    for (const Block& block : document.blocks) {
        if (const auto* heading = std::get_if<Heading>(&block)) add(heading->text);
        if (const auto* note = std::get_if<Note>(&block)) add(note->text);
        if (const auto* blank = std::get_if<Blank>(&block)) add(blank->label);
        if (const auto* card = std::get_if<StandingCard>(&block)) {
            add(card->title);
            for (const auto& line : card->lines)
                add(line);
        }
        if (const auto* table = std::get_if<Table>(&block))
            for (const Row& row : table->rows)
                for (const auto& cell : row.cells)
                    add(cell);
    }
    return text;
}

bool has(const Document& document, const std::string& words) {
    return textOf(document).find(words) != std::string::npos;
}

std::vector<Document> everySheet(const Prepared& day, const Style& style) {
    return {purchaseList(day.event, day.all, style),
            packSheet(day.event, day.all, style),
            kitchenSheet(day.event, day.all, style),
            buffetPlan(day.event, day.all, style),
            dishCards(day.event, style),
            quantitySheet(day.event, day.all, style)};
}

}  // namespace

TEST_CASE("Every row of a table has a cell for every column") {
    const Prepared day;
    for (const auto& style : {kEnglish, kSpanish})
        for (const auto& document : everySheet(day, style))
            for (const Table* table : tablesOf(document))
                for (const Row& row : table->rows) {
                    INFO(document.title);
                    CHECK(row.cells.size() == table->columns.size());
                }
}

TEST_CASE("The purchase list has a line for everything bought") {
    const Prepared day;
    const auto document = purchaseList(day.event, day.all, kEnglish);
    CHECK(tablesOf(document)[0]->rows.size() == day.all.purchase.size());
    CHECK(has(document, "1 x Sack (10 kg)"));
    CHECK(has(document, "New potatoes"));
    CHECK(has(document, "2 bags"));
    CHECK(has(purchaseList(day.event, day.all, kSpanish), "Papas nuevas"));
}

TEST_CASE("The pack list has every row once, grouped by where it rides, with the time to leave") {
    const Prepared day;
    const auto document = packSheet(day.event, day.all, kEnglish);
    CHECK(rowsOf(document) == day.all.pack.size());
    CHECK(has(document, "Leave by Sat 18 Sep 10:05"));
    CHECK(has(document, "Cold box, raw food only"));
    for (const Table* table : tablesOf(document))
        CHECK(table->boxes == 2);
}

TEST_CASE("The kitchen sheet carries the published limits and who decides") {
    const Prepared day;
    const auto document = kitchenSheet(day.event, day.all, kEnglish);
    CHECK(has(document, "21 °C (70 °F) or below by Fri 17 Sep 17:00"));  // the stew
    CHECK(has(document, "3-501.14"));
    CHECK(has(document, "licensed food protection manager"));
    const auto cautions =
        std::count_if(document.blocks.begin(), document.blocks.end(), [](const Block& block) {
            const auto* note = std::get_if<Note>(&block);
            return note != nullptr && note->isCaution;
        });
    CHECK(cautions == 2);
}

TEST_CASE("A sheet made from an event with holes names them") {
    Prepared day;
    day.event.menu[0].serving->takePercent.reset();
    day.all = quantity::reckon(day.event);
    CHECK(has(purchaseList(day.event, day.all, kEnglish), "/menu/0/serving/takePercent"));
}

TEST_CASE("The buffet plan draws every vessel inside the picture") {
    const Prepared day;
    const auto document = buffetPlan(day.event, day.all, kEnglish);
    const auto drawn =
        std::find_if(document.blocks.begin(), document.blocks.end(),
                     [](const Block& block) { return std::holds_alternative<Drawing>(block); });
    REQUIRE(drawn != document.blocks.end());
    const auto& picture = std::get<Drawing>(*drawn);
    CHECK(picture.boxes.size() == day.all.line.tables.size() + 1 + day.all.line.stands.size());
    for (const auto& box : picture.boxes) {
        INFO(box.label);
        CHECK(box.x >= Length{});
        CHECK(box.y >= Length{});
        CHECK(box.x + box.width <= picture.width);
        CHECK(box.y + box.height <= picture.height);
    }
}

TEST_CASE("A short line is a caution on the plan") {
    Prepared day;
    day.event.kit.tables[0].count = 1;
    day.all = quantity::reckon(day.event);
    const auto document = buffetPlan(day.event, day.all, kEnglish);
    CHECK(has(document, "add 1 table"));
    CHECK(has(document, "No room for "));
}

TEST_CASE("Every dish has a card that names what it contains") {
    const Prepared day;
    const auto document = dishCards(day.event, kEnglish);
    CHECK(document.blocks.size() == day.event.menu.size());
    CHECK(has(document, "Contains: egg, mustard, celery"));
    CHECK(has(document, "Contains: no declared allergen"));
    CHECK(has(dishCards(day.event, kSpanish), "Contiene: huevo, mostaza, apio"));
}

TEST_CASE("The run sheet has every task, by its start") {
    const Prepared day;
    const auto problem = plan::build(day.event);
    REQUIRE(problem);
    const auto made = plan::makePlan(*problem, {{200, std::nullopt}});
    REQUIRE(made);
    const live::RunSheet sheet{*problem, made->schedule, day.event.serve.at};
    const auto document = runSheet(day.event, sheet, kEnglish);
    const Table& table = *tablesOf(document)[0];
    CHECK(table.rows.size() == problem->tasks.size());
    CHECK(table.rows.front().cells[0] == "11:00");
    CHECK(table.rows.front().cells[1] == "T-2:00");
    CHECK(csv(table).find("\r\n") != std::string::npos);
}

TEST_CASE("A person's own value stands out on paper") {
    Prepared day;
    day.event.quantities->overrides.push_back({"supply/plates", 300, std::nullopt, {}});
    day.all = quantity::reckon(day.event);
    const auto document = purchaseList(day.event, day.all, kEnglish);
    const Table& goods = *tablesOf(document)[1];
    const auto row = std::find_if(goods.rows.begin(), goods.rows.end(),
                                  [](const Row& one) { return one.cells[1] == "Plates"; });
    REQUIRE(row != goods.rows.end());
    CHECK(row->cells[0] == "300 pieces");
    CHECK(row->isEmphasized);
}
