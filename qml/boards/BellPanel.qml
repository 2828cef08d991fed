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
    // On a narrow screen on two lines, near each other.
    Flow {
        width: root.width
        spacing: root.isNarrow ? Space.gap : Space.wide

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
    // Before all that is touched, so that it parts none of it from the rest.
    NoticeColumn { width: root.width; visible: root.isNarrow && root.day.notices.count > 0; day: root.day }
    ReadyPlate {
        objectName: "promise"
        width: root.width
        day: root.day
        onClicked: root.askPromise()
    }
    ChanceRow { width: root.width; visible: !root.isNarrow && root.day.line.chance !== ""; day: root.day }
    DayTouches { width: root.width; visible: !root.isNarrow || root.day.line.isLate; day: root.day; isNarrow: root.isNarrow; onMoveBell: root.moveBell() }
}
