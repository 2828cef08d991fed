pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// For who builds the line: station by station, lines to tick, the next thing first.
Item {
    id: root

    required property Day day
    required property FoodRecord record
    property bool isNarrow: false

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Buffet")

    ListView {
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        topMargin: Space.small
        bottomMargin: Space.margin
        model: root.day.buffet
        spacing: Space.small
        // A row behind the heading would still feel a touch on it.
        clip: true
        cacheBuffer: Space.hurried * 8
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Set-up and line")

        delegate: TaskPlate {
            id: plate
            x: Space.margin
            width: root.width - 2 * Space.margin
            columns: root.isNarrow ? 1 : 3
            showsHeading: true
            showsLines: true
            showsSkip: true
            onStart: root.day.start(plate.key)
            onFinish: root.day.finish(plate.key)
            onSkip: root.day.skip(plate.key)
            onTick: line => root.day.tick(plate.key, line)
        }
    }
    // Over the list and opaque: the software renderer does not clip drawn shapes to its edge.
    Rectangle {
        id: head
        width: parent.width
        height: words.height + 2 * Space.small
        color: Theme.ground

        Column {
            id: words
            x: Space.margin
            y: Space.small
            width: parent.width - 2 * Space.margin
            spacing: Space.small

            Heading { width: parent.width; text: qsTr("Set-up and line"); note: root.day.line.buffetProgress }
            Cord { width: parent.width; progress: root.day.line.buffetDone; burning: Theme.water }
            DueBand { width: parent.width; visible: text !== ""; text: root.record.tally.band; note: root.record.tally.due; onClicked: root.record.entry.measureCheck(root.record.tally.bandCheck) }
        }
    }
}
