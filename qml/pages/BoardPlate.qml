import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// A board to choose: its drawing, its name, and what it is for.
T.AbstractButton {
    id: root

    required property string glyph
    required property string what
    property bool isRow: false

    implicitHeight: root.isRow ? Space.hurried : Space.hurried * 1.8
    Accessible.role: Accessible.Button
    Accessible.name: root.text + ": " + root.what
    Accessible.onPressAction: root.clicked()

    background: Plate {
        edge: root.visualFocus ? Theme.water : Theme.edge
        fill: root.down ? Theme.waterWash : Theme.plate
    }
    contentItem: BoardFace {
        glyph: root.glyph
        text: root.text
        what: root.what
        isRow: root.isRow
    }
}
