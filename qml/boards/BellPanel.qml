import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The bell countdown, readable across the yard; under it when, whether, and the wall clock.
Column {
    id: root

    required property Day day
    property bool isNarrow: false
    signal moveBell()

    spacing: Space.gap

    Row {
        spacing: Space.small

        Figure {
            id: large
            text: (root.day.line.isPastBell ? "+" : "") + root.day.line.bellLarge
            size: root.isNarrow ? Type.bell : Type.bellWide
            lineHeight: size * 0.86
            color: root.day.line.isLate ? Theme.ember : Theme.ink
            Accessible.name: root.day.line.bellLarge + " " + root.day.line.bellCaption
        }
        Figure {
            anchors.baseline: large.baseline
            text: root.day.bellSeconds
            size: root.isNarrow ? Type.countdown * 0.62 : Type.bellWide * 0.36
            color: Theme.ash
            Accessible.ignored: true
        }
    }
    Label {
        width: root.width
        text: root.day.line.bellCaption + " · " + root.day.line.serveClock
            + (root.day.line.promised !== "" ? " · " + root.day.line.promised : "")
        size: Type.lead
        color: Theme.ash
    }
    Item {
        width: root.width
        height: Space.touch

        Plate {
            anchors.fill: parent
            fill: root.day.line.isLate ? Theme.emberWash : Theme.waterWash
            edge: root.day.line.isLate ? Theme.ember : Theme.water
        }
        StateMark {
            id: readyMark
            x: Space.margin
            anchors.verticalCenter: parent.verticalCenter
            mark: root.day.line.readyMark
        }
        Label {
            anchors.left: readyMark.right
            anchors.leftMargin: Space.gap
            anchors.right: parent.right
            anchors.rightMargin: Space.gap
            anchors.verticalCenter: parent.verticalCenter
            text: root.day.line.ready + " · " + root.day.line.spare
            size: Type.lead
            isStrong: true
            maximumLineCount: 2
        }
    }
    Flow {
        width: root.width
        spacing: Space.gap

        PressPlate {
            id: move
            glyph: Icons.bell
            text: qsTr("Move the bell")
            enabled: !root.day.line.isReadOnly
            onClicked: root.moveBell()
        }
        Column {

            Label { text: qsTr("wall clock"); size: Type.small; color: Theme.ash }
            Figure { text: root.day.wallClock; size: Type.lead }
        }
    }
}
