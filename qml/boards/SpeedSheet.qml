pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Rehearse, or change how fast a rehearsal runs.
Sheet {
    id: root

    required property Day day
    signal called(string board)
    title: root.day.line.isRehearsal ? root.day.line.rehearsal : qsTr("Rehearse this event")

    Label { width: parent.width; text: qsTr("A copy of the day on a clock of its own; calls ring as they will."); color: Theme.ash }
    Grid {
        id: speeds
        width: parent.width
        columns: root.width < root.height ? 1 : 2
        spacing: Space.gap

        Repeater {
            model: [
                { times: 1, hour: qsTr("as it happens") },
                { times: 10, hour: qsTr("an hour in 6 min") },
                { times: 30, hour: qsTr("an hour in 2 min") },
                { times: 60, hour: qsTr("an hour in a minute") },
                { times: 120, hour: qsTr("an hour in 30 s") }
            ]

            PressPlate {
                id: speed
                required property var modelData
                width: (speeds.width - Space.gap * (speeds.columns - 1)) / speeds.columns
                tone: root.day.line.isRehearsal && speed.modelData.times === root.day.line.speed ? "water" : "plain"
                size: Type.body
                text: qsTr("%1×").arg(speed.modelData.times) + " · " + speed.modelData.hour
                Accessible.name: qsTr("%1×").arg(speed.modelData.times)
                onClicked: {
                    if (root.day.line.isRehearsal)
                        root.day.setSpeed(speed.modelData.times)
                    else
                        root.day.rehearse(speed.modelData.times)
                    root.closed()
                }
            }
        }
    }
    SheetWays { width: parent.width; day: root.day; onCalled: board => root.called(board) }
    PressPlate { width: parent.width; tone: "quiet"; size: Type.body; glyph: Icons.back; text: qsTr("Back"); onClicked: root.closed() }
}
