import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One dish on the line: how much is left, when the next pan must start, what somebody sees.
Item {
    id: root

    required property string key
    required property string name
    required property string number
    required property string level
    required property real fullness
    required property string empty
    required property string start
    required property string advice
    required property bool isDue
    required property bool canTap
    required property bool isLast
    signal tapped(int percent)
    signal next()

    implicitHeight: all.height + 2 * Space.gap

    Plate {
        anchors.fill: parent
        fill: root.isDue ? Theme.emberWash : Theme.plate
        edge: root.isDue ? Theme.ember : Theme.edge
    }
    Column {
        id: all
        x: Space.gap
        y: Space.gap
        width: root.width - 2 * Space.gap
        spacing: Space.small

        Heading { width: parent.width; text: root.name; note: root.number }
        Rectangle {
            width: parent.width
            height: Space.gap
            color: Theme.none
            border.width: Space.hair
            border.color: Theme.edge

            Rectangle { width: Math.round(parent.width * root.fullness); height: parent.height; color: root.isDue ? Theme.ember : Theme.ink }
        }
        Label { width: parent.width; text: root.level + " · " + root.empty }
        Label { width: parent.width; visible: text !== ""; text: root.start; size: Type.lead; isStrong: true; color: root.isDue ? Theme.ember : Theme.ink }
        Remark { width: parent.width; text: root.advice; tint: Theme.ember }
        Label { width: parent.width; visible: root.canTap; text: qsTr("How much is left?"); size: Type.small; color: Theme.ash; Accessible.ignored: true }
        Row {
            width: parent.width
            visible: root.canTap
            spacing: Space.gap
            readonly property real share: Math.floor((width - 2 * spacing) / 3)

            PressPlate { width: parent.share; size: Type.title; text: "¾"; Accessible.name: qsTr("%1: three quarters left").arg(root.name); onClicked: root.tapped(75) }
            PressPlate { width: parent.share; size: Type.title; text: "½"; Accessible.name: qsTr("%1: half left").arg(root.name); onClicked: root.tapped(50) }
            PressPlate { width: parent.share; size: Type.title; text: "¼"; Accessible.name: qsTr("%1: a quarter left").arg(root.name); onClicked: root.tapped(25) }
        }
        PressPlate {
            width: parent.width
            visible: root.canTap
            size: Type.body
            text: root.isLast ? qsTr("The last pan is empty") : qsTr("A fresh pan is on the line")
            Accessible.name: (root.isLast ? qsTr("%1: the last pan is empty") : qsTr("%1: a fresh pan is on the line")).arg(root.name)
            onClicked: root.isLast ? root.tapped(0) : root.next()
        }
    }
}
