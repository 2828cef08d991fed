// The facts about pieces as text (codec.h, piece_facts.h).

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;

constexpr std::size_t kMostPieces = 2000;

ResourceId grateOf(const json& object) {
    return ResourceId{textOf(object, "grate")};
}

const json& listOf(const json& object, const char* member) {
    const auto found = object.find(member);
    if (found == object.end() || !found->is_array() || found->size() > kMostPieces)
        throw Unreadable{};
    return *found;
}

std::vector<std::int32_t> piecesOf(const json& object) {
    std::vector<std::int32_t> pieces;
    for (const json& piece : listOf(object, "pieces")) {
        if (!piece.is_number_integer()) throw Unreadable{};
        const auto number = piece.get<std::int64_t>();
        if (number < 1 || number > 1'000'000) throw Unreadable{};
        pieces.push_back(static_cast<std::int32_t>(number));
    }
    return pieces;
}

Body readLaid(const json& o) {
    PiecesLaid laid{taskOf(o), wholeOf(o, "startMilliCelsius"), {}, instantOf(o, "at")};
    for (const json& kind : listOf(o, "kinds")) {
        if (!kind.is_object()) throw Unreadable{};
        laid.kinds.push_back({wholeOf(kind, "thicknessMicrometres"), smallOf(kind, "pieces")});
    }
    return laid;
}

Body readProbe(const json& o) {
    PieceRead read{
        taskOf(o), smallOf(o, "piece"), wholeOf(o, "milliCelsius"), {}, instantOf(o, "at")};
    if (o.contains("depthMicrometres")) read.depth = wholeOf(o, "depthMicrometres");
    return read;
}

constexpr KindReader kReaders[] = {
    {"laid", readLaid},
    {"hand",
     [](const json& o) -> Body {
         return HandHeld{grateOf(o), wholeOf(o, "milliseconds"), instantOf(o, "at")};
     }},
    {"grate",
     [](const json& o) -> Body {
         return GrateRead{grateOf(o), wholeOf(o, "milliCelsius"), instantOf(o, "at")};
     }},
    {"probe", readProbe},
    {"judged",
     [](const json& o) -> Body {
         return PieceJudged{taskOf(o), smallOf(o, "piece"), truthOf(o, "done"), instantOf(o, "at")};
     }},
    {"pulled",
     [](const json& o) -> Body {
         return PiecesPulled{taskOf(o), piecesOf(o), smallOf(o, "pan"), instantOf(o, "at")};
     }},
    {"coal",
     [](const json& o) -> Body {
         return CoalAdded{grateOf(o), wholeOf(o, "grams"), instantOf(o, "at")};
     }},
    {"moved",
     [](const json& o) -> Body {
         return PiecesMoved{taskOf(o), piecesOf(o), truthOf(o, "toCoolSide"), instantOf(o, "at")};
     }},
};

}  // namespace

BodyText writePieceFact(const PiecesLaid& o) {
    json kinds = json::array();
    for (const LaidKind& kind : o.kinds)
        kinds.push_back({{"thicknessMicrometres", kind.thickness}, {"pieces", kind.pieces}});
    return textOfBody("laid", {{"task", o.task.text()},
                               {"startMilliCelsius", o.startMilliCelsius},
                               {"kinds", std::move(kinds)},
                               {"at", millis(o.at)}});
}

BodyText writePieceFact(const HandHeld& o) {
    return textOfBody(
        "hand",
        {{"grate", o.grate.text()}, {"milliseconds", o.milliseconds}, {"at", millis(o.at)}});
}

BodyText writePieceFact(const GrateRead& o) {
    return textOfBody(
        "grate",
        {{"grate", o.grate.text()}, {"milliCelsius", o.milliCelsius}, {"at", millis(o.at)}});
}

BodyText writePieceFact(const PieceRead& o) {
    json object{{"task", o.task.text()},
                {"piece", o.piece},
                {"milliCelsius", o.milliCelsius},
                {"at", millis(o.at)}};
    if (o.depth) object["depthMicrometres"] = *o.depth;
    return textOfBody("probe", object);
}

BodyText writePieceFact(const PieceJudged& o) {
    return textOfBody(
        "judged",
        {{"task", o.task.text()}, {"piece", o.piece}, {"done", o.isDone}, {"at", millis(o.at)}});
}

BodyText writePieceFact(const PiecesPulled& o) {
    return textOfBody(
        "pulled",
        {{"task", o.task.text()}, {"pieces", o.pieces}, {"pan", o.pan}, {"at", millis(o.at)}});
}

BodyText writePieceFact(const PiecesMoved& o) {
    return textOfBody("moved", {{"task", o.task.text()},
                                {"pieces", o.pieces},
                                {"toCoolSide", o.isToCoolSide},
                                {"at", millis(o.at)}});
}

BodyText writePieceFact(const CoalAdded& o) {
    return textOfBody("coal",
                      {{"grate", o.grate.text()}, {"grams", o.grams}, {"at", millis(o.at)}});
}

std::optional<Body> readPieceFact(std::string_view kind, std::string_view text) {
    return readKind(kReaders, kind, text);
}

}  // namespace cinder::journal
