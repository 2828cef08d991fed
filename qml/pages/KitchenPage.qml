pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What is cooked ahead, by when, and how cold or hot it must then be.
Flickable {
    id: root

    required property Load load
    property bool isNarrow: false
    signal back()

    contentHeight: all.height + 2 * Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Kitchen")

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * x
        spacing: Space.gap

        PageHead { width: parent.width; title: qsTr("Kitchen"); note: root.load.leaveBy; onBack: root.back() }
        Label { width: parent.width; visible: root.load.kitchen.count === 0; text: qsTr("Nothing is cooked ahead."); color: Theme.ash }
        Repeater {
            model: root.load.kitchen

            KitchenPlate { width: all.width }
        }
        Remark { width: parent.width; text: qsTr("A thermometer decides what is cold or hot enough. Local codes and the licensed food protection manager decide.") }
    }
}
