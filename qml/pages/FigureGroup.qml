pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The figures of one dish, or of everything that is bought.
Column {
    id: root

    required property string heading
    required property RowList figures
    property int columns: 5
    signal open(string key)
    readonly property real share: Math.floor((root.width - (root.columns - 1) * Space.small) / root.columns)

    spacing: Space.tight
    Accessible.role: Accessible.Grouping
    Accessible.name: root.heading

    Heading { width: parent.width; visible: root.heading !== ""; text: root.heading }
    Grid {
        width: parent.width
        columns: root.columns
        spacing: Space.small

        Repeater {
            model: root.figures

            FigureTile {
                id: tile
                required property string key
                width: root.share
                onClicked: root.open(tile.key)
            }
        }
    }
}
