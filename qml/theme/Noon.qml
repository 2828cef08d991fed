/// Full sun: a linen cloth with charcoal on it. Near-white plates with firm dark edges hold
/// together when the screen is washed out; the two hues are deep enough to read as black does.
Hues {
    name: "noon"
    leastContrast: 7
    ground: "#F3EBDC"
    plate: "#FFFCF5"
    edge: "#2B2521"
    hairline: "#CDBFA9"
    ink: "#221D1A"
    ash: "#4F463E"
    ember: "#842707"
    emberInk: "#FFF6EA"
    emberWash: "#F9E3D3"
    water: "#0E4A5A"
    waterInk: "#F2FBFC"
    waterWash: "#DCEBEC"
    scrim: "#B3221D1A"
    shade: "#99000000"
}
