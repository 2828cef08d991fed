import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One call of an alarm: what is wanted, of what, since when, and the touches that answer it. The
/// answer that does the deed stands first; on a narrow board they stand one over the other.
Column {
    id: root

    required property string key
    required property string task
    required property string call
    required property string title
    required property string icon
    required property string overdue
    required property string actVerb
    required property string act
    property color ink: Theme.ink
    property bool isNarrow: false
    readonly property real touchWidth: root.isNarrow || root.actVerb === "" ? root.width : (root.width - Space.apart) / 2
    signal acted()
    signal heard()

    spacing: Space.gap

    Row {
        spacing: Space.gap

        Glyph {
            id: drawing
            anchors.verticalCenter: parent.verticalCenter
            path: root.icon === "turn" ? Icons.turn : root.icon === "pull" ? Icons.pull
                : root.icon === "rest" ? Icons.rest : root.icon === "flame" ? Icons.flame
                : root.icon === "putOn" ? Icons.putOn : Icons.bell
            size: Type.countdown
            color: root.ink
        }
        Label {
            width: root.width - drawing.width - Space.gap
            text: root.call
            size: Type.countdown * 0.8
            isStrong: true
            color: root.ink
            maximumLineCount: 2
        }
    }
    Label { width: parent.width; text: root.title; size: Type.title; isStrong: true; color: root.ink; maximumLineCount: 5 }
    Label { width: parent.width; text: qsTr("%1 ago").arg(root.overdue); size: Type.lead; color: root.ink }
    Flow {
        width: parent.width
        spacing: root.isNarrow ? Space.gap : Space.apart

        PressPlate {
            objectName: "callAct"
            visible: root.actVerb !== ""
            width: root.touchWidth
            height: Space.hurried
            size: Type.title
            glyph: Icons.tick
            text: root.actVerb
            onClicked: root.acted()
        }
        PressPlate {
            objectName: "callHeard"
            width: root.touchWidth
            height: Space.hurried
            size: Type.title
            text: qsTr("Heard")
            onClicked: root.heard()
        }
    }
}
