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
    property bool isNarrow: false
    // Between what is held and the next to tick.
    spacing: root.isNarrow ? Space.apart - 2 * Space.small : Space.gap

    Heading { width: parent.width; text: qsTr("Before the fire is lit") }
    Repeater {
        model: root.record.fireItems

        Item {
            id: one
            required property string key
            required property string text
            required property bool isReady
            required property bool isSkipped
            readonly property bool isOpen: !one.isReady && !one.isSkipped
            width: root.width
            height: parts.height + 2 * Space.small

            Plate { anchors.fill: parent; edge: one.isOpen ? Theme.edge : Theme.hairline; edgeWidth: Space.hair; fill: Theme.ground }
            Grid {
                id: parts
                x: Space.small
                y: Space.small
                width: parent.width - 2 * Space.small
                columns: root.isNarrow ? 1 : 2
                spacing: Space.apart
                verticalItemAlignment: Grid.AlignVCenter
                /// Apart from the touches of the column beside it, too.
                readonly property real aside: root.isNarrow ? 0 : Space.apart - Space.margin - Space.small
                readonly property real share: one.isOpen && !root.isNarrow ? (width - Space.apart - aside) * 0.58 : width

                TickTile {
                    width: parts.share
                    height: Space.hurried
                    text: one.isSkipped ? qsTr("Skipped on record: %1").arg(one.text) : one.text
                    isTicked: one.isReady
                    onTicked: root.record.readyBeforeFire(one.key)
                }
                HoldPlate {
                    visible: one.isOpen
                    width: root.isNarrow ? parts.width : parts.width - parts.share - Space.apart - parts.aside
                    text: qsTr("Hold: skip, on record")
                    onHeld: root.record.skipBeforeFire(one.key)
                }
            }
        }
    }
    Remark { width: parent.width; text: root.record.tally.whoDecides; glyph: Icons.flame }
}
