import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One stretch of work on the chart.
Item {
    id: root

    required property double begin
    required property int level
    required property string name
    required property string times
    required property string mark
    required property bool isLate
    required property bool isStanding
    required property bool isCritical
    required property double slack
    required property double plannedLeft
    required property double plannedWidth
    required property bool isMoved
    required property double length
    property real origin: 0
    property real laneHeight: Space.lane
    /// Where now is on the chart.
    property real now: 0
    /// Where the visible part of the chart begins; the name stays inside it.
    property real leftEdge: 0
    readonly property real across: root.length * Space.minute
    readonly property bool isOver: root.mark === "done" || root.mark === "skipped"

    y: Space.small + root.level * (root.laneHeight + Space.tight)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.times

    Rectangle {
        x: root.origin + root.plannedLeft * Space.minute
        visible: root.isMoved
        width: root.plannedWidth * Space.minute
        height: root.laneHeight
        color: Theme.none
        border.width: Space.hair
        border.color: Theme.ash
    }
    Rectangle {
        id: stretch
        x: root.origin + root.begin * Space.minute
        width: Math.max(Space.line * 2, root.across - Space.hair)
        height: root.laneHeight
        radius: Space.hair
        clip: true
        color: root.isOver ? Theme.ground : root.mark === "running" ? Theme.waterWash
             : root.isLate || root.mark === "over" ? Theme.emberWash : Theme.plate
        border.width: root.isStanding ? Space.hair : Space.line
        border.color: root.isLate || root.mark === "over" ? Theme.ember
             : root.mark === "running" ? Theme.water : root.isOver ? Theme.hairline : Theme.edge

        // The chain that holds up the bell: a heavy foot.
        Rectangle {
            visible: root.isCritical
            anchors.bottom: parent.bottom
            width: parent.width
            height: Space.small
            color: Theme.ember
        }
        // Now runs through what is under way, behind its name.
        Rectangle {
            x: root.now - parent.x
            width: Space.line
            height: parent.height
            color: Theme.ember
        }
        Label {
            id: title
            readonly property real edge: Math.max(0, Math.min(root.leftEdge - parent.x, parent.width - Space.touch))
            readonly property real room: parent.width - edge - Space.small - Space.tight
            /// A short stretch has its name written upwards.
            readonly property bool isUpright: parent.width < Space.touch * 0.8

            x: isUpright ? 0 : edge + Space.small
            y: isUpright ? parent.height : 0
            width: isUpright ? parent.height : room
            height: isUpright ? parent.width : parent.height
            rotation: isUpright ? -90 : 0
            transformOrigin: Item.TopLeft
            leftPadding: isUpright ? Space.small : 0
            visible: height > Type.small
            verticalAlignment: Text.AlignVCenter
            text: root.name
            size: Type.small
            lineHeight: 0.9
            wrapMode: Text.Wrap  // a word longer than the stretch is broken, not cut
            maximumLineCount: Math.max(1, Math.floor(height / (Type.small * 1.15)))
            color: root.isOver ? Theme.ash : Theme.ink

            Rectangle {
                z: -1
                x: title.leftPadding - Space.hair
                y: (title.height - title.contentHeight) / 2
                width: title.contentWidth + 2 * Space.hair
                height: title.contentHeight
                color: stretch.color
            }
        }
    }
    // How much later it may end: a whisker.
    Rectangle {
        x: root.origin + root.begin * Space.minute + root.across
        y: root.laneHeight / 2
        visible: root.slack > 0
        width: root.slack * Space.minute
        height: Space.hair
        color: Theme.ash

        Rectangle { anchors.right: parent.right; anchors.verticalCenter: parent.verticalCenter; width: Space.hair; height: Space.margin; color: Theme.ash }
    }
}
