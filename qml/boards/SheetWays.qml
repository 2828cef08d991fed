import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// On a sheet over a board, what the foot of the board says while none is open: a call, why the last
/// touch was not taken, and the way back. Nothing while there is none of it.
Column {
    id: root

    required property Day day
    signal called(string board)

    visible: root.day.line.callBoard !== "" || root.day.refusal !== "" || root.day.line.undo !== ""
    spacing: Space.gap

    CallBand {
        objectName: "sheetCall"
        width: parent.width
        visible: root.day.line.callBoard !== ""
        day: root.day
        onClicked: root.called(root.day.line.callBoard)
    }
    Remark { width: parent.width; text: root.day.refusal; tint: Theme.ember; lines: 12 }
    UndoBar {
        objectName: "sheetUndo"
        width: parent.width
        visible: root.day.line.undo !== ""
        noted: root.day.line.undo
        remaining: root.day.undoLeft
        onTakeBack: root.day.undo()
    }
}
