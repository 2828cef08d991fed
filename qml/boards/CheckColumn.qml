pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Temperatures to take at the fire, due or nearly; gone when there are none.
Column {
    id: root

    required property FoodRecord record
    property bool isNarrow: false
    visible: root.record.checksAtFire.count > 0
    spacing: Space.small

    Heading { width: parent.width; text: qsTr("To measure") }
    Repeater {
        model: root.record.checksAtFire

        CheckPlate { id: check; width: root.width; isNarrow: root.isNarrow; onClicked: root.record.entry.measureCheck(check.key) }
    }
}
