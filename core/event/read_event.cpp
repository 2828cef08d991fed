#include "event/read_event.h"

#include "event/limits.h"
#include "event/read_serving.h"
#include "event/read_step.h"

namespace cinder::event {

namespace {

const auto kRead = [](const Node& node, auto& out) { readInto(node, out); };
const auto kWord = [](const Node& node, auto& out) { readWord(node, out); };

/// A reader for a whole number, a length, a list … within its limits.
auto whole(Range<std::int32_t> range) {
    return [range](const Node& node, std::int32_t& out) { readWhole(node, range, out); };
}
auto millimetres(Range<double> range) {
    return [range](const Node& node, Length& out) { readMillimetres(node, range, out); };
}
auto text(Range<std::size_t> letters) {
    return [letters](const Node& node, std::string& out) { readText(node, letters, out); };
}
template <class Read>
auto list(Range<std::size_t> entries, Read read) {
    return [entries, read](const Node& node, auto& out) { readList(node, entries, out, read); };
}

void readDietCount(const Node& node, DietCount& out) {
    Members members(node);
    members.required("diet", out.diet, kWord);
    members.required("count", out.count, whole(kGuestRange));
    out.unknown = members.unknown();
}

void readAllergenCount(const Node& node, AllergenCount& out) {
    Members members(node);
    members.required("allergen", out.allergen, kWord);
    members.required("count", out.count, whole(kGuestRange));
    out.unknown = members.unknown();
}

void readGuests(const Node& node, Guests& out) {
    Members members(node);
    members.required("adults", out.adults, whole(kGuestRange));
    members.optional("children", out.children, whole(kGuestRange));
    members.optional("diets", out.diets, list(kAnyEntries, readDietCount));
    members.optional("allergens", out.allergens, list(kAnyEntries, readAllergenCount));
    out.unknown = members.unknown();
}

/// Skills and stations: an id and a name.
template <class Named>
void readNamed(const Node& node, Named& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    out.unknown = members.unknown();
}

void readWalk(const Node& node, Walk& out) {
    Members members(node);
    members.required("from", out.from, kRead);
    members.required("to", out.to, kRead);
    members.required("minutes", out.time,
                     [](const Node& n, Duration& time) { readMinutes(n, kWalkMinutes, time); });
    out.unknown = members.unknown();
}

void readSite(const Node& node, Site& out) {
    Members members(node);
    members.required("name", out.name, kRead);
    members.optional("address", out.address, text(kNoteLetters));
    members.optional("notes", out.notes, kRead);
    members.optional("arrival", out.arrival, kRead);
    members.optional("travelMinutes", out.travel,
                     [](const Node& n, Duration& travel) { readMinutes(n, kMinutes, travel); });
    members.required("stations", out.stations, list(kSomeEntries, readNamed<Station>));
    members.optional("walks", out.walks, list(kAnyEntries, readWalk));
    out.unknown = members.unknown();
}

void readPerson(const Node& node, Person& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, text(kNameLetters));
    members.required("skills", out.skills, list(kAnyEntries, kRead));
    out.unknown = members.unknown();
}

void readGrate(const Node& node, Grate& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("station", out.station, kRead);
    members.required("lengthMm", out.length, millimetres(kSurfaceMillimetres));
    members.required("widthMm", out.width, millimetres(kSurfaceMillimetres));
    members.optional("coolSideMm", out.coolSide, millimetres({0, kSurfaceMillimetres.high}));
    members.optional("gapMm", out.gap, millimetres(kGapMillimetres));
    out.unknown = members.unknown();
}

void readEquipment(const Node& node, Equipment& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("kind", out.kind, kWord);
    members.required("count", out.count, whole(kPlaceRange));
    members.optional("station", out.station, kRead);
    out.unknown = members.unknown();
}

void readTable(const Node& node, Table& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("count", out.count, whole(kPlaceRange));
    members.required("lengthMm", out.length, millimetres(kSurfaceMillimetres));
    members.required("widthMm", out.width, millimetres(kSurfaceMillimetres));
    members.optional("station", out.station, kRead);
    out.unknown = members.unknown();
}

void readKit(const Node& node, Kit& out) {
    Members members(node);
    members.optional("grates", out.grates, list(kAnyEntries, readGrate));
    members.optional("equipment", out.equipment, list(kAnyEntries, readEquipment));
    members.optional("tables", out.tables, list(kAnyEntries, readTable));
    out.unknown = members.unknown();
}

void readThickness(const Node& node, ThicknessClass& out) {
    Members members(node);
    members.required("name", out.name, kRead);
    members.required("thicknessMm", out.thickness, millimetres(kThicknessMillimetres));
    members.required("percent", out.percent, whole(kPercentRange));
    out.unknown = members.unknown();
}

void readPieces(const Node& node, Pieces& out) {
    Members members(node);
    members.optional("total", out.total, whole(kPieceRange));
    members.optional("perHundredGuests", out.perHundredGuests, whole(kPieceRange));
    members.required("lengthMm", out.length, millimetres(kPieceMillimetres));
    members.required("widthMm", out.width, millimetres(kPieceMillimetres));
    out.narrowWidth = out.width;
    members.optional("narrowWidthMm", out.narrowWidth, millimetres(kPieceMillimetres));
    members.optional("massGrams", out.mass, [](const Node& n, Mass& mass) {
        std::int32_t grams = 1;
        readWhole(n, kGramRange, grams);
        mass = Mass::fromGrams(grams);
    });
    members.optional("thickness", out.thickness, list(kAnyEntries, readThickness));
    out.unknown = members.unknown();
}

}  // namespace

void readDish(const Node& node, Dish& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("course", out.course, kWord);
    members.required("food", out.food, kWord);
    members.optional("meat", out.meat, kWord);
    members.required("order", out.order, whole(kPlaceRange));
    members.optional("suits", out.suits, list(kAnyEntries, kWord));
    members.required("contains", out.contains, list(kAnyEntries, kWord));
    members.optional("pieces", out.pieces, readPieces);
    members.optional("pullAtCelsius", out.pullAt,
                     [](const Node& n, Temperature& t) { readCelsius(n, kPullCelsius, t); });
    members.optional("doneness", out.doneness, kWord);
    members.required("method", out.method, list(kSomeEntries, readStep));
    members.optional("serving", out.serving, readServing);
    members.optional("ahead", out.ahead, list(kAnyEntries, readAhead));
    members.optional("source", out.source, text(kNoteLetters));
    out.unknown = members.unknown();
}

void readEvent(const Node& node, Event& out) {
    Members members(node);
    members.required("version", out.version, whole(kVersionRange));
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("serve", out.serve, kRead);
    members.required("timeZone", out.timeZone, readTimeZone);
    members.required("guests", out.guests, readGuests);
    members.required("site", out.site, readSite);
    members.required("skills", out.skills, list(kSomeEntries, readNamed<Skill>));
    members.required("crew", out.crew, list(kCrewEntries, readPerson));
    members.required("kit", out.kit, readKit);
    members.required("menu", out.menu, list(kSomeEntries, readDish));
    members.required("work", out.work, list(kAnyEntries, readStep));
    members.optional("quantities", out.quantities, readQuantities);
    out.unknown = members.unknown();
}

}  // namespace cinder::event
