pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Several pieces off the grate in one touch: those that are due are ticked already. The great
/// touch stands above the pieces, where it stays in sight however many they are.
Sheet {
    id: root

    required property Day day
    readonly property Fire fire: root.day.fire
    title: root.fire.sheetTitle
    span: Space.column * 1.7
    hasWayOut: true
    onClosed: root.fire.close()

    PressPlate {
        width: parent.width
        height: Space.hurried
        tone: root.fire.canPullSeveral ? "ember" : "plain"
        isOff: !root.fire.canPullSeveral
        glyph: Icons.pull
        text: root.fire.severalVerb
        onClicked: root.fire.pullSeveral()
    }
    Remark { width: parent.width; text: root.day.refusal; tint: Theme.ember }
    Item { width: 1; height: Space.small }
    Grid {
        id: pieces
        width: parent.width
        columns: Math.max(2, Math.floor((width + spacing) / (Space.hurried * 1.1 + spacing)))
        spacing: Space.gap
        readonly property real share: (width - (columns - 1) * spacing) / columns

        Repeater {
            model: root.fire.choices

            PieceTile { id: tile; width: pieces.share; onClicked: root.fire.choose(tile.key) }
        }
    }
}
