// The facts of the debrief as text (codec.h, debrief_facts.h).

#include "journal/body_json.h"

namespace cinder::journal {

namespace {

using nlohmann::json;

constexpr KindReader kReaders[] = {
    {"interrupted",
     [](const json& o) -> Body {
         return TaskInterrupted{taskOf(o), truthOf(o, "interrupted"), instantOf(o, "at")};
     }},
    {"lesson",
     [](const json& o) -> Body {
         return LessonAnswered{textOf(o, "figure"), truthOf(o, "accepted"), wholeOf(o, "value"),
                               instantOf(o, "at")};
     }},
};

}  // namespace

BodyText writeDebriefFact(const TaskInterrupted& o) {
    return textOfBody(
        "interrupted",
        {{"task", o.task.text()}, {"interrupted", o.isInterrupted}, {"at", millis(o.at)}});
}

BodyText writeDebriefFact(const LessonAnswered& o) {
    return textOfBody("lesson", {{"figure", o.figure},
                                 {"accepted", o.isAccepted},
                                 {"value", o.value},
                                 {"at", millis(o.at)}});
}

std::optional<Body> readDebriefFact(std::string_view kind, std::string_view text) {
    return readKind(kReaders, kind, text);
}

}  // namespace cinder::journal
