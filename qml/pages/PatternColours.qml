pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The colours by what they mean, and our drawings.
Column {
    id: root

    spacing: Space.gap

    Heading { width: parent.width; text: qsTr("Colours") }
    Grid {
        id: grounds
        width: parent.width
        columns: 2
        spacing: Space.small

        Repeater {
            model: [
                { ground: Theme.ground, ink: Theme.ink, word: qsTr("linen") },
                { ground: Theme.plate, ink: Theme.ash, word: qsTr("plate, ash") },
                { ground: Theme.ember, ink: Theme.emberInk, word: qsTr("ember") },
                { ground: Theme.emberWash, ink: Theme.ember, word: qsTr("ember wash") },
                { ground: Theme.water, ink: Theme.waterInk, word: qsTr("cold water") },
                { ground: Theme.waterWash, ink: Theme.water, word: qsTr("water wash") },
                { ground: Theme.ink, ink: Theme.ground, word: qsTr("charcoal") }
            ]

            Rectangle {
                id: swatch
                required property var modelData
                width: (grounds.width - Space.small) / 2
                height: Space.touch
                color: swatch.modelData.ground
                border.width: Space.line
                border.color: Theme.edge
                radius: Space.corner

                Label { x: Space.margin; width: parent.width - 2 * x; anchors.verticalCenter: parent.verticalCenter; text: swatch.modelData.word; isStrong: true; color: swatch.modelData.ink }
            }
        }
    }
    Heading { width: parent.width; text: qsTr("Drawings") }
    Flow {
        width: parent.width
        spacing: Space.margin

        Repeater {
            model: [Icons.flame, Icons.bell, Icons.turn, Icons.pull, Icons.putOn, Icons.rest, Icons.table, Icons.lead,
                Icons.sheet, Icons.more, Icons.settings, Icons.tick, Icons.cross, Icons.plus, Icons.minus, Icons.undo,
                Icons.back, Icons.forward, Icons.play, Icons.caution, Icons.mute, Icons.clock, Icons.erase, Icons.lock,
                Icons.lists, Icons.serve, Icons.scales, Icons.van, Icons.paper, Icons.pans]

            Glyph { required property string modelData; path: modelData; size: Type.countdown }
        }
    }
}
