#include "app/from_plan.h"
#include "cli/commands.h"
#include "cli/document_text.h"
#include "cli/event_file.h"
#include "cli/figures_json.h"
#include "cli/planned_day.h"
#include "quantity/build/reckon.h"
#include "report/csv.h"
#include "report/sheets.h"

namespace cinder::cli {

namespace {

/// The plan says how long each fire cooks, and when the crew has to be there if the event does not.
/// No plan is no obstacle: the list then says that the arrival is missing.
quantity::FromPlan askPlan(const event::Event& event, const Options& options, const Clock& clock) {
    plan::Search search;
    search.seed = options.seed;
    search.budget.schedules = options.schedules;
    const auto day = planDay(event, search, clock);
    if (!day) return {};
    return app::fromPlan(day->event, day->problem, day->plan.schedule);
}

report::Style styleOf(const Options& options) {
    report::Style style;
    style.language = options.language.starts_with("es") ? "es" : "en";
    if (options.isCustomary) {
        style.measures = report::Measures::Customary;
        style.hours = report::Hours::Twelve;
    }
    return style;
}

Outcome<std::string> oneAsCsv(const event::Event& event, const quantity::Reckoning& all,
                              const std::string& name, const report::Style& style) {
    if (name == "pack") return report::csv(report::packTable(all, style));
    for (const report::Document& document :
         {report::quantitySheet(event, all, style), report::purchaseList(event, all, style),
          report::kitchenSheet(event, all, style), report::buffetPlan(event, all, style)})
        for (const report::Table* table : report::tablesOf(document))
            if (table->name == name) return report::csv(*table);
    return fail(Failure{ExitCode::Usage, "there is no list \"" + name +
                                             "\"; write dishes, purchase, kitchen, line or pack"});
}

std::string faultsText(const quantity::Reckoning& all) {
    if (all.faults.empty()) return "nothing is missing and nothing contradicts\n";
    std::string text =
        std::to_string(all.faults.size()) + " to settle before the lists are whole\n";
    for (const event::Fault& fault : all.faults)
        text += "  " + event::describe(fault) + "\n";
    return text;
}

}  // namespace

Outcome<std::string> listQuantities(const Options& options, const Clock& clock) {
    const auto event = readEvent(options.file);
    if (!event) return fail(event.error());
    const auto all = quantity::reckon(*event, askPlan(*event, options, clock));
    if (options.isJson) return figuresJson(*event, all, options.language);
    const report::Style style = styleOf(options);
    if (options.csv) return oneAsCsv(*event, all, *options.csv, style);
    std::string text;
    for (const report::Document& document :
         {report::quantitySheet(*event, all, style), report::purchaseList(*event, all, style),
          report::kitchenSheet(*event, all, style), report::buffetPlan(*event, all, style),
          report::packSheet(*event, all, style)})
        text += documentText(document) + "\n";
    return text + faultsText(all);
}

}  // namespace cinder::cli
