pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// The digits of a code in groups, as large as there is room for, so that two screens held side by
/// side are compared group by group.
Grid {
    id: root

    required property string name
    required property list<string> groups
    /// The group that is being typed; -1: none.
    property int current: -1
    property bool isWrong: false
    /// The digits are not larger than this.
    property int size: Type.bell
    readonly property real cell: Math.floor((width - (columns - 1) * spacing) / columns)
    // A digit of our type is 0.58 of its height wide; four of them fill nine tenths of a group.
    readonly property int fit: Math.min(root.size, Math.floor(0.9 * root.cell / (4 * 0.58)))

    columns: 4
    spacing: Space.small
    Accessible.role: Accessible.Grouping
    Accessible.name: root.name

    Repeater {
        model: root.groups.length

        Rectangle {
            id: group
            required property int index

            width: root.cell
            height: figure.height + 2 * Space.small
            color: Theme.plate
            radius: Space.corner
            border.width: Space.line
            border.color: root.isWrong ? Theme.ember : root.current === group.index ? Theme.water : Theme.edge

            Figure {
                id: figure
                anchors.centerIn: parent
                // Digits have nothing below the line they stand on.
                anchors.verticalCenterOffset: Math.round(root.fit * 0.05)
                text: root.groups[group.index]
                size: root.fit
            }
        }
    }
}
