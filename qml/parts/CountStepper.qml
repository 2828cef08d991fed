import QtQuick
import Cinderbell.Theme

/// A count between its two steps; touched in the middle it asks to be typed.
Row {
    id: root

    required property string text
    required property string lessName
    required property string moreName
    signal less()
    signal more()
    signal ask()

    spacing: Space.small

    PressPlate { id: fewer; glyph: Icons.minus; Accessible.name: root.lessName; onClicked: root.less() }
    PressPlate { width: root.width - fewer.width - another.width - 2 * root.spacing; size: Type.lead; text: root.text; onClicked: root.ask() }
    PressPlate { id: another; glyph: Icons.plus; Accessible.name: root.moreName; onClicked: root.more() }
}
