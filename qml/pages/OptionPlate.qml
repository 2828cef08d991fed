import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One change that would help, and the touch that makes it.
Item {
    id: root

    required property string key
    required property string text
    required property string note
    required property bool isEnough
    required property bool isBeingPlanned
    required property bool isHeld
    property bool canAccept: true
    property bool isNarrow: false
    signal accept()
    signal stop()

    implicitHeight: Math.max(words.height, touch.height) + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.text + ", " + root.note

    Plate { anchors.fill: parent; edge: root.isEnough ? Theme.edge : Theme.hairline }
    StateMark { id: shape; x: Space.margin; anchors.verticalCenter: parent.verticalCenter; mark: root.isEnough ? "done" : "waiting" }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: held.visible ? held.left : touch.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        spacing: Space.tight

        Label { width: parent.width; text: root.text; size: root.isNarrow ? Type.body : Type.lead; isStrong: root.isEnough; maximumLineCount: 12 }
        Label { width: parent.width; text: root.isBeingPlanned ? qsTr("Planning…") : root.note; size: Type.small; color: Theme.ash; maximumLineCount: 12 }
    }
    PressPlate {
        id: touch
        objectName: "acceptOption"
        anchors.right: parent.right
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        visible: !held.visible
        isOff: !root.canAccept
        size: Type.body
        text: qsTr("Do this")
        Accessible.name: qsTr("Do this: %1").arg(root.text)
        onClicked: root.accept()
    }
    HoldPlate {
        id: held
        objectName: "holdOption"
        anchors.right: parent.right
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(touch.width, Math.min(implicitWidth, root.width * 0.42))
        height: touch.height
        visible: root.isHeld || root.isBeingPlanned
        isOff: !root.canAccept && !root.isBeingPlanned
        text: root.isBeingPlanned ? qsTr("Hold to stop") : qsTr("Hold: leave out")
        Accessible.name: root.isBeingPlanned ? qsTr("Hold to stop planning: %1").arg(root.text) : qsTr("Hold: %1").arg(root.text)
        onHeld: root.isBeingPlanned ? root.stop() : root.accept()
    }
}
