import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The ways to the boards: four at a phone's foot, and beside them the run sheet where there is room.
/// Every other page is behind "More".
Rectangle {
    id: root

    required property bool isRow
    required property string place
    signal go(string place)
    readonly property real share: root.isRow ? (root.width - 2 * Space.tight) / 4 : root.width - 2 * Space.tight
    readonly property bool isElsewhere: root.place !== "lead" && root.place !== "fire" && root.place !== "buffet" && (root.isRow || root.place !== "sheet")

    color: Theme.plate
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Boards")

    Rectangle {
        width: root.isRow ? parent.width : Space.hair
        height: root.isRow ? Space.hair : parent.height
        color: Theme.edge
    }
    Grid {
        x: Space.tight
        y: Space.tight
        columns: root.isRow ? 4 : 1
        spacing: root.isRow ? 0 : Space.small

        RailPlate { width: root.share; text: qsTr("Lead"); glyph: Icons.lead; isOpen: root.place === "lead"; onClicked: root.go("lead") }
        RailPlate { width: root.share; text: qsTr("Fire"); glyph: Icons.flame; isOpen: root.place === "fire"; onClicked: root.go("fire") }
        RailPlate { width: root.share; text: qsTr("Buffet"); glyph: Icons.table; isOpen: root.place === "buffet"; onClicked: root.go("buffet") }
        RailPlate { visible: !root.isRow; width: root.share; text: qsTr("Sheet"); glyph: Icons.sheet; isOpen: root.place === "sheet"; onClicked: root.go("sheet") }
        RailPlate { width: root.share; text: qsTr("More"); glyph: Icons.more; isOpen: root.isElsewhere; onClicked: root.go("more") }
    }
}
