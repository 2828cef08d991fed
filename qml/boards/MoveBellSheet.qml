pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The client moves the bell: in steps, at once, with undo.
Sheet {
    id: root

    required property Day day
    signal called(string board)
    title: qsTr("Serve at %1").arg(root.day.line.serveClock)

    Label { width: parent.width; text: root.day.line.ready + " · " + root.day.line.spare; size: Type.lead }
    Grid {
        id: steps
        width: parent.width
        columns: 2
        spacing: Space.gap

        Repeater {
            model: [-5, 5, -15, 15]

            PressPlate {
                id: step
                required property int modelData
                width: (steps.width - Space.gap) / 2
                height: Space.hurried
                glyph: step.modelData < 0 ? Icons.minus : Icons.plus
                isStacked: root.width < root.height
                size: step.isStacked ? Type.body : Type.lead  // one line in both languages
                text: step.modelData < 0 ? qsTr("%1 min earlier").arg(-step.modelData) : qsTr("%1 min later").arg(step.modelData)
                onClicked: root.day.moveServe(step.modelData)
            }
        }
    }
    SheetWays { width: parent.width; day: root.day; onCalled: board => root.called(board) }
    actions: PressPlate { width: parent.width; tone: "water"; text: qsTr("Done"); onClicked: root.closed() }
}
