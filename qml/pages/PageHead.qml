import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The head of a page: the way back, what it is, and a line about it.
Item {
    id: root

    required property string title
    property string note: ""
    property string backName: qsTr("Back")
    signal back()

    implicitHeight: Math.max(way.height, words.height)

    PressPlate { id: way; glyph: Icons.back; Accessible.name: root.backName; onClicked: root.back() }
    Column {
        id: words
        x: way.width + Space.margin
        y: Math.max(0, Math.round((way.height - height) / 2))
        width: root.width - x
        spacing: Space.tight

        Label { width: parent.width; text: root.title; size: Type.title; isStrong: true; maximumLineCount: 4; Accessible.role: Accessible.Heading }
        Label { width: parent.width; visible: text !== ""; text: root.note; color: Theme.ash; maximumLineCount: 4 }
    }
}
