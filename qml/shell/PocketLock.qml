pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// Over everything while the device is in a pocket or lies where sleeves pass: the bell, what calls
/// and what comes next can be read, nothing can be touched but the slide.
Rectangle {
    id: root

    required property Day day
    property bool isNarrow: false
    signal opened()
    readonly property bool isCalling: root.day.line.callBoard !== ""
    readonly property bool isLit: root.isCalling && (root.day.isFlashOn || Motion.isReduced)
    readonly property color ink: root.isLit ? Theme.emberInk : Theme.ink

    color: root.isLit ? Theme.ember : Theme.ground
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Locked")

    MouseArea { anchors.fill: parent }
    Column {
        anchors.horizontalCenter: parent.horizontalCenter
        y: Space.wide
        width: parent.width - 2 * Space.margin
        spacing: Space.gap

        Row {
            anchors.horizontalCenter: parent.horizontalCenter
            spacing: Space.small

            Figure {
                id: large
                text: (root.day.line.isPastBell ? "+" : "") + root.day.line.bellLarge
                size: root.isNarrow ? Type.bell : Type.bellWide
                lineHeight: size * 0.86
                color: root.ink
            }
            Figure {
                anchors.baseline: large.baseline
                text: root.day.bellSeconds
                size: root.isNarrow ? Type.countdown * 0.62 : Type.bellWide * 0.36
                color: root.ink
                Accessible.ignored: true
            }
        }
        Label {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: root.day.line.bellCaption + " · " + root.day.line.serveClock
            size: Type.lead
            color: root.ink
        }
        Label {
            width: parent.width
            visible: root.isCalling
            horizontalAlignment: Text.AlignHCenter
            text: root.day.line.callText
            size: Type.title
            isStrong: true
            color: root.ink
            maximumLineCount: 5
        }
        Label {
            width: parent.width
            visible: !root.isCalling
            horizontalAlignment: Text.AlignHCenter
            text: root.day.line.ready + " · " + root.day.line.spare
            size: Type.lead
            color: root.ink
        }
    }
    Column {
        id: coming
        /// What room a crew leaves: three of them fill a phone, and two rows a tablet.
        readonly property int linesAhead: root.day.people.count > 2 ? 0 : root.isNarrow ? 3 - root.day.people.count : 2
        visible: !root.isCalling
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: slide.top
        anchors.bottomMargin: Space.gap
        width: root.isNarrow ? slide.width : Math.min(parent.width - 2 * Space.wide, Space.column * 2)
        spacing: Space.small

        Grid {
            id: crew
            width: parent.width
            columns: root.isNarrow ? 1 : 2
            spacing: Space.small

            Repeater {
                model: root.day.people

                PersonPlate { width: (crew.width - Space.small * (crew.columns - 1)) / crew.columns; visible: index < (root.isNarrow ? 3 : 4) }
            }
        }
        Heading { width: parent.width; visible: coming.linesAhead > 0; text: qsTr("Next") }
        Repeater {
            model: root.day.ahead

            TaskLine { width: coming.width; visible: index < coming.linesAhead }
        }
    }
    Slide {
        id: slide
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Space.wide
        width: Math.min(parent.width - 2 * Space.margin, Space.column * 1.2)
        text: qsTr("Slide to unlock")
        onSlid: root.opened()
    }
}
