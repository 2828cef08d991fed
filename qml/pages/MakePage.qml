pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Making and changing an event: its parts beside the fields of the open one, or one after the
/// other where there is little room. Every touch is kept at once and can be taken back.
Item {
    id: root

    required property Editor editor
    property bool isNarrow: false
    signal leave()
    readonly property bool isOpen: root.editor.place !== ""
    /// The parts and what is done with the whole; the open part has the rest.
    readonly property real partsWidth: root.isNarrow ? root.width : Math.round(root.width * 0.34)
    /// Where there is room a part is always open, and the way back from it leads out.
    readonly property bool isAtTop: !root.isNarrow && root.editor.place === root.editor.part
    property string sheet: ""
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Edit the event")
    Component.onCompleted: if (!root.isNarrow) root.editor.goWhereNeeded()

    Item {
        id: head
        enabled: root.sheet === ""
        width: parent.width
        height: Math.max(way.height, words.height) + 2 * Space.small

        PressPlate { id: way; x: Space.margin; y: Space.small; width: Space.touch; glyph: Icons.back; Accessible.name: root.isOpen && !root.isAtTop ? qsTr("One page back") : qsTr("Leave the editor"); onClicked: if (root.isAtTop || !root.editor.back()) root.leave() }
        Column {
            id: words
            anchors.left: way.right
            anchors.leftMargin: Space.gap
            anchors.right: back.left
            anchors.rightMargin: Space.gap
            anchors.verticalCenter: parent.verticalCenter
            spacing: Space.tight

            Label { width: parent.width; text: root.editor.title; size: root.isNarrow ? Type.body : Type.title; isStrong: true; maximumLineCount: 8 }
            Label { width: parent.width; visible: !root.isNarrow; text: root.isOpen ? root.editor.name : root.editor.when; size: Type.small; color: Theme.ash }
        }
        PressPlate { id: back; anchors.right: parent.right; anchors.rightMargin: Space.margin; y: Space.small; width: root.isNarrow ? Space.touch : implicitWidth; glyph: Icons.undo; text: root.isNarrow ? "" : qsTr("Undo"); isOff: !root.editor.canUndo; Accessible.name: qsTr("Undo the last change"); onClicked: root.editor.undo() }
    }
    Repeater {
        model: !root.isNarrow || !root.isOpen ? 1 : 0

        MakeParts {
            enabled: root.sheet === ""
            y: head.height
            width: root.partsWidth
            height: root.height - head.height - foot.height
            editor: root.editor
            saysLock: root.isNarrow
        }
    }
    Repeater {
        model: root.isOpen ? 1 : 0

        MakeFields {
            enabled: root.sheet === ""
            x: root.isNarrow ? 0 : root.partsWidth
            y: head.height
            width: root.width - x
            height: root.height - head.height - (root.isNarrow ? foot.height : 0)
            editor: root.editor
            isNarrow: root.isNarrow
            onAskNumber: (key, name, kind, number, least, most) => { pad.ask(key, name, kind, number, least, most); root.sheet = "number" }
            onAskText: (key, name, value) => { root.sheet = "text"; keyboard.ask(key, name, value) }
        }
    }
    Rectangle {
        id: foot
        enabled: root.sheet === ""
        anchors.bottom: parent.bottom
        width: root.partsWidth
        height: root.isNarrow && root.isOpen ? (said.visible ? said.height + 2 * Space.small : 0) : plan.height + standing.height + 3 * Space.small
        color: Theme.ground

        Remark { id: said; x: Space.margin; y: Space.small; width: parent.width - 2 * x; visible: root.editor.refusal !== "" && root.isNarrow && root.isOpen; text: root.editor.refusal; tint: Theme.ember }
        Remark { id: standing; x: Space.margin; y: Space.small; width: parent.width - 2 * x; visible: !said.visible && plan.visible; text: root.editor.refusal !== "" ? root.editor.refusal : root.editor.standing; glyph: root.editor.isWhole && root.editor.refusal === "" ? Icons.tick : Icons.caution; tint: root.editor.refusal !== "" ? Theme.ember : Theme.ink }
        PressPlate {
            id: plan
            x: Space.margin
            y: standing.height + 2 * Space.small
            width: parent.width - 2 * x
            height: root.isNarrow ? Space.hurried : Space.touch
            visible: !root.isNarrow || !root.isOpen
            tone: root.editor.isPlanning ? "plain" : "ember"
            glyph: Icons.bell
            isOff: !root.editor.isWhole || root.editor.locked !== ""
            enabled: !isOff && !root.editor.isPlanning
            text: root.editor.isPlanning ? qsTr("Planning…") : qsTr("Plan it")
            onClicked: root.editor.plan()
        }
    }
    FieldNumberSheet { id: pad; z: 2; anchors.fill: parent; visible: root.sheet === "number"; editor: root.editor; onClosed: root.sheet = "" }
    TextSheet { id: keyboard; z: 2; anchors.fill: parent; visible: root.sheet === "text"; onTaken: (key, text) => root.editor.setText(key, text); onClosed: root.sheet = "" }
}
