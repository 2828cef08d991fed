// The entries of the food-safety record as text (codec.h, safety/facts.h).

#include <array>
#include <cmath>
#include <cstdlib>

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;
using namespace safety;

constexpr std::size_t kMostLimits = 200;
constexpr std::int64_t kMostMilliCelsius = 2'000'000;

template <class Value>
struct Word {
    Value value;
    std::string_view text;
};

constexpr std::array kPurposes{Word<Purpose>{Purpose::ArriveCold, "arrive-cold"},
                               Word<Purpose>{Purpose::ArriveHot, "arrive-hot"},
                               Word<Purpose>{Purpose::Cook, "cook"},
                               Word<Purpose>{Purpose::Reheat, "reheat"},
                               Word<Purpose>{Purpose::ReheatPacked, "reheat-packed"},
                               Word<Purpose>{Purpose::HoldHot, "hold-hot"},
                               Word<Purpose>{Purpose::HoldCold, "hold-cold"},
                               Word<Purpose>{Purpose::Cooling, "cooling"}};
constexpr std::array kActions{
    Word<Action>{Action::CookOn, "cook-on"}, Word<Action>{Action::Reheat, "reheat"},
    Word<Action>{Action::Chill, "chill"}, Word<Action>{Action::Discard, "discard"}};
constexpr std::array kRules{
    Word<TimeRule>{TimeRule::Hot, "hot"}, Word<TimeRule>{TimeRule::Cold, "cold"},
    Word<TimeRule>{TimeRule::Fresh, "fresh"}, Word<TimeRule>{TimeRule::ColdLong, "cold-long"}};
constexpr std::array kRoutes{Word<CoolingRoute>{CoolingRoute::Cooked, "cooked"},
                             Word<CoolingRoute>{CoolingRoute::Ambient, "ambient"}};
constexpr std::array kItems{Word<FireItem>{FireItem::Extinguisher, "extinguisher"},
                            Word<FireItem>{FireItem::Clearance, "clearance"},
                            Word<FireItem>{FireItem::OpenAir, "open-air"}};
constexpr std::array kScales{Word<Scale>{Scale::Celsius, "C"}, Word<Scale>{Scale::Fahrenheit, "F"}};

template <class Value, std::size_t N>
std::string wordFor(const std::array<Word<Value>, N>& words, Value value) {
    for (const Word<Value>& word : words)
        if (word.value == value) return std::string(word.text);
    return {};
}

template <class Value, std::size_t N>
Value valueOf(const std::array<Word<Value>, N>& words, const json& object, const char* member) {
    const std::string text = textOf(object, member);
    for (const Word<Value>& word : words)
        if (word.text == text) return word.value;
    throw Unreadable{};
}

// --- writing -------------------------------------------------------------------------------------

json panMembers(const Pan& pan, Instant at) {
    return {{"dish", pan.dish.text()}, {"pan", pan.number}, {"at", millis(at)}};
}

void addReading(json& object, const Reading& reading) {
    object["milliCelsius"] = std::llround((reading.value - Temperature{}).kelvin() * 1000.0);
    object["scale"] = wordFor(kScales, reading.scale);
}

json entryMembers(const EntryId& entry) {
    return {{"device", entry.device.text()}, {"sequence", entry.sequence}};
}

struct FactWriter {
    BodyText operator()(const FoodMeasured& o) const {
        json object = panMembers(o.pan, o.at);
        object["for"] = wordFor(kPurposes, o.purpose);
        addReading(object, o.reading);
        object["thermometer"] = o.thermometer.text();
        if (o.held) object["heldMs"] = o.held->count();
        if (o.corrects) {
            object["corrects"] = entryMembers(*o.corrects);
            object["reason"] = o.reason;
        }
        if (o.from) object["from"] = *o.from;
        return textOfBody("measured", object);
    }
    BodyText operator()(const ActionTaken& o) const {
        return textOfBody("acted", {{"entry", entryMembers(o.entry)},
                                    {"action", wordFor(kActions, o.action)},
                                    {"at", millis(o.at)}});
    }
    BodyText operator()(const ControlLeft& o) const {
        json object = panMembers(o.pan, o.at);
        object["rule"] = wordFor(kRules, o.rule);
        addReading(object, o.reading);
        object["thermometer"] = o.thermometer.text();
        if (o.from) object["from"] = *o.from;
        return textOfBody("left-control", object);
    }
    BodyText operator()(const CoolingBegun& o) const {
        json object = panMembers(o.pan, o.at);
        object["route"] = wordFor(kRoutes, o.route);
        return textOfBody("cooling", object);
    }
    BodyText operator()(const PanDiscarded& o) const {
        return textOfBody("discarded", panMembers(o.pan, o.at));
    }
    BodyText operator()(const PanKept& o) const {
        return textOfBody("kept", panMembers(o.pan, o.at));
    }
    BodyText operator()(const ThermometerTested& o) const {
        json object{{"thermometer", o.thermometer.text()}, {"at", millis(o.at)}};
        addReading(object, o.reading);
        return textOfBody("ice-point", object);
    }
    BodyText operator()(const FireItemReady& o) const {
        return textOfBody("fire-ready", {{"item", wordFor(kItems, o.item)}, {"at", millis(o.at)}});
    }
    BodyText operator()(const FireItemSkipped& o) const {
        return textOfBody(
            "fire-unready",
            {{"item", wordFor(kItems, o.item)}, {"reason", o.reason}, {"at", millis(o.at)}});
    }
    BodyText operator()(const LocalRulesNamed& o) const {
        json limits = json::array();
        for (const LocalLimit& local : o.rules.limits) {
            json limit{{"field", local.field}};
            if (const auto* reading = std::get_if<Reading>(&local.value))
                addReading(limit, *reading);
            else
                limit["ms"] = std::get<Duration>(local.value).count();
            limits.push_back(std::move(limit));
        }
        return textOfBody("local-rules", {{"authority", o.rules.authority},
                                          {"limits", std::move(limits)},
                                          {"at", millis(o.at)}});
    }
    BodyText operator()(const RecordSigned& o) const {
        return textOfBody("signed",
                          {{"name", o.name}, {"certificate", o.certificate}, {"at", millis(o.at)}});
    }
};

