/// After sunset beside a fire: charcoal, with linen for ink, so that nothing glares and eyes stay
/// used to the dark. Ember glows as coals do; water is pale.
Hues {
    name: "dusk"
    leastContrast: 4.5
    ground: "#191614"
    plate: "#25201D"
    edge: "#6B5F55"
    hairline: "#40372F"
    ink: "#EFE5D5"
    ash: "#B3A698"
    ember: "#FF8F52"
    emberInk: "#1E110A"
    emberWash: "#3A2218"
    water: "#93CBD6"
    waterInk: "#0C1A1E"
    waterWash: "#1B2E33"
    scrim: "#CC0E0C0B"
    shade: "#99000000"
}
