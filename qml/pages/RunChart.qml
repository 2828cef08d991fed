pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The run sheet drawn: lanes down, time across, the bell and now as lines. What was planned shows
/// as an outline behind what moved.
Flickable {
    id: root

    required property RunSheet sheet
    required property RowList lanes
    /// How many rows of blocks all lanes have together.
    required property int levels
    /// Room for two words beside each other where there is any.
    readonly property real names: Math.max(Space.touch * 1.25, Math.min(Space.touch * 1.8, root.width / 8))
    readonly property real nowAt: root.names + root.sheet.now * Space.minute
    /// Rows as high as the page allows, within reason.
    readonly property real laneHeight: Math.max(Space.lane, Math.min(Space.touch * 4,
        (height - axis.height - Space.wide - root.lanes.count * Space.small) / Math.max(1, root.levels) - Space.tight))

    contentWidth: root.names + root.sheet.span * Space.minute + Space.wide
    contentHeight: rows.height + axis.height + Space.wide
    clip: true
    Accessible.role: Accessible.Chart
    Accessible.name: qsTr("Run sheet chart")
    // Opens at now; from then on it stays where a hand left it.
    property bool isPlaced: false
    onWidthChanged: {
        if (root.isPlaced || root.width <= 0)
            return
        root.isPlaced = true
        root.contentX = Math.max(0, Math.min(root.sheet.now * Space.minute - (root.width - root.names) / 8, root.contentWidth - root.width))
    }

    Item {
        id: axis
        x: root.names
        width: root.sheet.span * Space.minute
        height: Type.body * 3

        Repeater {
            model: root.sheet.axis

            Item {
                id: hour
                required property double at
                required property string clock
                required property string fromBell
                required property bool isHour
                x: hour.at * Space.minute

                Rectangle { y: axis.height; width: Space.hair; height: rows.height; color: Theme.hairline }
                Label { text: hour.clock; size: Type.small; isStrong: hour.isHour; wrapMode: Text.NoWrap }
                Label { y: Type.small * 1.2; text: hour.fromBell; size: Type.small; color: Theme.ash; wrapMode: Text.NoWrap }
            }
        }
    }
    // Under the blocks, which draw their own piece of it behind their names.
    Rectangle {
        x: root.nowAt
        y: axis.height - Space.small
        width: Space.line
        height: rows.height + Space.small
        color: Theme.ember

        Label { anchors.top: parent.bottom; anchors.horizontalCenter: parent.horizontalCenter; text: qsTr("now"); size: Type.small; isStrong: true; color: Theme.ember }
    }
    Column {
        id: rows
        y: axis.height

        Repeater {
            model: root.lanes

            Item {
                id: lane
                required property int index
                required property RowList blocks
                width: root.contentWidth
                height: lane.index < owners.count ? owners.itemAt(lane.index).height : 0

                Rectangle { width: parent.width; height: Space.hair; color: Theme.edge }
                Repeater {
                    model: lane.blocks

                    RunBlock { origin: root.names; laneHeight: root.laneHeight; now: root.nowAt; leftEdge: root.contentX + root.names }
                }
            }
        }
    }
    Rectangle {
        x: root.names + root.sheet.bell * Space.minute
        y: axis.height - Space.small
        width: Space.line
        height: rows.height + Space.small
        color: Theme.ink

        Glyph { anchors.top: parent.bottom; anchors.horizontalCenter: parent.horizontalCenter; path: Icons.bell; size: Space.mark }
    }
    // Names keep to the left edge while the hours slide under them.
    Rectangle {
        x: root.contentX
        width: root.names
        height: root.contentHeight
        color: Theme.ground

        Column {
            y: axis.height

            Repeater {
                id: owners
                model: root.lanes

                Item {
                    id: owner
                    required property string name
                    required property int levels
                    width: root.names
                    // A name is whole, however low the rows are.
                    height: Math.max(owner.levels * (root.laneHeight + Space.tight) + Space.small, whole.height + 2 * Space.small)

                    Rectangle { width: parent.width; height: Space.hair; color: Theme.edge }
                    Label { id: whole; objectName: "laneName"; y: Space.small; width: parent.width - Space.small; text: owner.name; size: Type.small; lineHeight: 0.9; isStrong: true; maximumLineCount: 12 }
                }
            }
        }
    }
}
