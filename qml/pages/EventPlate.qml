import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One event to open; a demo may also be rehearsed.
Item {
    id: root

    required property string key
    required property string name
    required property string when
    required property bool isRehearsal
    property bool isDemo: false
    signal open()
    signal rehearse()

    implicitHeight: Math.max(Space.touch, words.height) + 2 * Space.small
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name

    Plate { anchors.fill: parent }
    Column {
        id: words
        x: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        width: touches.x - 2 * Space.margin

        Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 2 }
        Label {
            width: parent.width
            visible: text !== ""
            text: (root.isRehearsal ? qsTr("Rehearsal") + " · " : "") + root.when
            size: Type.small
            color: Theme.ash
        }
    }
    Row {
        id: touches
        anchors.right: parent.right
        anchors.rightMargin: Space.small
        anchors.verticalCenter: parent.verticalCenter
        spacing: Space.small

        PressPlate { visible: root.isDemo; glyph: Icons.play; text: "60×"; Accessible.name: qsTr("Rehearse %1").arg(root.name); onClicked: root.rehearse() }
        PressPlate { tone: "ember"; text: qsTr("Open"); Accessible.name: qsTr("Open %1").arg(root.name); onClicked: root.open() }
    }
}
