#include "safety/cautions.h"

namespace cinder::safety {

std::span<const Caution> cautions() {
    static constexpr Caution kCautions[] = {
        {"knives", Topic::Hands,
         "Cut-resistant glove, cut away from the hand; carry knives point down in a sheath, never "
         "leave one in a wash bucket.",
         "Guante anticorte, cortar alejando la hoja de la mano; llevar los cuchillos con la punta "
         "abajo y en funda, nunca dejar uno en la cubeta de lavado.",
         "OSHA eTool, young workers in restaurants (gloves; carrying and bucket from memory)",
         "OSHA eTool, jóvenes que trabajan en restaurantes (guantes; cómo llevarlos y la cubeta, "
         "de memoria)",
         true, "Cut-resistant glove, clean board: never where raw meat lay.",
         "Guante anticorte, tabla limpia: nunca donde hubo carne cruda."},
        {"steam", Topic::Hands, "Open lids, chafers and foil away from the face: steam burns.",
         "Abrir tapas, calientaplatos y papel aluminio lejos de la cara: el vapor quema.",
         "OSHA, Young Worker Safety in Restaurants (burns)",
         "OSHA, Young Worker Safety in Restaurants (quemaduras)", true},
        {"burn-aid", Topic::Hands,
         "Cool a burn under cool running water; a large, deep, face or hand burn is an emergency.",
         "Enfriar una quemadura con agua corriente fresca; si es grande, profunda, de cara o de "
         "mano, es urgencia.",
         "general first-aid guidance", "guías generales de primeros auxilios", false},
        {"heat", Topic::Weather,
         "The heat chart assumes shade and light wind: full sun adds up to 15 °F (8 °C), a fire "
         "more. Rest, shade and water come sooner than it says.",
         "La tabla de calor supone sombra y poco viento: a pleno sol suma hasta 8 °C (15 °F), "
         "junto al fuego más. Descanso, sombra y agua llegan antes de lo que dice.",
         "US National Weather Service, heat index chart notes (the remark about the fire is ours)",
         "US National Weather Service, notas de la tabla de índice de calor (lo del fuego es "
         "nuestro)",
         true},
        {"heat-stroke", Topic::Weather,
         "Hot, dry or red skin, confusion or fainting: call for help and cool the person.",
         "Piel caliente, seca o roja, confusión o desmayo: pedir ayuda y enfriar a la persona.",
         "national heat-illness guidance (the signs; cooling from memory)",
         "guías nacionales sobre enfermedades por calor (las señales; enfriar, de memoria)", true},
        {"lightning", Topic::Weather,
         "Thunder heard: everyone into a building or a closed metal-topped vehicle until 30 "
         "minutes after the last clap. A tent is no shelter.",
         "Si truena: todos a un edificio o vehículo cerrado con techo de metal hasta 30 minutos "
         "después del último trueno. Una carpa no es refugio.",
         "US National Weather Service, lightning safety (tents by the same reasoning)",
         "US National Weather Service, seguridad ante rayos (las carpas, por el mismo motivo)",
         true},
        {"wind", Topic::Weather,
         "Weigh down every leg of a canopy, put the fire downwind of guests, and stop cooking when "
         "sparks travel.",
         "Poner peso en cada pata de la carpa, el fuego a sotavento de los invitados, y parar de "
         "cocinar cuando vuelan chispas.",
         "event weather practice", "práctica de eventos al aire libre", false},
        {"red-flag", Topic::Weather,
         "A red-flag day or a local burn ban can forbid open charcoal altogether: check on the "
         "morning of the event.",
         "Un día de alerta roja o una veda local puede prohibir el carbón al aire libre: revisar "
         "la mañana del evento.",
         "US National Weather Service and local fire rules",
         "US National Weather Service y reglas locales contra incendios", false},
        {"hot-and-cold", Topic::Food,
         "Cold food at 41 °F (5 °C) or below, hot food at 135 °F (57 °C) or above; discard after 4 "
         "hours when neither is kept.",
         "Comida fría a 5 °C (41 °F) o menos, caliente a 57 °C (135 °F) o más; desechar a las 4 "
         "horas si no se mantiene ninguna.",
         "FDA Food Code 2022, 3-501.16 and 3-501.19", "FDA Food Code 2022, 3-501.16 y 3-501.19",
         true, "Hot food 135 °F (57 °C) or above, cold food 41 °F (5 °C) or below.",
         "Caliente a 57 °C (135 °F) o más, frío a 5 °C (41 °F) o menos."},
        {"hot-day", Topic::Food,
         "In air above 90 °F (32 °C) the consumer limit for food left out is one hour.",
         "Con aire a más de 32 °C (90 °F), el límite doméstico para comida fuera es una hora.",
         "USDA FSIS", "", true},
        {"hand-washing", Topic::Food,
         "Wash hands 20 seconds with running water before food work, after raw meat, after fuel, "
         "after the toilet; the station stands before food is opened.",
         "Lavarse las manos 20 segundos con agua corriente antes de tocar comida, tras la carne "
         "cruda, el combustible y el baño; el lavamanos se pone antes de abrir la comida.",
         "FDA Food Code 2022, 2-301.12 and 2-301.14 (after fuel is ours)",
         "FDA Food Code 2022, 2-301.12 y 2-301.14 (lo del combustible es nuestro)", true},
        {"allergens", Topic::Food,
         "Say in writing which dishes hold any of the nine major allergens, one spoon for each "
         "dish, and say you do not know rather than guess.",
         "Decir por escrito qué platos llevan alguno de los nueve alérgenos principales, una "
         "cuchara por plato, y decir que no se sabe antes que adivinar.",
         "FDA, list of nine; FDA Food Code 2022, written notice (buffet habits from memory)",
         "FDA, lista de los nueve; FDA Food Code 2022, aviso por escrito (las costumbres del bufé, "
         "de memoria)",
         true},
        {"allergic-reaction", Topic::Food,
         "Hives, swelling of face or throat, or trouble breathing after eating: call for help at "
         "once.",
         "Ronchas, hinchazón de cara o garganta, o dificultad para respirar tras comer: pedir "
         "ayuda de inmediato.",
         "general allergy first aid", "primeros auxilios generales para alergias", false},
        {"undercooked", Topic::Food,
         "Food offered undercooked needs a written disclosure and reminder.",
         "La comida ofrecida poco cocida requiere aviso y recordatorio por escrito.",
         "FDA Food Code 2022, 3-603.11", "", true},
        {"sick", Topic::People,
         "Anyone with vomiting, diarrhoea, jaundice or an infected open wound keeps away from "
         "food.",
         "Quien tenga vómito, diarrea, ictericia o una herida infectada abierta no se acerca a la "
         "comida.",
         "FDA Food Code 2022, 2-201", "", false},
        {"permit", Topic::People,
         "Food service away from the base kitchen usually needs a permit for the event; tents "
         "above a set size often one too. Ask early.",
         "Servir comida fuera de la cocina base suele requerir permiso para el evento; las carpas "
         "grandes también. Preguntar con tiempo.",
         "Washoe County (Nevada), temporary food rules; Indiana University, tent page",
         "Washoe County (Nevada), reglas para puestos temporales de comida; Indiana University, "
         "página sobre carpas",
         true},
        {"manager", Topic::People,
         "The person in charge should be a certified food protection manager.",
         "La persona a cargo debe ser gerente certificado en protección de alimentos.",
         "FDA Food Code 2022, 2-102.12, as adopted in Virginia",
         "FDA Food Code 2022, 2-102.12, como se adoptó en Virginia", true},
        {"ages", Topic::People,
         "US federal rules keep workers under 16 from most cooking and under 18 from powered "
         "slicers.",
         "En EE. UU. las reglas federales alejan a menores de 16 de casi toda la cocina y a "
         "menores de 18 de las rebanadoras.",
         "OSHA, Young Worker Safety in Restaurants", "", true},
    };
    return kCautions;
}

}  // namespace cinder::safety
