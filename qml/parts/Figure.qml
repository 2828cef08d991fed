import QtQuick
import Cinderbell.Theme

/// Digits that change: heavy, one width each, never wrapped, tight to their own height.
Text {
    id: root

    property int size: Type.figure

    color: Theme.ink
    font.family: Type.strongFamily
    font.weight: Type.strong
    font.pixelSize: root.size
    textFormat: Text.PlainText
    lineHeightMode: Text.FixedHeight
    lineHeight: Math.round(root.size * 0.94)
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
