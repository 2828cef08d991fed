pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The first page: an event of this device, a demo, or a rehearsal of one.
Flickable {
    id: root

    required property Events events
    property bool isNarrow: false
    signal make()
    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Events")

    Column {
        id: all
        x: Math.max(Space.margin, (root.width - Space.column * 1.6) / 2)
        y: Space.wide
        width: root.width - 2 * x
        spacing: Space.gap

        Row {
            spacing: Space.gap
            Glyph { path: Icons.flame; color: Theme.ember; size: Type.countdown }
            Label { text: qsTr("Cinderbell"); size: Type.title * 1.4; isStrong: true; anchors.verticalCenter: parent.verticalCenter }
        }
        Remark { width: parent.width; text: root.events.refusal; tint: Theme.ember }
        PressPlate { width: parent.width; height: Space.hurried; tone: "ember"; glyph: Icons.plus; text: qsTr("New event"); onClicked: root.make() }
        Heading { width: parent.width; visible: root.events.known.count > 0; text: qsTr("On this device") }
        Repeater {
            model: root.events.known

            EventPlate {
                id: known
                width: all.width
                isNarrow: root.isNarrow
                onOpen: root.events.open(known.key)
            }
        }
        Heading { width: parent.width; text: qsTr("Demo events") }
        Repeater {
            model: root.events.demos

            EventPlate {
                id: demo
                width: all.width
                isDemo: true
                isNarrow: root.isNarrow
                onOpen: root.events.openDemo(demo.key, 0)
                onRehearse: root.events.openDemo(demo.key, 60)
            }
        }
        Remark {
            width: parent.width
            text: qsTr("Local fire and health codes and licensed practice decide.")
        }
    }
}
