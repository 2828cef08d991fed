#include <sys/resource.h>

#include <nlohmann/json.hpp>

#include "cli/commands.h"
#include "cli/event_file.h"
#include "cli/run_sheet_text.h"
#include "event/json.h"

namespace cinder::cli {

namespace {

using Json = nlohmann::ordered_json;

/// The most memory this process ever held; getrusage counts it in KiB on Linux, in bytes on macOS.
std::optional<std::int64_t> peakKibibytes() {
    rusage usage{};
    if (getrusage(RUSAGE_SELF, &usage) != 0) return std::nullopt;
#ifdef __APPLE__
    return usage.ru_maxrss / 1024;
#else
    return usage.ru_maxrss;
#endif
}

/// The faults of a document as JSON on standard output: finding them is what was asked for.
Outcome<std::string> checkToJson(const Options& options) {
    const auto text = readText(options.file);
    if (!text) return fail(text.error());
    const auto event = event::parse(*text);
    Json faults = Json::array();
    if (!event) {
        for (const event::Fault& fault : event.error()) {
            Json one = {{"path", fault.path},
                        {"found", fault.found},
                        {"allowed", fault.allowed},
                        {"words", event::describe(fault)}};
            if (fault.place) {
                one["line"] = fault.place->line;
                one["column"] = fault.place->column;
            }
            faults.push_back(one);
        }
    }
    const std::string json = Json{{"isValid", event.has_value()}, {"faults", faults}}.dump(
        2, ' ', false, Json::error_handler_t::replace);
    if (!event) return fail(Failure{ExitCode::BadEvent, json});
    return json + "\n";
}

}  // namespace

Outcome<std::string> checkEvent(const Options& options) {
    if (options.isJson) return checkToJson(options);
    const auto event = readEvent(options.file);
    if (!event) return fail(event.error());
    std::string words = options.file.string() + ": no fault; " +
                        std::to_string(event::headCount(event->guests)) + " guests, " +
                        std::to_string(event->menu.size()) + " dishes, " +
                        std::to_string(event->crew.size()) + " crew\n";
    if (event->isReadOnly()) words += "made by a newer version: it is shown, never written\n";
    return words;
}

Outcome<std::string> planEvent(const Options& options, const Clock& clock) {
    auto event = readEvent(options.file);
    if (!event) return fail(event.error());
    plan::Search search;
    search.seed = options.seed;
    search.budget.schedules = options.schedules;
    const auto day = planDay(*std::move(event), search, clock);
    if (!day) return fail(day.error());
    if (!day->violations.empty()) return fail(Failure{ExitCode::BrokenPlan, verdict(*day)});
    const Cost cost{day->searched, peakKibibytes()};
    return options.isJson ? runSheetJson(*day, options.language, cost)
                          : runSheetText(*day, options.language, cost);
}

}  // namespace cinder::cli
