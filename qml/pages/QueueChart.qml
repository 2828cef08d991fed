pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The queue before the line, a bar every minute or few; the highest says how many wait.
Column {
    id: root

    required property RowList bars
    property string title: ""
    readonly property real step: root.bars.count > 0 ? root.width / root.bars.count : 0

    spacing: Space.tight
    visible: root.bars.count > 0
    Accessible.role: Accessible.Graphic
    Accessible.name: root.title

    Label { width: parent.width; text: root.title; size: Type.small; color: Theme.ash; Accessible.ignored: true }
    Item {
        id: field
        width: parent.width
        height: Space.touch + count.implicitHeight

        Figure { id: count; visible: false; text: "0"; size: Type.body }
        Repeater {
            model: root.bars

            Item {
                id: bar
                required property int index
                required property double share
                required property string count
                x: bar.index * root.step
                width: root.step
                height: field.height

                Rectangle {
                    id: column
                    anchors.bottom: parent.bottom
                    width: Math.max(1, parent.width - Space.tight)
                    height: Math.max(Space.line, bar.share * Space.touch)
                    color: bar.count !== "" ? Theme.ember : Theme.water
                }
                Figure { anchors.bottom: column.top; anchors.left: column.left; text: bar.count; size: Type.body }
            }
        }
    }
    Item {
        width: parent.width
        height: count.implicitHeight

        Repeater {
            model: root.bars

            Figure {
                required property int index
                required property string label
                x: index * root.step
                text: label
                size: Type.small
                color: Theme.ash
            }
        }
    }
}
