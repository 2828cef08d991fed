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
    readonly property real names: Space.touch * 1.25

    contentWidth: root.names + root.sheet.span * Space.minute + Space.wide
    contentHeight: rows.height + axis.height + Space.wide
    clip: true
    Accessible.role: Accessible.Chart
    Accessible.name: qsTr("Run sheet chart")
    Component.onCompleted: contentX = Math.max(0, Math.min(root.sheet.now * Space.minute - width / 4, contentWidth - width))

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
    Column {
        id: rows
        y: axis.height

        Repeater {
            model: root.lanes

            Item {
                id: lane
                required property string name
                required property int levels
                required property RowList blocks
                width: root.contentWidth
                height: lane.levels * (Space.lane + Space.tight) + Space.small

                Rectangle { width: parent.width; height: Space.hair; color: Theme.edge }
                Repeater {
                    model: lane.blocks

                    RunBlock { origin: root.names }
                }
                Rectangle {
                    x: root.contentX
                    width: root.names
                    height: parent.height
                    color: Theme.ground

                    Label { y: Space.small; width: parent.width - Space.small; text: lane.name; size: Type.small; isStrong: true }
                }
            }
        }
    }
    Rectangle {
        x: root.names + root.sheet.now * Space.minute
        y: axis.height - Space.small
        width: Space.line
        height: rows.height + Space.small
        color: Theme.ember

        Label { anchors.bottom: parent.top; anchors.right: parent.left; text: qsTr("now"); size: Type.small; isStrong: true; color: Theme.ember; anchors.bottomMargin: -Space.small }
    }
    Rectangle {
        x: root.names + root.sheet.bell * Space.minute
        y: axis.height - Space.small
        width: Space.line
        height: rows.height + Space.small
        color: Theme.ink

        Glyph { anchors.bottom: parent.top; anchors.horizontalCenter: parent.horizontalCenter; path: Icons.bell; size: Space.mark }
    }
}
