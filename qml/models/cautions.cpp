#include "cautions.h"

#include <QCoreApplication>

namespace cinder::face {

QString cautionFor(plan::TaskKind kind) {
    switch (kind) {
        case plan::TaskKind::Fire:
            // Open air, gas: US Consumer Product Safety Commission, Document 5012 (carbon monoxide
            // from charcoal). Fluid on cold coals only: the NFPA grilling tip sheet, from memory.
            return QCoreApplication::translate(
                "Cautions",
                "Open air only: burning charcoal gives off a deadly gas with no smell. Starter "
                "fluid on cold charcoal only, never on warm coals.");
        case plan::TaskKind::Cook:
        case plan::TaskKind::Check:
            // USDA FSIS, Food Thermometers: thickest part, away from bone; colour does not show it.
            return QCoreApplication::translate(
                "Cautions",
                "Thermometer over touch: thickest part, away from bone. Colour does not show "
                "doneness.");
        case plan::TaskKind::Warm:
            // OSHA, Young Worker Safety in Restaurants (burns): dry cloths, gloves.
            return QCoreApplication::translate(
                "Cautions", "Dry cloths and heat gloves: a wet cloth passes heat.");
        case plan::TaskKind::Slice:
            // OSHA eTool, restaurants, food preparation: cut-resistant gloves. Clean board and
            // tongs: USDA FSIS, cross-contamination.
            return QCoreApplication::translate(
                "Cautions", "Cut-resistant glove, clean board: never where raw meat lay.");
        case plan::TaskKind::Hold:
        case plan::TaskKind::Load:
            // FDA Food Code 2022, 3-501.16: 135 degF (57 degC) hot, 41 degF (5 degC) cold.
            return QCoreApplication::translate(
                "Cautions", "Hot food 135 °F (57 °C) or above, cold food 41 °F (5 °C) or below.");
        case plan::TaskKind::Strike:
            // Insurers' and county fire bulletins: ash is hot for days, metal container, wet it.
            return QCoreApplication::translate(
                "Cautions",
                "Treat all ash as hot: soak it, carry it in closed metal, never indoors or in the "
                "van while it may glow.");
        default:
            return {};
    }
}

QString deference() {
    return QCoreApplication::translate("Cautions",
                                       "Local fire and health codes and licensed practice decide.");
}

}  // namespace cinder::face
