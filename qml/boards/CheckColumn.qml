pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Temperatures to take at the fire; gone when there are none.
Column {
    id: root

    required property FoodRecord record
    required property RowList checks
    property string heading: qsTr("To measure")
    property bool isNarrow: false
    visible: root.checks.count > 0
    spacing: Space.small

    Heading { width: parent.width; text: root.heading }
    Repeater {
        model: root.checks

        CheckPlate { id: check; width: root.width; isNarrow: root.isNarrow; onClicked: root.record.entry.measureCheck(check.key) }
    }
}
