pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// Turns done of turns to do, as studs: filled when done, ringed when to come.
Row {
    id: root

    required property int done
    required property int count
    /// The width they share when there are many.
    property real room: root.count * (Space.margin + Space.small)
    readonly property real share: Math.min(Space.margin + Space.small, root.room / Math.max(1, root.count))
    readonly property real pip: Math.min(Space.margin, root.share * 0.7)

    spacing: root.share - root.pip
    visible: root.count > 0
    Accessible.ignored: true

    Repeater {
        model: root.count

        Rectangle {
            required property int index
            readonly property bool isDone: index < root.done

            width: root.pip
            height: width
            rotation: 45
            color: isDone ? Theme.ink : Theme.none
            border.width: Space.line
            border.color: isDone || index === root.done ? Theme.ink : Theme.ash
        }
    }
}
