#include "report/record_sheet.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>

#include "report/sheet_parts.h"
#include "safety/record.h"
#include "safety/standing.h"
#include "safety/thermometer.h"

namespace cinder::report {

namespace {

std::string tenths(double value) {
    std::array<char, 32> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.1f", value);
    return buffer.data();
}

/// On the scale it was read on, to a tenth as it is keyed in.
std::string readingText(const safety::Reading& reading) {
    return reading.scale == safety::Scale::Celsius ? tenths(reading.value.celsius()) + " °C"
                                                   : tenths(reading.value.fahrenheit()) + " °F";
}

std::string entryText(const safety::EntryId& id) {
    return id.device.text() + "-" + std::to_string(id.sequence);
}

/// One entry in words: what it is about and what it says.
struct Said {
    std::string subject;
    std::string what;
    std::string value;
    std::string thermometer;
};

class Teller {
  public:
    Teller(const live::Day& day, const safety::Limits& limits, const Style& style)
        : day_(day), limits_(limits), style_(style) {}

    Said operator()(const safety::FoodMeasured& o) const {
        std::string what = word(o.purpose, style_);
        if (o.held) what += ", " + spanText(*o.held, style_);
        what += originText(o.from);
        if (o.corrects)
            what +=
                style_.say("; corrects ", "; corrige ") + entryText(*o.corrects) + ": " + o.reason;
        return {panText(o.pan), std::move(what), readingText(o.reading), o.thermometer.text()};
    }
    Said operator()(const safety::ActionTaken& o) const {
        return {entryText(o.entry),
                style_.say("corrective action: ", "acción correctiva: ") + word(o.action, style_),
                {},
                {}};
    }
    Said operator()(const safety::ControlLeft& o) const {
        return {panText(o.pan),
                style_.say("time control starts, ", "empieza el control de tiempo, ") +
                    spanText(limits_.length(safety::spanOf(o.rule)), style_) + originText(o.from),
                readingText(o.reading), o.thermometer.text()};
    }
    Said operator()(const safety::CoolingBegun& o) const {
        return {panText(o.pan), style_.say("cooling begins", "empieza el enfriado"), {}, {}};
    }
    Said operator()(const safety::PanDiscarded& o) const {
        return {panText(o.pan), style_.say("discarded", "desechado"), {}, {}};
    }
    Said operator()(const safety::PanKept& o) const {
        return {panText(o.pan), style_.say("kept", "guardado"), {}, {}};
    }
    Said operator()(const safety::ThermometerTested& o) const {
        return {o.thermometer.text(),
                isAccurate(o) ? style_.say("ice point, passed", "punto de hielo, correcto")
                              : style_.say("ice point, FAILED", "punto de hielo, FALLÓ"),
                readingText(o.reading), o.thermometer.text()};
    }
    Said operator()(const safety::FireItemReady& o) const {
        return {style_.say("before the fire", "antes del fuego"), word(o.item, style_), {}, {}};
    }
    Said operator()(const safety::FireItemSkipped& o) const {
        return {style_.say("before the fire", "antes del fuego"),
                style_.say("SKIPPED: ", "OMITIDO: ") + word(o.item, style_) +
                    (o.reason.empty() ? "" : " (" + o.reason + ")"),
                {},
                {}};
    }
    Said operator()(const safety::LocalRulesNamed& o) const {
        std::string what;
        for (const safety::LocalLimit& local : o.rules.limits) {
            const auto* reading = std::get_if<safety::Reading>(&local.value);
            what += (what.empty() ? "" : ", ") + local.field + " " +
                    (reading ? readingText(*reading)
                             : spanText(std::get<Duration>(local.value), style_));
        }
        return {o.rules.authority, std::move(what), {}, {}};
    }
    Said operator()(const safety::RecordSigned& o) const {
        return {o.name, style_.say("signed ", "firmado ") + o.certificate, {}, {}};
    }

