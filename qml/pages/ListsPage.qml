import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// What is reckoned, loaded, cooked ahead, laid out and printed, as plates to touch.
Flickable {
    id: root

    property bool isNarrow: false
    signal go(string place)
    contentHeight: all.y + all.height + Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Lists")

    Grid {
        id: all
        x: Space.margin
        y: Space.gap
        columns: root.isNarrow ? 2 : 4
        spacing: Space.gap
        readonly property real share: Math.floor((root.width - 2 * Space.margin - (columns - 1) * spacing) / columns)

        PagePlate { width: all.share; glyph: Icons.scales; text: qsTr("Quantities"); onClicked: root.go("quantities") }
        PagePlate { width: all.share; glyph: Icons.van; text: qsTr("Load"); onClicked: root.go("load") }
        PagePlate { width: all.share; glyph: Icons.rest; text: qsTr("Kitchen"); onClicked: root.go("kitchen") }
        PagePlate { width: all.share; glyph: Icons.pans; text: qsTr("Buffet line"); onClicked: root.go("line") }
        PagePlate { width: all.share; glyph: Icons.paper; text: qsTr("Paper"); onClicked: root.go("paper") }
    }
}
