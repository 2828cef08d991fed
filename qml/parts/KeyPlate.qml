import QtQuick
import Cinderbell.Theme

/// One key of a keypad; without a symbol it is a gap in the grid.
PressPlate {
    id: root

    required property string symbol

    opacity: root.symbol === "" ? 0 : 1
    enabled: root.symbol !== ""
    size: Type.title
    text: root.symbol === "<" || root.symbol === "" ? "" : root.symbol === "-" ? "−" : root.symbol
    glyph: root.symbol === "<" ? Icons.erase : ""
    Accessible.ignored: root.symbol === ""
    Accessible.name: root.symbol === "<" ? qsTr("Erase") : root.symbol === "-" ? qsTr("Minus") : root.symbol
}
