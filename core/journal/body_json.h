#pragma once

/// How the members of a body are read and written; internal to core/journal.

#include <nlohmann/json.hpp>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "journal/codec.h"

namespace cinder::journal {

/// Thrown inside the codec only, when a member is missing or of another type.
struct Unreadable {};

inline std::int64_t millis(Instant at) {
    return at.time_since_epoch().count();
}

inline std::string textOf(const nlohmann::json& object, const char* member) {
    const auto found = object.find(member);
    if (found == object.end() || !found->is_string()) throw Unreadable{};
    return found->get<std::string>();
}

/// A list of names, no longer than `most`.
template <class Id>
std::vector<Id> idsOf(const nlohmann::json& object, const char* member, std::size_t most) {
    const auto found = object.find(member);
    if (found == object.end() || !found->is_array() || found->size() > most) throw Unreadable{};
    std::vector<Id> ids;
    for (const nlohmann::json& id : *found) {
        if (!id.is_string()) throw Unreadable{};
        ids.emplace_back(id.get<std::string>());
    }
    return ids;
}

template <class Id>
nlohmann::json listOfIds(const std::vector<Id>& ids) {
    auto list = nlohmann::json::array();
    for (const Id& id : ids)
        list.push_back(id.text());
    return list;
}

inline std::int64_t wholeOf(const nlohmann::json& object, const char* member) {
    const auto found = object.find(member);
    if (found == object.end() || !found->is_number_integer()) throw Unreadable{};
    return found->get<std::int64_t>();
}

inline std::int32_t smallOf(const nlohmann::json& object, const char* member) {
    const std::int64_t value = wholeOf(object, member);
    if (value < 0 || value > 1'000'000) throw Unreadable{};
    return static_cast<std::int32_t>(value);
}

inline bool truthOf(const nlohmann::json& object, const char* member) {
    const auto found = object.find(member);
    if (found == object.end() || !found->is_boolean()) throw Unreadable{};
    return found->get<bool>();
}

inline Instant instantOf(const nlohmann::json& object, const char* member) {
    return Instant{Duration{wholeOf(object, member)}};
}

inline TaskId taskOf(const nlohmann::json& object) {
    return TaskId{textOf(object, "task")};
}

inline BodyText textOfBody(const char* kind, const nlohmann::json& object) {
    // Text from people may hold broken UTF-8; it is replaced, never thrown on.
    return {kind, object.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)};
}

/// How the body of one kind is read; throws Unreadable.
struct KindReader {
    std::string_view kind;
    Body (*read)(const nlohmann::json&);
};

/// Nothing when the kind is none of `readers` or the body does not read.
[[nodiscard]] std::optional<Body> readKind(std::span<const KindReader> readers,
                                           std::string_view kind, std::string_view text);

// journal/codec_pieces.cpp
[[nodiscard]] BodyText writePieceFact(const PiecesLaid& o);
[[nodiscard]] BodyText writePieceFact(const HandHeld& o);
[[nodiscard]] BodyText writePieceFact(const GrateRead& o);
[[nodiscard]] BodyText writePieceFact(const PieceRead& o);
[[nodiscard]] BodyText writePieceFact(const PieceJudged& o);
[[nodiscard]] BodyText writePieceFact(const PiecesPulled& o);
[[nodiscard]] BodyText writePieceFact(const PiecesMoved& o);
[[nodiscard]] BodyText writePieceFact(const CoalAdded& o);
/// Nothing when the kind is none of these or the body does not read.
[[nodiscard]] std::optional<Body> readPieceFact(std::string_view kind, std::string_view text);

// journal/codec_lists.cpp; the same for quantities, line and van.
[[nodiscard]] BodyText writeListFact(const FigureSet& o);
[[nodiscard]] BodyText writeListFact(const GuestsSet& o);
[[nodiscard]] BodyText writeListFact(const LineOrdered& o);
[[nodiscard]] BodyText writeListFact(const Packed& o);
[[nodiscard]] std::optional<Body> readListFact(std::string_view kind, std::string_view text);
// journal/codec_service.cpp; the same two for the line.
[[nodiscard]] BodyText writeServiceFact(const GuestsPassed& o);
[[nodiscard]] BodyText writeServiceFact(const LastGuestPassed& o);
[[nodiscard]] BodyText writeServiceFact(const PanLevelTapped& o);
[[nodiscard]] BodyText writeServiceFact(const NextPanSet& o);
[[nodiscard]] std::optional<Body> readServiceFact(std::string_view kind, std::string_view text);

// journal/codec_debrief.cpp; the same two for the debrief.
[[nodiscard]] BodyText writeDebriefFact(const TaskInterrupted& o);
[[nodiscard]] BodyText writeDebriefFact(const LessonAnswered& o);
[[nodiscard]] std::optional<Body> readDebriefFact(std::string_view kind, std::string_view text);

// journal/codec_safety.cpp; the same two for the food-safety record.
[[nodiscard]] BodyText writeSafetyFact(const safety::Fact& fact);
[[nodiscard]] std::optional<Body> readSafetyFact(std::string_view kind, std::string_view text);

}  // namespace cinder::journal
