// The facts about lists as text (codec.h, list_facts.h).

#include <cmath>

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;

constexpr std::size_t kMostDishes = 500;
/// The widest an own value may be; event::kFigure says the same to who reads an event.
constexpr double kMostOwnValue = 1e9;

const char* wordOf(Packed::Where where) {
    switch (where) {
        case Packed::Where::Out:
            return "out";
        case Packed::Where::Home:
            return "home";
        case Packed::Where::Line:
            break;
    }
    return "line";
}

Packed::Where whereOf(const std::string& word) {
    for (const auto where : {Packed::Where::Out, Packed::Where::Home, Packed::Where::Line})
        if (word == wordOf(where)) return where;
    throw Unreadable{};
}

Body readFigure(const json& o) {
    FigureSet set{textOf(o, "figure"), {}, {}, instantOf(o, "at")};
    if (const auto value = o.find("value"); value != o.end()) {
        if (!value->is_number()) throw Unreadable{};
        set.value = value->get<double>();
        if (!(*set.value >= 0 && *set.value <= kMostOwnValue)) throw Unreadable{};
    }
    if (o.contains("note")) set.note = textOf(o, "note");
    return set;
}

constexpr KindReader kReaders[] = {
    {"figure", readFigure},
    {"guests",
     [](const json& o) -> Body {
         return GuestsSet{smallOf(o, "adults"), smallOf(o, "children"), instantOf(o, "at")};
     }},
    {"line-order",
     [](const json& o) -> Body {
         return LineOrdered{idsOf<DishId>(o, "dishes", kMostDishes), instantOf(o, "at")};
     }},
    {"packed",
     [](const json& o) -> Body {
         return Packed{textOf(o, "row"), smallOf(o, "count"), whereOf(textOf(o, "where")),
                       instantOf(o, "at")};
     }},
};

}  // namespace

BodyText writeListFact(const FigureSet& o) {
    json object{{"figure", o.figure}, {"at", millis(o.at)}};
    if (o.value) object["value"] = *o.value;
    if (o.note) object["note"] = *o.note;
    return textOfBody("figure", object);
}

BodyText writeListFact(const GuestsSet& o) {
    return textOfBody("guests",
                      {{"adults", o.adults}, {"children", o.children}, {"at", millis(o.at)}});
}

BodyText writeListFact(const LineOrdered& o) {
    return textOfBody("line-order", {{"dishes", listOfIds(o.dishes)}, {"at", millis(o.at)}});
}

BodyText writeListFact(const Packed& o) {
    return textOfBody(
        "packed",
        {{"row", o.row}, {"count", o.count}, {"where", wordOf(o.where)}, {"at", millis(o.at)}});
}

std::optional<Body> readListFact(std::string_view kind, std::string_view text) {
    return readKind(kReaders, kind, text);
}

}  // namespace cinder::journal
