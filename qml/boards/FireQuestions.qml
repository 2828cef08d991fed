pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Asked before a fire is lit: three things to tick. One may be passed over by holding it, which
/// goes on record.
Column {
    id: root

    required property FoodRecord record
    spacing: Space.apart

    Heading { width: parent.width; text: qsTr("Before the fire is lit") }
    Repeater {
        model: root.record.fireItems

        Column {
            id: one
            required property string key
            required property string text
            required property bool isReady
            required property bool isSkipped
            width: root.width
            spacing: Space.apart

            TickTile {
                width: parent.width
                height: Space.hurried
                text: one.isSkipped ? qsTr("Skipped on record: %1").arg(one.text) : one.text
                isTicked: one.isReady
                onClicked: root.record.readyBeforeFire(one.key)
            }
            HoldPlate {
                // Apart from the touches of the column beside it, too.
                anchors.horizontalCenter: parent.horizontalCenter
                visible: !one.isReady && !one.isSkipped
                width: parent.width - 2 * (Space.apart - Space.small)
                text: qsTr("Hold: skip, on record")
                onHeld: root.record.skipBeforeFire(one.key)
            }
        }
    }
    Remark { width: parent.width; text: root.record.tally.whoDecides; glyph: Icons.flame }
}
