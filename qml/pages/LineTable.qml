pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// One table from above with what stands on it. A riser has a double edge, a card is a white strip
/// at the guests' edge.
Item {
    id: root

    required property string name
    required property real length
    required property real depth
    required property RowList stands
    property real scaling: 0.2

    width: Math.floor(root.length * root.scaling)
    height: title.height + Math.ceil(root.depth * root.scaling) + Space.small
    Accessible.role: Accessible.Graphic
    Accessible.name: root.name

    Label { id: title; width: parent.width; text: root.name; size: Type.small; color: Theme.ash; maximumLineCount: 1 }
    Rectangle {
        id: surface
        y: title.height
        width: parent.width
        height: Math.ceil(root.depth * root.scaling)
        color: Theme.plate
        border.width: Space.line
        border.color: Theme.edge

        Repeater {
            model: root.stands

            LineStand { scaling: root.scaling; floor: surface.height }
        }
    }
}
