import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// Below the board, while there is any: why a touch was refused, a call from another board, and on
/// a phone the way back. Opaque, and the board ends above it: nothing to touch is ever hidden.
Rectangle {
    id: root

    required property Day day
    required property bool isCalledElsewhere
    required property bool hasUndo
    /// The call can be silenced here: no way leads to a board.
    required property bool hasHeard
    signal answer()

    height: bars.height > 0 ? bars.height + 2 * Space.small : 0
    color: Theme.ground

    Column {
        id: bars
        x: Space.small
        y: Space.small
        width: parent.width - 2 * Space.small
        spacing: Space.small

        RefusalBar {
            width: parent.width
            visible: root.day.refusal !== ""
            day: root.day
        }
        Row {
            width: parent.width
            visible: root.isCalledElsewhere || root.hasUndo
            spacing: Space.small

            CallBand {
                width: parent.width - (root.hasUndo ? back.width + Space.small : 0) - (root.hasHeard ? heard.width + Space.small : 0)
                visible: root.isCalledElsewhere
                day: root.day
                onClicked: root.answer()
            }
            PressPlate {
                id: heard
                objectName: "bandHeard"
                visible: root.isCalledElsewhere && root.hasHeard
                text: qsTr("Heard")
                onClicked: root.day.acknowledge(root.day.line.callKey)
            }
            UndoBar {
                id: back
                objectName: "undo"
                width: root.isCalledElsewhere ? Space.touch : parent.width
                visible: root.hasUndo
                isBrief: root.isCalledElsewhere
                noted: root.day.line.undo
                remaining: root.day.undoLeft
                onTakeBack: root.day.undo()
            }
        }
    }
}
