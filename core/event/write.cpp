#include "event/json.h"
#include "event/write_parts.h"

namespace cinder::event {

namespace {

Json write(const Estimate& estimate) {
    Json object{{"low", minutes(estimate.low)},
                {"usual", minutes(estimate.usual)},
                {"high", minutes(estimate.high)}};
    addUnknown(object, estimate.unknown);
    return object;
}

Json write(const Hands& hands) {
    Json object;
    const auto setWorkers = [&](const Workers& workers) {
        object["skill"] = workers.skill.text();
        if (workers.people != 1) object["people"] = workers.people;
    };
    if (std::holds_alternative<HandsFree>(hands)) object["mode"] = wordFor(HandsMode::None);
    if (const auto* whole = std::get_if<HandsWhole>(&hands)) {
        object["mode"] = wordFor(HandsMode::Whole);
        setWorkers(whole->workers);
    }
    if (const auto* start = std::get_if<HandsAtStart>(&hands)) {
        object["mode"] = wordFor(HandsMode::Start);
        setWorkers(start->workers);
        object["minutes"] = minutes(start->length);
    }
    if (const auto* tended = std::get_if<HandsTended>(&hands)) {
        object["mode"] = wordFor(HandsMode::Tended);
        setWorkers(tended->workers);
        object["putOnMinutes"] = minutes(tended->putOn);
        object["turnEveryMinutes"] = minutes(tended->turnEvery);
        object["touchMinutes"] = minutes(tended->touch);
        object["takeOffMinutes"] = minutes(tended->takeOff);
    }
    return object;
}

Json write(const Use& use) {
    Json object{{"resource", use.resource.text()}, {"units", use.units}};
    addUnknown(object, use.unknown);
    return object;
}

Json write(const After& after) {
    Json object{{"step", after.step.text()}};
    if (after.fromEnd != StepEnd::Finish) object["fromEnd"] = wordFor(after.fromEnd);
    if (after.toEnd != StepEnd::Start) object["toEnd"] = wordFor(after.toEnd);
    if (after.minLag != Duration{0}) object["minMinutes"] = minutes(after.minLag);
    if (after.maxLag) object["maxMinutes"] = minutes(*after.maxLag);
    addUnknown(object, after.unknown);
    return object;
}

Json write(const Moment& moment) {
    Json object{{"from", wordFor(moment.anchor)}, {"minutes", minutes(moment.offset)}};
    addUnknown(object, moment.unknown);
    return object;
}

Json write(const Step& step) {
    const auto each = [](const auto& entry) { return write(entry); };
    Json object{{"id", step.id.text()},
                {"name", text(step.name)},
                {"kind", wordFor(step.kind)},
                {"station", step.station.text()},
                {"minutes", write(step.duration)},
                {"hands", write(step.hands)}};
    addUnknown(object["hands"], step.handsUnknown);
    if (!step.uses.empty()) object["uses"] = list(step.uses, each);
    if (!step.onGrates.empty()) object["onGrates"] = idList(step.onGrates);
    if (step.mostPieces) object["mostPieces"] = *step.mostPieces;
    if (step.isEachBatch) object["eachBatch"] = true;
    if (!step.after.empty()) object["after"] = list(step.after, each);
    if (step.earliestStart) object["earliestStart"] = write(*step.earliestStart);
    if (step.latestFinish) object["latestFinish"] = write(*step.latestFinish);
    if (step.shortestPiece) object["shortestPieceMinutes"] = minutes(*step.shortestPiece);
    if (step.lean != StepLean::Early) object["lean"] = wordFor(step.lean);
    if (step.staleness != 0) object["staleness"] = step.staleness;
    if (step.endsByItself) object["endsByItself"] = true;
    if (!step.checklist.empty())
        object["checklist"] = list(step.checklist, [](const auto& line) { return text(line); });
    if (step.checkEvery) object["checkEveryMinutes"] = minutes(*step.checkEvery);
    addUnknown(object, step.unknown);
    return object;
}

Json write(const Pieces& pieces) {
    Json object;
    if (pieces.total) object["total"] = *pieces.total;
    if (pieces.perHundredGuests) object["perHundredGuests"] = *pieces.perHundredGuests;
    object["lengthMm"] = millimetres(pieces.length);
    object["widthMm"] = millimetres(pieces.width);
    if (pieces.narrowWidth != pieces.width)
        object["narrowWidthMm"] = millimetres(pieces.narrowWidth);
    if (pieces.mass) object["massGrams"] = pieces.mass->grams();
    if (!pieces.thickness.empty()) {
        object["thickness"] = list(pieces.thickness, [](const ThicknessClass& thickness) {
            Json entry{{"name", text(thickness.name)},
                       {"thicknessMm", millimetres(thickness.thickness)},
                       {"percent", thickness.percent}};
            addUnknown(entry, thickness.unknown);
            return entry;
        });
    }
    addUnknown(object, pieces.unknown);
    return object;
}

Json write(const Guests& guests) {
    Json object{{"adults", guests.adults}};
    if (guests.children != 0) object["children"] = guests.children;
    if (!guests.diets.empty()) {
        object["diets"] = list(guests.diets, [](const DietCount& diet) {
            Json entry{{"diet", wordFor(diet.diet)}, {"count", diet.count}};
            addUnknown(entry, diet.unknown);
            return entry;
        });
    }
    if (!guests.allergens.empty()) {
        object["allergens"] = list(guests.allergens, [](const AllergenCount& allergen) {
            Json entry{{"allergen", wordFor(allergen.allergen)}, {"count", allergen.count}};
            addUnknown(entry, allergen.unknown);
            return entry;
        });
    }
    addUnknown(object, guests.unknown);
    return object;
}

/// Skills and stations: an id and a name.
template <class Named>
Json writeNamed(const Named& named) {
    Json object{{"id", named.id.text()}, {"name", text(named.name)}};
    addUnknown(object, named.unknown);
    return object;
}

Json write(const Site& site) {
    Json object{{"name", text(site.name)}};
    if (site.address) object["address"] = *site.address;
    if (site.notes) object["notes"] = text(*site.notes);
    if (site.arrival) object["arrival"] = formatRfc3339(*site.arrival);
    if (site.travel) object["travelMinutes"] = minutes(*site.travel);
    object["stations"] = list(site.stations, writeNamed<Station>);
    if (!site.walks.empty()) {
        object["walks"] = list(site.walks, [](const Walk& walk) {
            Json entry{{"from", walk.from.text()},
                       {"to", walk.to.text()},
                       {"minutes", minutes(walk.time)}};
            addUnknown(entry, walk.unknown);
            return entry;
        });
    }
    addUnknown(object, site.unknown);
    return object;
}

Json write(const Person& person) {
    Json object{{"id", person.id.text()}, {"name", person.name}, {"skills", idList(person.skills)}};
    addUnknown(object, person.unknown);
    return object;
}

Json write(const Grate& grate) {
    Json object{{"id", grate.id.text()},
                {"name", text(grate.name)},
                {"station", grate.station.text()},
                {"lengthMm", millimetres(grate.length)},
                {"widthMm", millimetres(grate.width)}};
    if (grate.coolSide != Length{}) object["coolSideMm"] = millimetres(grate.coolSide);
    if (grate.gap != Length{}) object["gapMm"] = millimetres(grate.gap);
    addUnknown(object, grate.unknown);
    return object;
}

Json write(const Equipment& equipment) {
    Json object{{"id", equipment.id.text()},
                {"name", text(equipment.name)},
                {"kind", wordFor(equipment.kind)},
                {"count", equipment.count}};
    if (equipment.station) object["station"] = equipment.station->text();
    addUnknown(object, equipment.unknown);
    return object;
}

Json write(const Table& table) {
    Json object{{"id", table.id.text()},
                {"name", text(table.name)},
                {"count", table.count},
                {"lengthMm", millimetres(table.length)},
                {"widthMm", millimetres(table.width)}};
    if (table.station) object["station"] = table.station->text();
    addUnknown(object, table.unknown);
    return object;
}

Json write(const Kit& kit) {
    const auto each = [](const auto& entry) { return write(entry); };
    Json object = Json::object();
    if (!kit.grates.empty()) object["grates"] = list(kit.grates, each);
    if (!kit.equipment.empty()) object["equipment"] = list(kit.equipment, each);
    if (!kit.tables.empty()) object["tables"] = list(kit.tables, each);
    addUnknown(object, kit.unknown);
    return object;
}

}  // namespace

Json write(const Dish& dish) {
    Json object{{"id", dish.id.text()},
                {"name", text(dish.name)},
                {"course", wordFor(dish.course)},
                {"food", wordFor(dish.food)},
                {"order", dish.order}};
    if (dish.meat) object["meat"] = wordFor(*dish.meat);
    if (!dish.suits.empty()) object["suits"] = wordList(dish.suits);
    object["contains"] = wordList(dish.contains);
    if (dish.pieces) object["pieces"] = write(*dish.pieces);
    if (dish.pullAt) object["pullAtCelsius"] = number(dish.pullAt->celsius());
    if (dish.doneness) object["doneness"] = wordFor(*dish.doneness);
    object["method"] = list(dish.method, [](const Step& step) { return write(step); });
    if (dish.serving) object["serving"] = write(*dish.serving);
    if (!dish.ahead.empty())
        object["ahead"] = list(dish.ahead, [](const Ahead& ahead) { return write(ahead); });
    if (dish.source) object["source"] = *dish.source;
    addUnknown(object, dish.unknown);
    return object;
}

namespace {

Json document(const Event& event) {
    Json object{{"version", event.version},   {"id", event.id.text()},
                {"name", text(event.name)},   {"serve", formatRfc3339(event.serve)},
                {"timeZone", event.timeZone}, {"guests", write(event.guests)},
                {"site", write(event.site)}};
    object["skills"] = list(event.skills, writeNamed<Skill>);
    object["crew"] = list(event.crew, [](const Person& person) { return write(person); });
    object["kit"] = write(event.kit);
    object["menu"] = list(event.menu, [](const Dish& dish) { return write(dish); });
    object["work"] = list(event.work, [](const Step& step) { return write(step); });
    if (event.quantities) object["quantities"] = write(*event.quantities);
    addUnknown(object, event.unknown);
    return object;
}

}  // namespace

std::string write(const Event& event) {
    return document(event).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string writeDraft(const Event& draft) {
    return document(draft).dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace cinder::event
