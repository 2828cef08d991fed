#include "cli/figures_json.h"

#include <array>
#include <nlohmann/json.hpp>

#include "event/words.h"

namespace cinder::cli {

namespace {

using Json = nlohmann::ordered_json;

std::string_view unitWord(quantity::Unit unit) {
    static constexpr std::array<std::string_view, 19> kWords{
        "guests",  "portions", "pieces",        "packs",  "pans",        "vessels",     "chafers",
        "cans",    "bags",     "tables",        "grams",  "millilitres", "millimetres", "minutes",
        "percent", "ratio",    "gramsPerLitre", "adults", "children"};
    return kWords.at(static_cast<std::size_t>(unit));
}

std::string_view originWord(quantity::Origin origin) {
    static constexpr std::array<std::string_view, 5> kWords{"field", "published", "commonPractice",
                                                            "fromMemory", "reckoned"};
    return kWords.at(static_cast<std::size_t>(origin));
}

Json figure(const quantity::Figure& from, std::string_view language) {
    Json json{{"name", from.name.in(language)},
              {"value", from.amount.value},
              {"unit", unitWord(from.amount.unit)},
              {"origin", originWord(from.source.origin)}};
    if (!from.key.empty()) json["figure"] = from.key;
    if (!from.source.text.empty()) json["source"] = from.source.text;
    if (!from.formula.empty()) json["formula"] = from.formula.in(language);
    if (from.reckoned) json["reckoned"] = *from.reckoned;
    if (from.note) json["note"] = *from.note;
    for (const quantity::Figure& input : from.inputs)
        json["inputs"].push_back(figure(input, language));
    return json;
}

Json lineJson(const quantity::Line& line) {
    Json stands = Json::array();
    for (const quantity::Stand& stand : line.stands)
        stands.push_back({{"dish", stand.dish.text()},
                          {"vessel", event::wordFor(stand.vessel)},
                          {"table", stand.table},
                          {"xMm", stand.x.millimetres()},
                          {"yMm", stand.y.millimetres()},
                          {"lengthMm", stand.length.millimetres()},
                          {"widthMm", stand.width.millimetres()},
                          {"isOnRiser", stand.isOnRiser}});
    return {{"availableMm", line.available.millimetres()},
            {"neededMm", line.needed.millimetres()},
            {"shortByMm", line.shortBy.millimetres()},
            {"moreTables", line.moreTables},
            {"stands", stands}};
}

Json kitchenJson(const event::Event& event, const quantity::Reckoning& all,
                 std::string_view language) {
    Json tasks = Json::array();
    for (const quantity::KitchenTask& task : all.kitchen) {
        Json json{{"dish", task.dish.text()},
                  {"name", task.name.in(language)},
                  {"finishBy", formatRfc3339({task.finishBy, event.serve.offset})},
                  {"then", event::wordFor(task.then)}};
        for (const quantity::Deadline& deadline : task.deadlines) {
            Json limit{{"celsius", deadline.temperature.celsius()},
                       {"isAtMost", deadline.isAtMost},
                       {"source", deadline.source}};
            if (deadline.by) limit["by"] = formatRfc3339({*deadline.by, event.serve.offset});
            json["limits"].push_back(std::move(limit));
        }
        tasks.push_back(std::move(json));
    }
    return tasks;
}

}  // namespace

std::string figuresJson(const event::Event& event, const quantity::Reckoning& all,
                        std::string_view language) {
    Json json{{"event", event.id.text()}, {"name", event.name.in(language)}};
    json["faults"] = Json::array();
    for (const event::Fault& fault : all.faults)
        json["faults"].push_back({{"path", fault.path},
                                  {"found", fault.found},
                                  {"allowed", fault.allowed},
                                  {"words", event::describe(fault)}});
    json["dishes"] = Json::array();
    for (const quantity::DishFigures& dish : all.dishes) {
        Json one{{"dish", dish.dish.text()}, {"name", dish.name.in(language)}};
        if (dish.portions) one["portions"] = figure(*dish.portions, language);
        if (dish.pieces) one["pieces"] = figure(*dish.pieces, language);
        if (dish.weight) one["weight"] = figure(*dish.weight, language);
        if (dish.vessels) one["vessels"] = figure(*dish.vessels, language);
        if (dish.onLine) one["onLine"] = figure(*dish.onLine, language);
        json["dishes"].push_back(std::move(one));
    }
    json["purchase"] = Json::array();
    for (const quantity::Buy& buy : all.purchase)
        json["purchase"].push_back({{"id", buy.id.text()},
                                    {"name", buy.name.in(language)},
                                    {"toBuy", figure(buy.toBuy, language)}});
    json["supplies"] = Json::array();
    for (const quantity::Figure& supply : all.supplies)
        json["supplies"].push_back(figure(supply, language));
    json["line"] = lineJson(all.line);
    json["kitchen"] = kitchenJson(event, all, language);
    if (all.departure)
        json["leaveBy"] = formatRfc3339({all.departure->leaveBy, event.serve.offset});
    json["pack"] = Json::array();
    for (const quantity::PackRow& row : all.pack)
        json["pack"].push_back({{"row", row.key},
                                {"name", row.name.in(language)},
                                {"value", row.amount.value},
                                {"unit", unitWord(row.amount.unit)},
                                {"comesBack", row.comesBack}});
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace cinder::cli
