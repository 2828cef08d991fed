import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Every page that is not a way of its own, as plates to touch.
Flickable {
    id: root

    property bool isNarrow: false
    /// This device knows of others.
    property bool hasDevices: false
    signal go(string place)
    signal lock()
    contentHeight: all.y + all.height + Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("More")

    Grid {
        id: all
        x: Space.margin
        y: Space.gap
        columns: root.isNarrow ? 2 : 4
        spacing: Space.gap
        readonly property real share: Math.floor((root.width - 2 * Space.margin - (columns - 1) * spacing) / columns)

        PagePlate { width: all.share; glyph: Icons.sheet; text: qsTr("Run sheet"); onClicked: root.go("sheet") }
        PagePlate { width: all.share; glyph: Icons.bell; text: qsTr("Promise"); onClicked: root.go("promise") }
        PagePlate { width: all.share; glyph: Icons.lead; text: qsTr("Crew"); onClicked: root.go("crew") }
        PagePlate { width: all.share; glyph: Icons.probe; text: qsTr("Record"); onClicked: root.go("record") }
        PagePlate { width: all.share; glyph: Icons.caution; text: qsTr("Cautions"); onClicked: root.go("cautions") }
        PagePlate { width: all.share; glyph: Icons.lock; text: qsTr("Lock"); onClicked: root.lock() }
        PagePlate { width: all.share; glyph: Icons.pencil; text: qsTr("Edit the event"); onClicked: root.go("make") }
        PagePlate { width: all.share; glyph: Icons.lists; text: qsTr("Lists"); onClicked: root.go("lists") }
        PagePlate { width: all.share; glyph: Icons.serve; text: qsTr("Serve"); onClicked: root.go("serve") }
        PagePlate { width: all.share; glyph: Icons.tick; text: qsTr("Strike"); onClicked: root.go("strike") }
        PagePlate { width: all.share; glyph: Icons.clock; text: qsTr("Debrief"); onClicked: root.go("debrief") }
        PagePlate { width: all.share; glyph: Icons.holder; text: qsTr("Who holds this device?"); onClicked: root.go("holder") }
        PagePlate { visible: root.hasDevices; width: all.share; glyph: Icons.devices; text: qsTr("Devices"); onClicked: root.go("devices") }
        PagePlate { width: all.share; glyph: Icons.settings; text: qsTr("Settings"); onClicked: root.go("settings") }
    }
}
