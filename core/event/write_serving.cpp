#include "event/write_parts.h"

namespace cinder::event {

namespace {

Json write(const Pack& pack) {
    Json object{{"name", text(pack.name)}};
    if (pack.mass) object["grams"] = pack.mass->grams();
    if (pack.pieces) object["pieces"] = *pack.pieces;
    addUnknown(object, pack.unknown);
    return object;
}

Json write(const Ingredient& ingredient) {
    Json object{{"id", ingredient.id.text()},
                {"name", text(ingredient.name)},
                {"percent", ingredient.percent}};
    if (!ingredient.yields.empty()) object["yields"] = ingredient.yields;
    if (ingredient.yieldPercent) object["yieldPercent"] = *ingredient.yieldPercent;
    if (ingredient.pack) object["pack"] = write(*ingredient.pack);
    if (ingredient.source) object["source"] = *ingredient.source;
    addUnknown(object, ingredient.unknown);
    return object;
}

Json write(const Override& own) {
    Json object{{"figure", own.figure}, {"value", number(own.value)}};
    if (own.note) object["note"] = *own.note;
    addUnknown(object, own.unknown);
    return object;
}

}  // namespace

Json write(const Serving& serving) {
    Json object = Json::object();
    const auto add = [&object](const char* name, const auto& value) {
        if (value) object[name] = *value;
    };
    if (serving.portion) object["portionGrams"] = serving.portion->grams();
    add("portionPieces", serving.portionPieces);
    add("takePercent", serving.takePercent);
    add("childPercent", serving.childPercent);
    add("secondsPercent", serving.secondsPercent);
    add("choice", serving.choice);
    add("gramsPerLitre", serving.gramsPerLitre);
    if (serving.vessel) object["vessel"] = wordFor(*serving.vessel);
    if (serving.panSize) object["panSize"] = wordFor(*serving.panSize);
    if (serving.panDepth) object["panDepth"] = wordFor(*serving.panDepth);
    if (serving.vesselVolume) object["vesselLitres"] = number(serving.vesselVolume->litres());
    if (serving.vesselLength) object["vesselLengthMm"] = millimetres(*serving.vesselLength);
    if (serving.vesselWidth) object["vesselWidthMm"] = millimetres(*serving.vesselWidth);
    if (!serving.ingredients.empty())
        object["ingredients"] =
            list(serving.ingredients, [](const Ingredient& one) { return write(one); });
    addUnknown(object, serving.unknown);
    return object;
}

Json write(const Ahead& ahead) {
    Json object{{"id", ahead.id.text()}, {"name", text(ahead.name)}};
    if (ahead.duration) object["minutes"] = minutes(*ahead.duration);
    object["minutesBefore"] = minutes(ahead.beforeServe);
    object["then"] = wordFor(ahead.then);
    addUnknown(object, ahead.unknown);
    return object;
}

Json write(const Quantities& quantities) {
    Json object = Json::object();
    if (quantities.service) object["serviceMinutes"] = minutes(*quantities.service);
    if (quantities.buffer) object["bufferMinutes"] = minutes(*quantities.buffer);
    if (!quantities.lineOrder.empty()) object["lineOrder"] = idList(quantities.lineOrder);
    if (!quantities.overrides.empty())
        object["overrides"] =
            list(quantities.overrides, [](const Override& own) { return write(own); });
    addUnknown(object, quantities.unknown);
    return object;
}

}  // namespace cinder::event
