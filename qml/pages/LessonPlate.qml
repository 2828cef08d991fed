import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One figure that was learnt, with what supports it, to take or to leave.
Item {
    id: root

    required property string key
    required property string name
    required property string text
    required property string support
    required property string answer
    required property bool isAccepted
    required property bool isIgnored
    property bool canAnswer: true
    signal accept()
    signal ignore()

    implicitHeight: all.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.text + ", " + root.support + ", " + root.answer

    Plate { anchors.fill: parent; edge: root.isAccepted ? Theme.water : Theme.edge; fill: root.isAccepted ? Theme.waterWash : root.isIgnored ? Theme.ground : Theme.plate }
    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.small

        Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 4 }
        Label { width: parent.width; text: root.text; maximumLineCount: 6 }
        Label { width: parent.width; text: root.support; size: Type.small; color: Theme.ash }
        Remark { width: parent.width; text: root.answer; glyph: root.isAccepted ? Icons.tick : Icons.cross; tint: Theme.ink }
        Row {
            visible: root.canAnswer
            spacing: Space.gap

            PressPlate { visible: !root.isAccepted; tone: "water"; size: Type.body; text: qsTr("Take it along"); Accessible.name: qsTr("Take it along: %1").arg(root.name); onClicked: root.accept() }
            PressPlate { visible: !root.isIgnored; size: Type.body; text: qsTr("Leave as planned"); Accessible.name: qsTr("Leave as planned: %1").arg(root.name); onClicked: root.ignore() }
        }
    }
}
