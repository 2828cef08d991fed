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
    required property bool isDraft
    required property string beingPlanned
    property bool isDemo: false
    property bool isNarrow: false
    signal open()
    signal rehearse()

    implicitHeight: root.isNarrow ? words.height + touches.height + 3 * Space.gap
                                  : Math.max(touches.height, words.height) + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name

    Plate { anchors.fill: parent }
    Column {
        id: words
        x: Space.margin
        y: root.isNarrow ? Space.gap : Math.round((root.height - height) / 2)
        width: (root.isNarrow ? root.width : touches.x) - 2 * Space.margin
        spacing: Space.tight

        Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 2 }
        Label {
            width: parent.width
            visible: text !== ""
            text: (root.isRehearsal ? qsTr("Rehearsal") + " · " : root.isDraft ? qsTr("Being written") + " · " : "") + root.when
            size: Type.small
            color: Theme.ash
        }
    }
    Row {
        id: touches
        anchors.right: parent.right
        anchors.rightMargin: Space.gap
        y: root.isNarrow ? root.height - height - Space.gap : Math.round((root.height - height) / 2)
        spacing: Space.gap

        // While one of them waits for its plan the other makes room for the longer word.
        PressPlate {
            objectName: "rehearseDemo"
            visible: root.isDemo && root.beingPlanned !== "open"
            enabled: root.beingPlanned !== "rehearse"
            glyph: Icons.play
            text: root.beingPlanned === "rehearse" ? qsTr("Planning…") : qsTr("Rehearse")
            Accessible.name: root.beingPlanned === "rehearse" ? text : qsTr("Rehearse %1").arg(root.name)
            onClicked: root.rehearse()
        }
        PressPlate {
            objectName: "openEvent"
            visible: root.beingPlanned !== "rehearse"
            tone: root.beingPlanned === "open" ? "plain" : "ember"
            enabled: root.beingPlanned !== "open"
            text: root.beingPlanned === "open" ? qsTr("Planning…") : qsTr("Open")
            Accessible.name: root.beingPlanned === "open" ? text : qsTr("Open %1").arg(root.name)
            onClicked: root.open()
        }
    }
}
