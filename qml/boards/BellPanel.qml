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
    signal askPromise()

    spacing: Space.gap

    Row {
        spacing: Space.small

        Figure {
            id: large
            objectName: "bellFigure"
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
    Flow {
        width: root.width
        spacing: Space.wide

        Label {
            text: root.day.line.bellCaption + " · " + root.day.line.serveClock
                + (root.day.line.promised !== "" ? " · " + root.day.line.promised : "")
            size: Type.lead
            color: Theme.ash
        }
        Figure {
            text: qsTr("now %1").arg(root.day.wallClock)
            size: Type.lead
            lineHeight: size * 1.2
        }
    }
    ReadyPlate {
        objectName: "promise"
        width: root.width
        day: root.day
        onClicked: root.askPromise()
    }
    Row {
        id: touches
        width: root.width
        spacing: Space.gap
        readonly property real share: (width - spacing) / 2

        PressPlate {
            objectName: "moveBell"
            width: root.isNarrow ? touches.share : implicitWidth
            size: root.isNarrow ? Type.body : Type.lead
            glyph: root.isNarrow ? "" : Icons.bell
            text: qsTr("Move the bell")
            enabled: !root.day.line.isReadOnly
            onClicked: root.moveBell()
        }
        PressPlate {
            objectName: "replan"
            width: root.isNarrow ? touches.share : implicitWidth
            size: root.isNarrow ? Type.body : Type.lead
            visible: !root.day.line.isReadOnly
            tone: root.day.line.isLate ? "ember" : "plain"
            glyph: root.isNarrow ? "" : Icons.sheet
            text: qsTr("Plan again")
            onClicked: root.day.replan()
        }
    }
    Row {
        visible: root.day.line.chance !== ""
        spacing: Space.margin

        Figure { id: chance; anchors.verticalCenter: words.verticalCenter; text: root.day.line.chance; size: Type.countdown * 0.8 }
        Column {
            id: words
            width: root.width - chance.width - Space.margin
            spacing: Space.tight

            Label { width: parent.width; text: qsTr("chance that all is out by the bell"); isStrong: true }
            Label {
                width: parent.width
                text: root.day.line.chanceReady + " · " + root.day.line.chanceEarlier
                size: Type.small
                color: Theme.ash
            }
        }
    }
}
