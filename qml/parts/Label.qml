import QtQuick
import Cinderbell.Theme

/// Words on a board. `size` is one of `Type`; `isStrong` the heavy weight.
Text {
    id: root

    property int size: Type.body
    property bool isStrong: false

    color: Theme.ink
    font.family: root.isStrong ? Type.strongFamily : Type.family
    font.weight: root.isStrong ? Type.strong : Type.plain
    font.pixelSize: root.size
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    elide: Text.ElideRight
    maximumLineCount: 3
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
