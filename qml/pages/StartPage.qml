pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The first page: an event of this device, a demo, or a rehearsal of one.
Flickable {
    id: root

    required property Events events
    required property Settings settings
    /// This device knows of others: an event may come from one of them.
    property bool hasDevices: false
    property bool isNarrow: false
    readonly property bool isFresh: root.events.coming.count === 0 && root.events.past.count === 0
    signal make()
    signal join()
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
        Heading { width: parent.width; visible: root.events.coming.count > 0; text: qsTr("Next") }
        Repeater {
            model: root.events.coming

            EventPlate {
                id: coming
                width: all.width
                isNarrow: root.isNarrow
                onOpen: root.events.open(coming.key)
            }
        }
        PressPlate { width: parent.width; height: Space.hurried; tone: root.events.coming.count > 0 ? "plain" : "ember"; glyph: Icons.plus; text: qsTr("New event"); onClicked: root.make() }
        PressPlate { objectName: "devices"; visible: root.hasDevices; width: parent.width; glyph: Icons.devices; text: qsTr("Devices of the crew"); onClicked: root.join() }
        // A device nobody has used yet says what its touches do; later the lists speak.
        Label {
            width: parent.width
            visible: root.isFresh
            text: qsTr("Make your own event in about two minutes, or look at a day that is made: open it as it would be lived, or rehearse it sixty times as fast. A rehearsal keeps nothing of yours.")
            maximumLineCount: 8
        }
        Heading { width: parent.width; visible: root.events.demos.count > 0; text: qsTr("Demo events") }
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
        Heading { width: parent.width; visible: root.events.past.count > 0; text: qsTr("Past and rehearsed") }
        Repeater {
            model: root.events.past

            EventPlate {
                id: past
                width: all.width
                isNarrow: root.isNarrow
                onOpen: root.events.open(past.key)
            }
        }
        PressPlate { objectName: "showEarlier"; width: parent.width; visible: root.events.earlier !== ""; text: root.events.earlier; onClicked: root.events.showEarlier() }
        Heading { width: parent.width; visible: root.events.canCopy && (!root.isFresh || root.events.copies.count > 0); text: qsTr("A copy of everything") }
        PressPlate { objectName: "backUp"; width: parent.width; visible: root.events.canCopy && !root.isFresh; text: qsTr("Keep a copy of everything"); onClicked: root.events.backUp() }
        Label { objectName: "copied"; width: parent.width; visible: text !== ""; text: root.events.copied; maximumLineCount: 6 }
        Repeater {
            model: root.events.copies

            CopyPlate {
                id: copy
                width: all.width
                onRestore: root.events.restore(copy.key)
            }
        }
        Choice {
            width: parent.width
            name: qsTr("Language")
            keys: ["en", "es"]
            words: ["English", "Español"]
            chosen: root.settings.language
            onChoose: key => root.settings.language = key
        }
        Remark {
            width: parent.width
            text: qsTr("Local fire and health codes and licensed practice decide.")
        }
    }
}
