#include <algorithm>

#include "event/menu.h"
#include "quantity/line.h"

namespace cinder::quantity {

namespace {

using What = Prompt::What;

/// Two-sided, common practice, from memory; one side serves about half.
constexpr std::int32_t kGuestsALine = 100;

template <class Is>
std::vector<DishId> dishesThat(const Line& line, Is is) {
    std::vector<DishId> found;
    for (const Stand& stand : line.stands)
        if (is(stand) && std::find(found.begin(), found.end(), stand.dish) == found.end())
            found.push_back(stand.dish);
    return found;
}

/// Mains that stand before something that is no main, on the same line.
std::vector<DishId> earlyMains(const Line& line) {
    std::vector<DishId> found;
    for (std::size_t i = 0; i < line.stands.size(); ++i) {
        const bool isEarly = line.stands[i].course == event::Course::Main &&
                             std::any_of(line.stands.begin() + static_cast<std::ptrdiff_t>(i),
                                         line.stands.end(), [&](const Stand& later) {
                                             return later.course != event::Course::Main &&
                                                    line.tables[later.table].station ==
                                                        line.tables[line.stands[i].table].station;
                                         });
        if (isEarly && std::find(found.begin(), found.end(), line.stands[i].dish) == found.end())
            found.push_back(line.stands[i].dish);
    }
    return found;
}

}  // namespace

std::vector<Prompt> linePrompts(const event::Event& event, const Line& line) {
    std::vector<Prompt> prompts;
    const auto add = [&](What what, std::vector<DishId> dishes, std::string_view english,
                         std::string_view spanish) {
        if (!dishes.empty()) prompts.push_back({what, std::move(dishes), both(english, spanish)});
    };
    add(What::Wind,
        dishesThat(line, [](const Stand& s) { return s.vessel == event::Vessel::Chafer; }),
        "Chafers: wind guards on, vents open, flames away from the wind",
        "Calientaplatos: cortavientos puestos, rejillas abiertas, llamas lejos del viento");
    add(What::Shade,
        dishesThat(line, [](const Stand& s) { return s.course == event::Course::Cold; }),
        "Cold dishes in the shade, on ice", "Platos fríos a la sombra, sobre hielo");
    add(What::Cover,
        dishesThat(line, [](const Stand& s) { return s.vessel != event::Vessel::Chafer; }),
        "Covered until the bell against dust and insects",
        "Tapado hasta la campana contra polvo e insectos");
    add(What::Riser, dishesThat(line, [](const Stand& s) { return s.isOnRiser; }),
        "Back row on risers that stand still; never a flame on a riser",
        "Fila de atrás sobre elevadores firmes; nunca una llama sobre un elevador");
    add(What::Order, earlyMains(line), "Served mains usually come last along the line",
        "Los principales servidos suelen ir al final de la línea");
    std::vector<DishId> everything = dishesThat(line, [](const Stand&) { return true; });
    if (jointCount(line) > 0)
        add(What::Joint, everything, "Tables tied end to end; nothing stands on a joint",
            "Mesas unidas por los extremos; nada sobre la unión");
    if (event::headCount(event.guests) > kGuestsALine)
        add(What::Second, everything,
            "More than about 100 guests: let them pass on both sides, or set a second line",
            "Más de unas 100 personas: que pasen por ambos lados, o pon otra línea");
    return prompts;
}

}  // namespace cinder::quantity
