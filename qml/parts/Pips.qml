pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// Turns done of turns to do, as studs: filled when done, ringed when to come.
Row {
    id: root

    required property int done
    required property int count

    spacing: Space.small
    visible: root.count > 0
    Accessible.ignored: true

    Repeater {
        model: root.count

        Rectangle {
            required property int index
            readonly property bool isDone: index < root.done

            width: Space.margin
            height: width
            rotation: 45
            color: isDone ? Theme.ink : Theme.none
            border.width: Space.line
            border.color: isDone || index === root.done ? Theme.ink : Theme.ash
        }
    }
}
