pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Everything the event comes to, in figures that open.
Item {
    id: root

    required property Figures figures
    property bool isNarrow: false
    signal back()

    Flickable {
        anchors.fill: parent
        visible: !root.figures.isOpen
        contentHeight: all.height + 2 * Space.gap
        clip: true
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("Quantities")

        Column {
            id: all
            x: Space.margin
            y: Space.gap
            width: root.width - 2 * x
            spacing: Space.gap

            PageHead { width: parent.width; title: qsTr("Quantities"); note: qsTr("Touch a figure to see how it came about."); onBack: root.back() }
            GuestStrip { width: parent.width; figures: root.figures; isNarrow: root.isNarrow }
            Remark { width: parent.width; text: root.figures.holes; tint: Theme.ember; lines: 99 }
            Repeater {
                model: root.figures.groups

                FigureGroup {
                    width: all.width
                    columns: root.isNarrow ? 2 : 5
                    onOpen: key => root.figures.open(key)
                }
            }
        }
    }
    Repeater {
        model: root.figures.isOpen ? 1 : 0

        FigureView { anchors.fill: parent; figures: root.figures; isNarrow: root.isNarrow }
    }
}
