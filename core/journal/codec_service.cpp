// The facts of the line as text (codec.h, service_facts.h).

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;

DishId dishOf(const json& object) {
    return DishId{textOf(object, "dish")};
}

constexpr KindReader kReaders[] = {
    {"passed",
     [](const json& o) -> Body {
         return GuestsPassed{smallOf(o, "guests"), instantOf(o, "at")};
     }},
    {"last-guest", [](const json& o) -> Body { return LastGuestPassed{instantOf(o, "at")}; }},
    {"pan-level",
     [](const json& o) -> Body {
         PanLevelTapped tapped{dishOf(o), smallOf(o, "pan"), smallOf(o, "percent"),
                               instantOf(o, "at")};
         if (tapped.pan < 1 || tapped.percent > 100) throw Unreadable{};
         return tapped;
     }},
    {"pan-set",
     [](const json& o) -> Body {
         NextPanSet set{dishOf(o), smallOf(o, "pan"), instantOf(o, "at")};
         if (set.pan < 2) throw Unreadable{};
         return set;
     }},
};

}  // namespace

BodyText writeServiceFact(const GuestsPassed& o) {
    return textOfBody("passed", {{"guests", o.guests}, {"at", millis(o.at)}});
}

BodyText writeServiceFact(const LastGuestPassed& o) {
    return textOfBody("last-guest", {{"at", millis(o.at)}});
}

BodyText writeServiceFact(const PanLevelTapped& o) {
    return textOfBody(
        "pan-level",
        {{"dish", o.dish.text()}, {"pan", o.pan}, {"percent", o.percent}, {"at", millis(o.at)}});
}

BodyText writeServiceFact(const NextPanSet& o) {
    return textOfBody("pan-set", {{"dish", o.dish.text()}, {"pan", o.pan}, {"at", millis(o.at)}});
}

std::optional<Body> readServiceFact(std::string_view kind, std::string_view text) {
    return readKind(kReaders, kind, text);
}

}  // namespace cinder::journal
