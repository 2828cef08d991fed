pragma ComponentBehavior: Bound

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
        id: speeds
        width: parent.width
        columns: root.width < root.height ? 1 : 5
        spacing: Space.gap

        Repeater {
            model: [1, 10, 30, 60, 120]

            PressPlate {
                id: speed
                required property int modelData
                width: (speeds.width - Space.gap * (speeds.columns - 1)) / speeds.columns
                tone: root.day.line.isRehearsal && speed.modelData === root.day.line.speed ? "water" : "plain"
                text: qsTr("%1×").arg(speed.modelData)
                onClicked: {
                    if (root.day.line.isRehearsal)
                        root.day.setSpeed(speed.modelData)
                    else
                        root.day.rehearse(speed.modelData)
                    root.closed()
                }
            }
        }
    }
}
