#include "journal/codec.h"

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;

struct Writer {
    static BodyText body(const char* kind, const json& object) { return textOfBody(kind, object); }
    static BodyText moment(const char* kind, const TaskId& task, Instant at) {
        return body(kind, {{"task", task.text()}, {"at", millis(at)}});
    }

    BodyText operator()(const EventDescribed& o) const {
        return body("described", {{"document", o.document}});
    }
    BodyText operator()(const EventDrafted& o) const {
        return body("drafted", {{"document", o.document}, {"field", o.field}});
    }
    BodyText operator()(const PlanPublished& o) const {
        return body("planned", {{"document", o.document}});
    }
    BodyText operator()(const TaskStarted& o) const { return moment("started", o.task, o.at); }
    BodyText operator()(const TaskFinished& o) const { return moment("finished", o.task, o.at); }
    BodyText operator()(const TaskSkipped& o) const { return moment("skipped", o.task, o.at); }
    BodyText operator()(const DishLeftOut& o) const {
        return body("left-out",
                    {{"dish", o.dish.text()}, {"tasks", listOfIds(o.tasks)}, {"at", millis(o.at)}});
    }
    BodyText operator()(const CrewChanged& o) const {
        auto members = json::array();
        for (const CrewChanged::Member& member : o.members)
            members.push_back({{"person", member.person.text()},
                               {"name", member.name},
                               {"skills", listOfIds(member.skills)},
                               {"here", member.isHere}});
        return body("crew", {{"members", std::move(members)}, {"at", millis(o.at)}});
    }
    BodyText operator()(const LineTicked& o) const {
        return body("ticked", {{"task", o.task.text()}, {"line", o.line}, {"at", millis(o.at)}});
    }
    BodyText operator()(const Turned& o) const {
        return body("turned", {{"task", o.task.text()}, {"turn", o.turn}, {"at", millis(o.at)}});
    }
    BodyText operator()(const ServeTimeMoved& o) const {
        return body("serve-moved", {{"serve", millis(o.serve)}, {"at", millis(o.at)}});
    }
    BodyText operator()(const AlarmAcknowledged& o) const {
        return body("heard", {{"alarm", o.alarm}, {"at", millis(o.at)}});
    }
    BodyText operator()(const TemperatureRead& o) const {
        return body(
            "temperature",
            {{"task", o.task.text()}, {"milliCelsius", o.milliCelsius}, {"at", millis(o.at)}});
    }
    BodyText operator()(const RehearsalSet& o) const {
        return body("rehearsal", {{"real", millis(o.anchor.real)},
                                  {"shown", millis(o.anchor.shown)},
                                  {"speed", o.anchor.speed}});
    }
    BodyText operator()(const Undone& o) const {
        return body("undone",
                    {{"device", o.operation.device.text()}, {"sequence", o.operation.sequence}});
    }
    BodyText operator()(const ClockFollowed& o) const {
        return body("clock", {{"at", millis(o.at)}});
    }
    BodyText operator()(const safety::Fact& o) const { return writeSafetyFact(o); }
    BodyText operator()(const FigureSet& o) const { return writeListFact(o); }
    BodyText operator()(const GuestsSet& o) const { return writeListFact(o); }
    BodyText operator()(const LineOrdered& o) const { return writeListFact(o); }
    BodyText operator()(const Packed& o) const { return writeListFact(o); }
    BodyText operator()(const GuestsPassed& o) const { return writeServiceFact(o); }
    BodyText operator()(const LastGuestPassed& o) const { return writeServiceFact(o); }
    BodyText operator()(const PanLevelTapped& o) const { return writeServiceFact(o); }
    BodyText operator()(const NextPanSet& o) const { return writeServiceFact(o); }
    BodyText operator()(const TaskInterrupted& o) const { return writeDebriefFact(o); }
    BodyText operator()(const LessonAnswered& o) const { return writeDebriefFact(o); }
    BodyText operator()(const Unknown& o) const { return {o.kind, o.body}; }
    template <class PieceFact>
    BodyText operator()(const PieceFact& o) const {
        return writePieceFact(o);
    }
};

