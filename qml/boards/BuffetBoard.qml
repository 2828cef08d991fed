import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// For who builds the line: station by station, lines to tick, the next thing first.
ListView {
    id: root

    required property Day day
    property bool isNarrow: false

    model: root.day.buffet
    spacing: Space.small
    clip: true
    cacheBuffer: Space.hurried * 8
    bottomMargin: Space.margin
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Buffet")
    header: Item {
        width: root.width
        height: head.height + 2 * Space.small

        Column {
            id: head
            x: Space.margin
            y: Space.small
            width: parent.width - 2 * Space.margin

            Heading { width: parent.width; text: qsTr("Set-up and line"); note: root.day.line.buffetProgress }
            Cord { width: parent.width; progress: root.day.line.buffetDone; burning: Theme.water }
        }
    }
    section.property: "section"
    section.delegate: Item {
        id: station
        required property string section
        width: root.width
        height: Space.touch * 0.6

        Label {
            x: Space.margin
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Space.small
            text: station.section
            size: Type.lead
            isStrong: true
        }
    }
    delegate: TaskPlate {
        x: Space.margin
        width: root.width - 2 * Space.margin
        columns: root.isNarrow ? 1 : 3
        showsLines: true
        showsSkip: !root.isNarrow
        onStart: root.day.start(key)
        onFinish: root.day.finish(key)
        onSkip: root.day.skip(key)
        onTick: line => root.day.tick(key, line)
    }
}
