pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The other devices of the crew: how they are joined, by a code of one that is typed on the others,
/// and where each of them stands.
Flickable {
    id: root

    required property CrewDevicesView devices
    property bool isNarrow: false
    readonly property string page: root.devices.page
    signal back()

    contentHeight: all.height + 2 * Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Devices")

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * x
        // All keys of a phone are in sight, also while a touch can be taken back.
        spacing: root.isNarrow && root.page === "enter" ? Space.small : Space.gap

        PageHead {
            width: parent.width
            title: root.devices.title
            // What is wrong must not move the keys of a phone away from the finger.
            note: root.isNarrow && root.page === "enter" ? root.devices.problem : root.devices.note
            onBack: root.page === "enter" || root.page === "code" ? root.devices.close() : root.back()
        }
        Remark { width: parent.width; text: root.devices.trouble; tint: Theme.ember; lines: 8 }
        Label {
            width: parent.width
            visible: root.page === "none"
            text: qsTr("What one ticks, all see: over one Wi-Fi or a phone's hotspot, without the internet.")
            maximumLineCount: 6
        }
        Grid {
            id: ways
            width: parent.width
            visible: root.page === "none"
            columns: root.isNarrow ? 1 : 2
            spacing: Space.gap
            readonly property real share: Math.floor((width - (columns - 1) * spacing) / columns)
            // On a phone a little higher than the plate of a board: their names are longer.
            readonly property int rise: Math.round(Space.hurried * (root.isNarrow ? 1.3 : 1.8))

            BoardPlate { width: ways.share; height: ways.rise; isRow: root.isNarrow; glyph: Icons.code; text: qsTr("Show a code"); what: qsTr("On the first device of the crew"); onClicked: root.devices.begin() }
            BoardPlate { width: ways.share; height: ways.rise; isRow: root.isNarrow; glyph: Icons.keys; text: qsTr("Enter a code"); what: qsTr("On every other one"); onClicked: root.devices.ask() }
        }
        Remark { width: parent.width; visible: root.page === "none" && text !== ""; text: root.devices.problem; tint: Theme.ember; lines: 8 }
        CodeEntry { width: parent.width; visible: root.page === "enter"; devices: root.devices; isNarrow: root.isNarrow }
        CodeGroups { width: parent.width; visible: root.page === "code"; columns: root.isNarrow ? 2 : 4; name: qsTr("Code"); groups: root.devices.code }
        Heading { width: parent.width; visible: root.page === "code"; text: root.devices.rows.count > 0 ? qsTr("Joined so far") : qsTr("Joined so far: none") }
        Grid {
            id: plates
            width: parent.width
            visible: (root.page === "code" || root.page === "joined") && root.devices.rows.count > 0
            columns: root.isNarrow ? 1 : 2
            columnSpacing: Space.gap
            rowSpacing: Space.small
            readonly property real share: Math.floor((width - (columns - 1) * columnSpacing) / columns)

            Repeater {
                model: root.devices.rows
                DevicePlate { width: plates.share }
            }
        }
        PressPlate { visible: root.page === "code"; width: root.isNarrow ? parent.width : implicitWidth; glyph: Icons.tick; text: qsTr("Done"); onClicked: root.devices.close() }
        PressPlate { visible: root.page === "joined"; width: root.isNarrow ? parent.width : implicitWidth; glyph: Icons.code; text: qsTr("Show the code again"); onClicked: root.devices.showCode() }
        // Well away from what is touched: to come back one needs the code.
        Column {
            width: parent.width
            visible: root.page === "joined"
            topPadding: Space.apart
            spacing: Space.small

            HoldPlate { objectName: "leave"; width: root.isNarrow ? parent.width : implicitWidth; text: qsTr("Hold: leave the other devices"); onHeld: root.devices.leave() }
            Label { width: parent.width; text: qsTr("What came from them stays on this device."); size: Type.small; color: Theme.ash }
        }
    }
}
