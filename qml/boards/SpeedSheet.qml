import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Rehearse, or change how fast a rehearsal runs.
Sheet {
    id: root

    required property Day day
    title: root.day.line.isRehearsal ? root.day.line.rehearsal : qsTr("Rehearse this event")

    Label { width: parent.width; text: qsTr("A copy of the day on a clock of its own; calls ring as they will."); color: Theme.ash }
    Grid {
        width: parent.width
        columns: 2
        spacing: Space.gap

        Repeater {
            model: [1, 10, 30, 60, 120]

            PressPlate {
                required property int modelData
                width: (parent.width - Space.gap) / 2
                tone: root.day.line.isRehearsal && modelData === root.day.line.speed ? "water" : "plain"
                text: modelData + "×"
                onClicked: {
                    root.day.line.isRehearsal ? root.day.setSpeed(modelData) : root.day.rehearse(modelData)
                    root.closed()
                }
            }
        }
    }
}