    std::string originText(std::optional<std::int32_t> from) const {
        if (!from) return {};
        return style_.say(", filled out of pan ", ", llenada de la charola ") +
               std::to_string(*from);
    }
    std::string panText(const safety::Pan& pan) const {
        std::string text = day_.event ? dishName(*day_.event, pan.dish, style_) : pan.dish.text();
        if (pan.number > 0) text += style_.say(", pan ", ", charola ") + std::to_string(pan.number);
        return text;
    }
    std::string personText(const std::optional<PersonId>& person) const {
        if (!person) return {};
        for (const auto& one : day_.crew)
            if (one.person == *person) return one.name;
        return person->text();
    }

  private:
    const live::Day& day_;
    const safety::Limits& limits_;
    const Style& style_;
};

Table entryTable(const live::Day& day, const Teller& teller, const Style& style) {
    Table table;
    table.name = "record";
    table.columns = {{style.say("Time", "Hora"), Align::Start, 2},
                     {style.say("About", "Sobre"), Align::Start, 3},
                     {style.say("What", "Qué"), Align::Start, 4},
                     {style.say("Reading", "Lectura"), Align::End, 2},
                     {style.say("Thermometer", "Termómetro"), Align::Start, 3},
                     {style.say("By", "Por"), Align::Start, 2},
                     {style.say("Entry", "Entrada"), Align::Start, 2}};
    const UtcOffset offset = day.event ? day.event->serve.offset : UtcOffset{0};
    for (const safety::Entry& entry : day.record) {
        Said said = std::visit(teller, entry.fact);
        if (entry.isTakenBack) said.what = style.say("[taken back] ", "[anulado] ") + said.what;
        table.rows.push_back(
            {{timeText(instantOf(entry.fact), offset, style), said.subject, said.what, said.value,
              said.thermometer, teller.personText(entry.person), entryText(entry.id)},
             false});
    }
    return table;
}

/// How many entries each device has on this sheet and which is its last. What is later found to end
/// sooner was cut off, which no chain shows by itself.
std::string endsText(const live::Day& day, const Style& style) {
    struct End {
        std::size_t count = 0;
        std::uint64_t last = 0;
    };
    std::map<DeviceId, End> ends;
    for (const safety::Entry& entry : day.record) {
        End& end = ends[entry.id.device];
        ++end.count;
        end.last = std::max(end.last, entry.id.sequence);
    }
    std::string text;
    for (const auto& [device, end] : ends)
        text += (text.empty() ? "" : "; ") + device.text() + ": " + std::to_string(end.count) +
                style.say(end.count == 1 ? " entry, last " : " entries, last ",
                          end.count == 1 ? " entrada, última " : " entradas, última ") +
                entryText({device, end.last});
    return text.empty() ? style.say("None", "Ninguna") : text;
}

std::string standingText(const safety::Standing& standing, UtcOffset offset, const Style& style) {
    if (standing.control == safety::Control::Discarded) return style.say("discarded", "desechado");
    if (standing.lost)
        return word(standing.lost->why, style) + style.say(", since ", ", desde ") +
               timeText(standing.lost->at, offset, style);
    if (!standing.open.empty())
        return std::to_string(standing.open.size()) +
               style.say(" readings out of limit are open", " lecturas fuera de límite abiertas");
    if (standing.time)
        return style.say("time control, discard at ", "control de tiempo, desechar a las ") +
               timeText(standing.time->discardAt, offset, style);
    if (standing.control == safety::Control::Cooling)
        return style.say("cooling, next by ", "enfriando, siguiente a las ") +
               timeText(standing.cooling->by, offset, style);
    if (standing.control == safety::Control::None)
        return style.say("nothing on record", "sin registro");
    return style.say("in control", "bajo control");
}

Table panTable(const live::Day& day, const std::vector<safety::FoodPlan>& plans, Instant now,
               const Teller& teller, const Style& style) {
    Table table;
    table.name = "pans";
    table.columns = {{style.say("Dish and pan", "Plato y charola"), Align::Start, 3},
                     {style.say("How it stands", "Cómo está"), Align::Start, 4},
                     {style.say("Left over", "Sobrante"), Align::Start, 2}};
    const safety::Limits limits = safety::limitsIn(day.record, now);
    const UtcOffset offset = day.event ? day.event->serve.offset : UtcOffset{0};
    for (const safety::FoodPlan& plan : plans)
        for (const safety::Pan& pan : safety::pansOf(plan.dish, day.record)) {
            const auto standing = safety::standingOf(pan, plan.rule, limits, day.record, now);
            table.rows.push_back({{teller.panText(pan), standingText(standing, offset, style),
                                   word(standing.leftover, style)},
                                  standing.lost || !standing.open.empty()});
        }
    return table;
}

}  // namespace

Document recordSheet(const live::Day& day, const std::vector<safety::FoodPlan>& plans, Instant now,
                     const Style& style) {
    const std::string title = style.say("Food-safety record", "Registro de inocuidad");
    Document document;
    if (day.event)
        document = sheetFor(*day.event, title, style);
    else
        document.title = title;
    document.language = style.language;
    const safety::Limits limits = safety::limitsIn(day.record, now);
    const Teller teller(day, limits, style);
    const UtcOffset offset = day.event ? day.event->serve.offset : UtcOffset{0};
    const std::string& authority = limits.authority();
    document.blocks.emplace_back(Note{
        style.say("Limits: FDA Food Code 2022", "Límites: FDA Food Code 2022") +
            (authority.empty() ? ""
                               : style.say(", stricter by ", ", más estrictos por ") + authority) +
            style.say(". As of ", ". Hasta ") + dayText(now, offset, style) + ".",
        false});
    document.blocks.emplace_back(Heading{style.say("Pans", "Charolas"), 1});
    document.blocks.emplace_back(panTable(day, plans, now, teller, style));
    document.blocks.emplace_back(Heading{style.say("Entries", "Entradas"), 1});
    document.blocks.emplace_back(entryTable(day, teller, style));
    document.blocks.emplace_back(
        Note{style.say("Entries are never changed: a correction is a new entry, and what was taken "
                       "back stays to be seen. Each device's entries are chained by a hash; "
                       "'bellman verify' names the first one that is not as it was written.",
                       "Las entradas nunca se cambian: una corrección es una entrada nueva y lo "
                       "anulado queda a la vista. Las entradas de cada aparato van encadenadas; "
                       "'bellman verify' nombra la primera que no está como se escribió."),
             false});
    document.blocks.emplace_back(
        Note{style.say("On this sheet: ", "En esta hoja: ") + endsText(day, style) +
                 style.say(". A record that later ends sooner was cut off.",
                           ". Un registro que luego termina antes fue recortado."),
             false});
    if (const auto signature = safety::signatureOf(day.record))
        document.blocks.emplace_back(Note{style.say("Signed: ", "Firmado: ") + signature->name +
                                              " " + signature->certificate + ", " +
                                              dayText(signature->at, offset, style),
                                          false});
    else
        document.blocks.emplace_back(
            Blank{style.say("Signed, person in charge", "Firma, persona a cargo")});
    addFoodCode(document, style);
    return document;
}

Table recordTable(const live::Day& day) {
    const Style style;
    const safety::Limits limits = safety::limitsIn(day.record, Instant::max());
    const Teller teller(day, limits, style);
    Table table;
    table.name = "record";
    for (const char* head : {"entry", "at", "written", "person", "about", "what", "celsius",
                             "fahrenheit", "thermometer", "taken_back"})
        table.columns.push_back({head, Align::Start, 1});
    const UtcOffset offset = day.event ? day.event->serve.offset : UtcOffset{0};
    for (const safety::Entry& entry : day.record) {
        const Said said = std::visit(teller, entry.fact);
        std::optional<safety::Reading> reading;
        const auto find = [&](const auto& fact) {
            if constexpr (requires { fact.reading; }) reading = fact.reading;
        };
        std::visit(find, entry.fact);
        table.rows.push_back(
            {{entryText(entry.id), formatRfc3339({instantOf(entry.fact), offset}),
              formatRfc3339({entry.written, offset}), teller.personText(entry.person), said.subject,
              said.what, reading ? tenths(reading->value.celsius()) : "",
              reading ? tenths(reading->value.fahrenheit()) : "", said.thermometer,
              entry.isTakenBack ? "yes" : "no"},
             false});
    }
    return table;
}

}  // namespace cinder::report
