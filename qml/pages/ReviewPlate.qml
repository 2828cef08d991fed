pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// One task of the day: the planned stretch as a frame, the actual one as a bar in it, and the touch
/// that says that something came between.
Item {
    id: root

    required property string key
    required property string name
    required property string planned
    required property string actual
    required property string difference
    required property double plannedAt
    required property double plannedShare
    required property double actualAt
    required property double actualShare
    required property bool isInterrupted
    required property string remark
    required property string verb
    required property int index
    property RowList axis
    property bool canMark: true
    signal marked()

    implicitHeight: all.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.planned + ", " + root.actual + ", " + root.remark

    Plate { anchors.fill: parent; edge: Theme.hairline; fill: root.isInterrupted ? Theme.ground : Theme.plate }
    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.small

        Item {
            width: parent.width
            height: Math.max(words.height, came.visible ? came.height : 0)

            Column {
                id: words
                anchors.left: parent.left
                anchors.right: came.visible ? came.left : parent.right
                anchors.rightMargin: Space.gap
                spacing: Space.tight

                Label { width: parent.width; text: root.name; isStrong: true; maximumLineCount: 4 }
                Label { width: parent.width; text: root.difference; color: root.isInterrupted ? Theme.ash : Theme.ink }
                Label { width: parent.width; text: root.planned + " · " + root.actual; size: Type.small; color: Theme.ash; maximumLineCount: 4 }
            }
            PressPlate {
                id: came
                anchors.right: parent.right
                visible: root.canMark
                size: Type.small
                text: root.verb
                Accessible.name: root.verb + ": " + root.name
                onClicked: root.marked()
            }
        }
        Item {
            id: field
            width: parent.width
            height: 2 * Space.gap + clock.height

            Label { id: clock; visible: false; text: "0"; size: Type.small }
            Repeater {
                model: root.axis

                Item {
                    id: tick
                    required property double at
                    required property string label
                    required property bool isBell
                    x: Math.round(tick.at * field.width)
                    height: field.height

                    Rectangle { width: tick.isBell ? Space.line : Space.hair; height: 2 * Space.gap; color: tick.isBell ? Theme.ember : Theme.hairline }
                    Label { y: 2 * Space.gap; x: Math.min(0, field.width - tick.x - width); width: implicitWidth; text: tick.label; size: Type.small; color: Theme.ash; maximumLineCount: 1 }
                }
            }
            Rectangle {
                x: root.plannedAt * field.width
                width: Math.max(Space.line, root.plannedShare * field.width)
                height: 2 * Space.gap
                color: "transparent"
                border.width: Space.line
                border.color: Theme.ash
            }
            Rectangle {
                x: root.actualAt * field.width
                y: Math.round(Space.gap / 2)
                width: Math.max(Space.line, root.actualShare * field.width)
                height: Space.gap
                color: root.isInterrupted ? Theme.ash : Theme.water
            }
        }
        Remark { width: parent.width; text: root.remark; tint: root.isInterrupted ? Theme.ash : Theme.ember }
    }
}
