#include "report/sheet_parts.h"

#include "event/menu.h"

namespace cinder::report {

Document sheetFor(const event::Event& event, std::string title, const Style& style) {
    Document document;
    document.title = std::move(title);
    document.language = style.language;
    document.subtitle =
        style.name(event.name) + " · " +
        amountText({static_cast<double>(event::headCount(event.guests)), quantity::Unit::Guests},
                   style) +
        " · " + style.say("serve ", "servir ") + dayText(event.serve.at, event.serve.offset, style);
    return document;
}

void addHoles(Document& document, const quantity::Reckoning& all, const Style& style) {
    if (all.faults.empty()) return;
    std::string text = style.say("Not complete: ", "Incompleto: ") +
                       std::to_string(all.faults.size()) +
                       style.say(" fields are missing or contradict each other:",
                                 " campos faltan o se contradicen:");
    for (const event::Fault& fault : all.faults)
        text += " " + fault.path;
    document.blocks.emplace_back(Note{std::move(text), true});
}

void addFoodCode(Document& document, const Style& style) {
    document.blocks.emplace_back(
        Note{style.say("Local codes and the licensed food protection manager decide. A thermometer "
                       "decides what is done, cold or hot enough.",
                       "Deciden los códigos locales y el responsable certificado de inocuidad. El "
                       "termómetro decide qué está cocido, frío o caliente."),
             true});
}

std::string dishName(const event::Event& event, const DishId& dish, const Style& style) {
    for (const event::Dish& one : event.menu)
        if (one.id == dish) return style.name(one.name);
    return dish.text();
}

}  // namespace cinder::report
