#include "event/read_serving.h"

#include "event/limits.h"

namespace cinder::event {

namespace {

const auto kRead = [](const Node& node, auto& out) { readInto(node, out); };
const auto kWord = [](const Node& node, auto& out) { readWord(node, out); };

auto whole(Range<std::int32_t> range) {
    return [range](const Node& node, std::int32_t& out) { readWhole(node, range, out); };
}
auto grams(Range<std::int32_t> range) {
    return [range](const Node& node, Mass& out) {
        std::int32_t count = 1;
        readWhole(node, range, count);
        out = Mass::fromGrams(count);
    };
}
auto text(Range<std::size_t> letters) {
    return [letters](const Node& node, std::string& out) { readText(node, letters, out); };
}
template <class Read>
auto list(Read read) {
    return [read](const Node& node, auto& out) { readList(node, kAnyEntries, out, read); };
}

const auto kMillimetres = [](const Node& node, Length& out) {
    readMillimetres(node, kVesselMillimetres, out);
};
const auto kLitres = [](const Node& node, Volume& out) {
    double litres = 0;
    readDecimal(node, kVesselLitres, litres);
    out = Volume::fromLitres(litres);
};

void readPack(const Node& node, Pack& out) {
    Members members(node);
    members.required("name", out.name, kRead);
    members.optional("grams", out.mass, grams(kGramRange));
    members.optional("pieces", out.pieces, whole(kPieceRange));
    out.unknown = members.unknown();
}

void readIngredient(const Node& node, Ingredient& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.required("percent", out.percent, whole(kPercentRange));
    members.optional("yields", out.yields, list(text(kNameLetters)));
    members.optional("yieldPercent", out.yieldPercent, whole(kYieldPercent));
    members.optional("pack", out.pack, readPack);
    members.optional("source", out.source, text(kNoteLetters));
    out.unknown = members.unknown();
}

void readOverride(const Node& node, Override& out) {
    Members members(node);
    members.required("figure", out.figure, text(kNameLetters));
    members.required("value", out.value,
                     [](const Node& n, double& value) { readDecimal(n, kFigure, value); });
    members.optional("note", out.note, text(kNoteLetters));
    out.unknown = members.unknown();
}

}  // namespace

void readServing(const Node& node, Serving& out) {
    Members members(node);
    members.optional("portionGrams", out.portion, grams(kPortionGrams));
    members.optional("portionPieces", out.portionPieces, whole(kPortionPieces));
    members.optional("takePercent", out.takePercent, whole(kPercentRange));
    members.optional("childPercent", out.childPercent, whole(kPercentRange));
    members.optional("secondsPercent", out.secondsPercent, whole(kSecondsPercent));
    members.optional("choice", out.choice, text(kNameLetters));
    members.optional("gramsPerLitre", out.gramsPerLitre, whole(kGramsPerLitre));
    members.optional("vessel", out.vessel, kWord);
    members.optional("panSize", out.panSize, kWord);
    members.optional("panDepth", out.panDepth, kWord);
    members.optional("vesselLitres", out.vesselVolume, kLitres);
    members.optional("vesselLengthMm", out.vesselLength, kMillimetres);
    members.optional("vesselWidthMm", out.vesselWidth, kMillimetres);
    members.optional("ingredients", out.ingredients, list(readIngredient));
    out.unknown = members.unknown();
}

void readAhead(const Node& node, Ahead& out) {
    Members members(node);
    members.required("id", out.id, kRead);
    members.required("name", out.name, kRead);
    members.optional("minutes", out.duration, [](const Node& n, Duration& duration) {
        readMinutes(n, kStepMinutes, duration);
    });
    members.required("minutesBefore", out.beforeServe, [](const Node& n, Duration& before) {
        readMinutes(n, kAheadMinutes, before);
    });
    members.required("then", out.then, kWord);
    out.unknown = members.unknown();
}

void readQuantities(const Node& node, Quantities& out) {
    const auto minutes = [](const Node& n, Duration& d) { readMinutes(n, kMinutes, d); };
    Members members(node);
    members.optional("serviceMinutes", out.service, minutes);
    members.optional("bufferMinutes", out.buffer, minutes);
    members.optional("lineOrder", out.lineOrder, list(kRead));
    members.optional("overrides", out.overrides, list(readOverride));
    out.unknown = members.unknown();
}

}  // namespace cinder::event
