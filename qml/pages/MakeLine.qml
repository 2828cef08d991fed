import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// A text to type, or something to do: its name, and the button at its end.
Item {
    id: root

    required property string kind
    required property string name
    required property string value
    required property string note
    required property string verb
    required property bool isRemoval
    required property bool isFaulty
    required property bool isNarrow
    property bool isOff: false
    signal touched()
    readonly property bool isText: root.kind === "text"
    /// More than fits on a button: it is read above it.
    readonly property bool isLong: root.isText && root.value.length > 36
    /// A text stands below its name where there is little room.
    readonly property bool isStacked: root.isText && root.isNarrow

    implicitHeight: root.isStacked ? words.height + Space.tight + Space.touch : Math.max(Space.touch, words.height)

    Column {
        id: words
        width: root.isStacked ? root.width : root.isRemoval && root.name === "" ? 0 : touch.x - Space.gap
        y: root.isStacked ? 0 : Math.round((root.height - height) / 2)
        spacing: Space.tight

        Label { width: parent.width; visible: text !== ""; text: root.name; isStrong: true; maximumLineCount: 12; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.isText ? (root.isLong ? root.value : "") : root.value; size: Type.small; color: root.isText ? Theme.ink : Theme.water; isStrong: !root.isText; maximumLineCount: 40 }
        Label { width: parent.width; visible: text !== ""; text: root.note; size: Type.small; color: Theme.ash; maximumLineCount: 12 }
    }
    PressPlate {
        id: touch
        width: root.isText ? (root.isNarrow ? root.width : Math.round(root.width * 0.56)) : implicitWidth
        x: root.width - width
        y: root.height - Space.touch
        glyph: root.isText ? Icons.pencil : root.isRemoval ? Icons.cross : Icons.plus
        isLeading: root.isText
        isOff: root.isOff
        size: root.isText ? Type.body : Type.lead
        text: root.isText ? (root.value === "" || root.isLong ? qsTr("Type it") : root.value) : root.verb
        Accessible.name: root.isText ? root.name + ": " + root.value : root.name === "" ? root.verb : root.verb + ": " + root.name
        onClicked: root.touched()
    }
}
