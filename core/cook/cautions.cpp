#include "cook/cautions.h"

namespace cinder::cook {

std::span<const FireCaution> fireCautions() {
    static constexpr FireCaution kCautions[] = {
        {"carbon-monoxide", FireMoment::Always,
         "Burn charcoal only in the open air, never in a tent, vehicle, trailer or building: its "
         "gas kills and has no smell. An open flap or a fan does not make it safe.",
         "Quemar carbón solo al aire libre, nunca en carpa, vehículo, remolque o edificio: su gas "
         "mata y no huele. Una puerta abierta o un ventilador no lo hacen seguro.",
         "US Consumer Product Safety Commission, Document 5012", "", Checked::Read,
         "Open air only: burning charcoal gives off a deadly gas with no smell.",
         "Solo al aire libre: el carbón encendido suelta un gas mortal sin olor."},
        {"carbon-monoxide-signs", FireMoment::Always,
         "Headache, drowsiness, dizziness, weakness, nausea or confusion near burning charcoal: "
         "fresh air at once, and call for help.",
         "Dolor de cabeza, sueño, mareo, debilidad, náusea o confusión junto al carbón encendido: "
         "aire fresco de inmediato y pedir ayuda.",
         "US Consumer Product Safety Commission, Document 5012 (the signs; the advice from memory)",
         "US Consumer Product Safety Commission, Document 5012 (las señales; el consejo, de "
         "memoria)",
         Checked::Read},
        {"starter-fluid", FireMoment::Lighting,
         "Starter fluid on cold charcoal only: let it soak in, close the can, move it away. Never "
         "on warm, glowing or lit coals.",
         "Líquido encendedor solo sobre carbón frío: dejar que penetre, cerrar el bote y alejarlo. "
         "Nunca sobre brasas tibias, rojas o encendidas.",
         "published grill-safety lists (the ban); NFPA tip sheet and soaking in from memory",
         "listas publicadas de seguridad al asar (la prohibición); la hoja de NFPA y dejar que "
         "penetre, de memoria",
         Checked::Read, "Starter fluid on cold charcoal only, never on warm coals.",
         "Líquido encendedor solo sobre carbón frío, nunca sobre brasas."},
        {"other-fuels", FireMoment::Lighting, "Never gasoline, kerosene or alcohol on charcoal.",
         "Nunca gasolina, queroseno ni alcohol sobre el carbón.",
         "Emergency Medical Services Authority (Oklahoma), charcoal page",
         "Emergency Medical Services Authority (Oklahoma), página sobre el carbón", Checked::Read},
        {"clearance", FireMoment::Lighting,
         "At least 3 m (10 ft) from any structure, never under an overhang; many places ask more "
         "beside tents.",
         "Al menos 3 m (10 ft) de toda construcción, nunca bajo un alero; muchos lugares piden más "
         "junto a carpas.",
         "NFPA 1, Fire Code, 10.10.6 (numbering by edition)",
         "NFPA 1, Fire Code, 10.10.6 (el número cambia con la edición)", Checked::Read},
        {"extinguisher", FireMoment::Lighting,
         "A charged extinguisher of at least 2-A:10-B:C at the fire, and water at hand for coals.",
         "Un extintor cargado de al menos 2-A:10-B:C junto al fuego, y agua a mano para las "
         "brasas.",
         "city special-event vendor rules (the rating); water from memory",
         "reglas municipales para vendedores en eventos (la clase del extintor); el agua, de "
         "memoria",
         Checked::Read},
        {"never-alone", FireMoment::Always,
         "Never leave a lit fire alone, from lighting to cold ash.",
         "Nunca dejar solo un fuego encendido, desde que se prende hasta la ceniza fría.",
         "City of Dubuque (Iowa), vendor cooking rules",
         "City of Dubuque (Iowa), reglas de cocina para vendedores", Checked::Read},
        {"hot-grease", FireMoment::OverCoals,
         "Dripping fat flares up: move pieces to the cool side and stand back. No water on burning "
         "fat.",
         "La grasa que gotea levanta llama: pasar las piezas al lado frío y apartarse. Nada de "
         "agua sobre grasa ardiendo.",
         "NFPA 10, classes of fire (fats are no water fire)",
         "NFPA 10, clases de fuego (la grasa no se apaga con agua)", Checked::FromMemory,
         "Fat flares up: to the cool side, and stand back. No water on burning fat.",
         "La grasa se enciende: al lado frío, y apartarse. Nada de agua sobre grasa ardiendo."},
        {"burns", FireMoment::OverCoals,
         "Long cotton sleeves, heat gloves, dry cloths: a wet cloth passes heat.",
         "Mangas largas de algodón, guantes para calor, trapos secos: un trapo mojado deja pasar "
         "el calor.",
         "OSHA, Young Worker Safety in Restaurants (burns)",
         "OSHA, Young Worker Safety in Restaurants (quemaduras)", Checked::Read,
         "Dry cloths and heat gloves: a wet cloth passes heat.",
         "Trapos secos y guantes: un trapo mojado deja pasar el calor."},
        {"thermometer", FireMoment::Doneness,
         "Thermometer over touch: thickest part, away from bone. Colour does not show doneness, "
         "and a forecast never says safe.",
         "Termómetro antes que tacto: parte más gruesa, lejos del hueso. El color no indica "
         "cocción, y un pronóstico nunca dice que es seguro.",
         "USDA FSIS, probe placement (colour from memory; the forecast is ours)",
         "USDA FSIS, dónde va la sonda (el color, de memoria; lo del pronóstico es nuestro)",
         Checked::Read,
         "Thermometer over touch: thickest part, away from bone. Colour does not show doneness.",
         "Termómetro antes que tacto: parte más gruesa, lejos del hueso. El color no indica "
         "cocción."},
        {"clean-plate", FireMoment::Doneness,
         "Cooked meat goes into a clean pan with clean tongs, never back where raw meat lay.",
         "La carne cocida va a una charola limpia con pinzas limpias, nunca de vuelta donde estuvo "
         "la cruda.",
         "USDA FSIS", "", Checked::Read},
        {"hot-ash", FireMoment::Ash,
         "Treat all ash and coals as hot: soak them, carry them in closed metal away from anything "
         "that burns, never in a van or indoors while they may glow.",
         "Tratar toda ceniza y brasa como caliente: empaparla, llevarla en metal cerrado lejos de "
         "lo que arde, nunca en la camioneta ni bajo techo mientras pueda estar viva.",
         "Kitsap County (Washington) fire bulletin; CPSC release 99-051",
         "Kitsap County (Washington), boletín sobre incendios; CPSC, comunicado 99-051",
         Checked::Read,
         "Treat all ash as hot: soak it, carry it in closed metal, never indoors or in the van "
         "while it may glow.",
         "Toda ceniza está caliente: mójela, llévela en metal cerrado, nunca dentro ni en la "
         "camioneta si puede arder."},
    };
    return kCautions;
}

}  // namespace cinder::cook