// --- reading -------------------------------------------------------------------------------------

Pan panOf(const json& o) {
    return {DishId{textOf(o, "dish")}, smallOf(o, "pan")};
}

/// The pan it came out of; absent before there was such a thing.
std::optional<std::int32_t> originOf(const json& o) {
    if (!o.contains("from")) return std::nullopt;
    return smallOf(o, "from");
}

Reading readingOf(const json& o) {
    const std::int64_t milli = wholeOf(o, "milliCelsius");
    if (std::llabs(milli) > kMostMilliCelsius) throw Unreadable{};
    return {Temperature::fromCelsius(static_cast<double>(milli) / 1000.0),
            valueOf(kScales, o, "scale")};
}

EntryId entryOf(const json& o, const char* member) {
    const auto found = o.find(member);
    if (found == o.end() || !found->is_object()) throw Unreadable{};
    const std::int64_t sequence = wholeOf(*found, "sequence");
    if (sequence < 1) throw Unreadable{};
    return {DeviceId{textOf(*found, "device")}, static_cast<std::uint64_t>(sequence)};
}

ThermometerId thermometerOf(const json& o) {
    return ThermometerId{textOf(o, "thermometer")};
}

Fact readMeasured(const json& o) {
    FoodMeasured measured{
        panOf(o),          valueOf(kPurposes, o, "for"), readingOf(o), thermometerOf(o), {}, {}, {},
        instantOf(o, "at")};
    if (o.contains("heldMs")) measured.held = Duration{wholeOf(o, "heldMs")};
    if (o.contains("corrects")) {
        measured.corrects = entryOf(o, "corrects");
        measured.reason = textOf(o, "reason");
    }
    measured.from = originOf(o);
    return measured;
}

Fact readControlLeft(const json& o) {
    return ControlLeft{panOf(o),         valueOf(kRules, o, "rule"), readingOf(o),
                       thermometerOf(o), instantOf(o, "at"),         originOf(o)};
}

Fact readLocalRules(const json& o) {
    LocalRulesNamed named{{textOf(o, "authority"), {}}, instantOf(o, "at")};
    const auto limits = o.find("limits");
    if (limits == o.end() || !limits->is_array() || limits->size() > kMostLimits)
        throw Unreadable{};
    for (const json& limit : *limits) {
        if (!limit.is_object()) throw Unreadable{};
        LocalLimit local{textOf(limit, "field"), Duration{0}};
        if (limit.contains("ms"))
            local.value = Duration{wholeOf(limit, "ms")};
        else
            local.value = readingOf(limit);
        named.rules.limits.push_back(std::move(local));
    }
    return named;
}

constexpr KindReader kReaders[] = {
    {"measured", [](const json& o) -> Body { return readMeasured(o); }},
    {"acted",
     [](const json& o) -> Body {
         return Fact{
             ActionTaken{entryOf(o, "entry"), valueOf(kActions, o, "action"), instantOf(o, "at")}};
     }},
    {"left-control", [](const json& o) -> Body { return readControlLeft(o); }},
    {"cooling",
     [](const json& o) -> Body {
         return Fact{CoolingBegun{panOf(o), valueOf(kRoutes, o, "route"), instantOf(o, "at")}};
     }},
    {"discarded",
     [](const json& o) -> Body {
         return Fact{PanDiscarded{panOf(o), instantOf(o, "at")}};
     }},
    {"kept",
     [](const json& o) -> Body {
         return Fact{PanKept{panOf(o), instantOf(o, "at")}};
     }},
    {"ice-point",
     [](const json& o) -> Body {
         return Fact{ThermometerTested{thermometerOf(o), readingOf(o), instantOf(o, "at")}};
     }},
    {"fire-ready",
     [](const json& o) -> Body {
         return Fact{FireItemReady{valueOf(kItems, o, "item"), instantOf(o, "at")}};
     }},
    {"fire-unready",
     [](const json& o) -> Body {
         return Fact{
             FireItemSkipped{valueOf(kItems, o, "item"), textOf(o, "reason"), instantOf(o, "at")}};
     }},
    {"local-rules", [](const json& o) -> Body { return readLocalRules(o); }},
    {"signed",
     [](const json& o) -> Body {
         return Fact{RecordSigned{textOf(o, "name"), textOf(o, "certificate"), instantOf(o, "at")}};
     }},
};

}  // namespace

BodyText writeSafetyFact(const Fact& fact) {
    return std::visit(FactWriter{}, fact);
}

std::optional<Body> readSafetyFact(std::string_view kind, std::string_view text) {
    return readKind(kReaders, kind, text);
}

}  // namespace cinder::journal
