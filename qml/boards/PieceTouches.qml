import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What can be done with the piece of the open sheet. Pulling comes first, in sight on a phone
/// too, and stands apart from the rest.
Column {
    id: root

    required property Day day
    readonly property Fire fire: root.day.fire
    readonly property real share: (root.width - Space.gap) / 2

    spacing: Space.gap

    PressPlate {
        width: parent.width
        height: Space.hurried
        visible: root.fire.piece.canTouch
        tone: "ember"
        glyph: Icons.pull
        text: root.fire.piece.pullVerb
        onClicked: root.fire.pull()
    }
    Item { width: 1; height: Space.apart - 2 * Space.gap; visible: root.fire.piece.canTouch }
    PressPlate {
        width: parent.width
        height: Space.touch
        visible: root.fire.piece.canTouch
        glyph: Icons.probe
        text: qsTr("Probe reading")
        onClicked: root.fire.askProbe()
    }
    Row {
        visible: root.fire.piece.canTouch
        spacing: Space.gap

        PressPlate { width: root.share; height: Space.touch; size: Type.body; text: qsTr("Looks done"); onClicked: root.fire.judge(true) }
        PressPlate { width: root.share; height: Space.touch; size: Type.body; text: qsTr("Not yet"); onClicked: root.fire.judge(false) }
    }
    Row {
        spacing: Space.gap
        readonly property real side: root.fire.piece.canTouch ? Space.touch : root.share

        PressPlate { width: parent.side; glyph: Icons.back; Accessible.name: qsTr("Piece before"); onClicked: root.fire.step(-1) }
        PressPlate { width: root.width - 2 * parent.side - 2 * parent.spacing; visible: root.fire.piece.canTouch; size: Type.body; text: root.fire.piece.moveVerb; onClicked: root.fire.move() }
        PressPlate { width: parent.side; glyph: Icons.forward; Accessible.name: qsTr("Next piece"); onClicked: root.fire.step(1) }
    }
    UndoBar {
        width: parent.width
        visible: root.day.line.undo !== ""
        noted: root.day.line.undo
        remaining: root.day.undoLeft
        onTakeBack: root.day.undo()
    }
}
