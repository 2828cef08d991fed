pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The buffet line from above, to scale, and its dishes in serving order to be moved.
Flickable {
    id: root

    required property LineView line
    property bool isNarrow: false
    signal back()

    contentHeight: all.height + 2 * Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Buffet line")

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * x
        spacing: Space.gap
        /// A tablet shows the tables end to end, a phone one under the other.
        readonly property real scaling: width / (root.isNarrow ? root.line.longest : root.line.length)

        PageHead { width: parent.width; title: qsTr("Buffet line"); note: qsTr("Plates at the left, guests below."); onBack: root.back() }
        Row {
            width: parent.width
            spacing: Space.small

            StateMark { id: mark; mark: root.line.isShort ? "late" : "done"; isLate: root.line.isShort }
            Label { width: parent.width - mark.width - Space.small; text: root.line.room; size: Type.lead; isStrong: true; maximumLineCount: 5 }
        }
        Flow {
            width: parent.width

            Repeater {
                model: root.line.tables

                LineTable { scaling: all.scaling }
            }
        }
        Heading { width: parent.width; text: qsTr("In serving order") }
        Column {
            width: parent.width
            spacing: Space.small

            Repeater {
                model: root.line.order

                OrderPlate {
                    id: dish
                    width: all.width
                    onChoose: root.line.choose(dish.key)
                    onMove: rows => root.line.move(dish.key, rows)
                }
            }
        }
        Remark { width: parent.width; text: root.line.prompts; lines: 20 }
    }
}
