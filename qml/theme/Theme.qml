pragma Singleton
import QtQuick

/// The palette in force. Everything coloured binds to `Theme.<role>`.
QtObject {
    id: root

    property bool isDusk: false
    readonly property Hues hues: isDusk ? dusk : noon
    readonly property Hues noon: Noon {}
    readonly property Hues dusk: Dusk {}

    readonly property color ground: hues.ground
    readonly property color plate: hues.plate
    readonly property color edge: hues.edge
    readonly property color hairline: hues.hairline
    readonly property color ink: hues.ink
    readonly property color ash: hues.ash
    readonly property color ember: hues.ember
    readonly property color emberInk: hues.emberInk
    readonly property color emberWash: hues.emberWash
    readonly property color water: hues.water
    readonly property color waterInk: hues.waterInk
    readonly property color waterWash: hues.waterWash
    readonly property color scrim: hues.scrim
    readonly property color shade: hues.shade
    readonly property color none: "transparent"
}
