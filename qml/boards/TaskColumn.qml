pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A heading and the tasks under it; gone when there are none.
Column {
    id: root

    required property string heading
    required property RowList tasks
    required property Day day
    property string note: ""
    property bool showsCaution: false
    property bool showsLines: false
    property bool isNarrow: false

    visible: root.tasks.count > 0
    spacing: Space.small

    Heading { width: parent.width; text: root.heading; note: root.note }
    Repeater {
        model: root.tasks

        TaskPlate {
            id: plate
            width: root.width
            showsCaution: root.showsCaution
            showsLines: root.showsLines
            columns: root.isNarrow ? 1 : 2
            onStart: root.day.start(plate.key)
            onFinish: root.day.finish(plate.key)
            onTick: line => root.day.tick(plate.key, line)
        }
    }
}
