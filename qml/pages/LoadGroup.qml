pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What rides in one place.
Column {
    id: root

    required property string heading
    required property string note
    required property RowList rows
    property int columns: 2
    signal tick(string key)
    signal count(string key)

    spacing: Space.tight
    Accessible.role: Accessible.Grouping
    Accessible.name: root.heading

    Heading { width: parent.width; text: root.heading; note: root.note }
    Grid {
        width: parent.width
        columns: root.columns
        spacing: Space.small

        Repeater {
            model: root.rows

            LoadTile {
                id: tile
                width: Math.floor((root.width - (root.columns - 1) * Space.small) / root.columns)
                onTick: root.tick(tile.key)
                onCount: root.count(tile.key)
            }
        }
    }
}