Body readCrew(const json& o) {
    constexpr std::size_t kMost = 1000;
    CrewChanged changed{{}, instantOf(o, "at")};
    const auto members = o.find("members");
    if (members == o.end() || !members->is_array() || members->size() > kMost) throw Unreadable{};
    for (const json& member : *members) {
        if (!member.is_object()) throw Unreadable{};
        changed.members.push_back({PersonId{textOf(member, "person")}, textOf(member, "name"),
                                   idsOf<SkillId>(member, "skills", kMost),
                                   truthOf(member, "here")});
    }
    return changed;
}

constexpr KindReader kReaders[] = {
    {"described", [](const json& o) -> Body { return EventDescribed{textOf(o, "document")}; }},
    {"drafted",
     [](const json& o) -> Body {
         return EventDrafted{textOf(o, "document"), textOf(o, "field")};
     }},
    {"planned", [](const json& o) -> Body { return PlanPublished{textOf(o, "document")}; }},
    {"started",
     [](const json& o) -> Body {
         return TaskStarted{taskOf(o), instantOf(o, "at")};
     }},
    {"finished",
     [](const json& o) -> Body {
         return TaskFinished{taskOf(o), instantOf(o, "at")};
     }},
    {"skipped",
     [](const json& o) -> Body {
         return TaskSkipped{taskOf(o), instantOf(o, "at")};
     }},
    {"left-out",
     [](const json& o) -> Body {
         constexpr std::size_t kMostTasks = 10'000;
         return DishLeftOut{DishId{textOf(o, "dish")}, idsOf<TaskId>(o, "tasks", kMostTasks),
                            instantOf(o, "at")};
     }},
    {"crew", readCrew},
    {"ticked",
     [](const json& o) -> Body {
         return LineTicked{taskOf(o), smallOf(o, "line"), instantOf(o, "at")};
     }},
    {"turned",
     [](const json& o) -> Body {
         return Turned{taskOf(o), smallOf(o, "turn"), instantOf(o, "at")};
     }},
    {"serve-moved",
     [](const json& o) -> Body {
         return ServeTimeMoved{instantOf(o, "serve"), instantOf(o, "at")};
     }},
    {"heard",
     [](const json& o) -> Body {
         return AlarmAcknowledged{textOf(o, "alarm"), instantOf(o, "at")};
     }},
    {"temperature",
     [](const json& o) -> Body {
         return TemperatureRead{taskOf(o), wholeOf(o, "milliCelsius"), instantOf(o, "at")};
     }},
    {"rehearsal",
     [](const json& o) -> Body {
         return RehearsalSet{{instantOf(o, "real"), instantOf(o, "shown"), smallOf(o, "speed")}};
     }},
    {"undone",
     [](const json& o) -> Body {
         const std::int64_t sequence = wholeOf(o, "sequence");
         if (sequence < 1) throw Unreadable{};
         return Undone{{DeviceId{textOf(o, "device")}, static_cast<std::uint64_t>(sequence)}};
     }},
    {"clock", [](const json& o) -> Body { return ClockFollowed{instantOf(o, "at")}; }},
};

}  // namespace

std::optional<Body> readKind(std::span<const KindReader> readers, std::string_view kind,
                             std::string_view text) {
    for (const KindReader& reader : readers) {
        if (reader.kind != kind) continue;
        const json object = json::parse(text, nullptr, /*allow_exceptions=*/false);
        if (!object.is_object()) return std::nullopt;
        try {
            return reader.read(object);
        } catch (const Unreadable&) {
            return std::nullopt;
        }
    }
    return std::nullopt;
}

BodyText writeBody(const Body& body) {
    return std::visit(Writer{}, body);
}

Body readBody(std::string_view kind, std::int32_t version, std::string_view text) {
    Unknown kept{std::string(kind), std::string(text)};
    if (version > kBodyVersion) return kept;
    if (auto plain = readKind(kReaders, kind, text)) return *std::move(plain);
    if (auto fact = readSafetyFact(kind, text)) return std::move(*fact);
    if (auto fact = readListFact(kind, text)) return std::move(*fact);
    if (auto fact = readServiceFact(kind, text)) return std::move(*fact);
    if (auto fact = readDebriefFact(kind, text)) return std::move(*fact);
    return readPieceFact(kind, text).value_or(kept);
}

}  // namespace cinder::journal
