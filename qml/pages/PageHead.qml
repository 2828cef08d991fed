import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The head of a page: the way back, what it is, and a line about it.
Row {
    id: root

    required property string title
    property string note: ""
    property string backName: qsTr("Back")
    signal back()

    spacing: Space.margin

    PressPlate { id: way; glyph: Icons.back; Accessible.name: root.backName; onClicked: root.back() }
    Column {
        anchors.verticalCenter: way.verticalCenter
        width: root.width - way.width - root.spacing
        spacing: Space.tight

        Label { width: parent.width; text: root.title; size: Type.title; isStrong: true; maximumLineCount: 4; Accessible.role: Accessible.Heading }
        Label { width: parent.width; visible: text !== ""; text: root.note; color: Theme.ash; maximumLineCount: 4 }
    }
}
