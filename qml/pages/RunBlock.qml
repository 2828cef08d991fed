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
    required property double plannedLeft
    required property double plannedWidth
    required property bool isMoved
    required property double length
    property real origin: 0
    readonly property real across: root.length * Space.minute
    readonly property bool isOver: root.mark === "done" || root.mark === "skipped"

    y: Space.small + root.level * (Space.lane + Space.tight)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.times

    Rectangle {
        x: root.origin + root.plannedLeft * Space.minute
        visible: root.isMoved
        width: root.plannedWidth * Space.minute
        height: Space.lane
        color: Theme.none
        border.width: Space.hair
        border.color: Theme.ash
    }
    Rectangle {
        x: root.origin + root.begin * Space.minute
        width: Math.max(Space.line * 2, root.across - Space.hair)
        height: Space.lane
        radius: Space.hair
        clip: true
        color: root.isOver ? Theme.ground : root.mark === "running" ? Theme.waterWash
             : root.isLate || root.mark === "over" ? Theme.emberWash : Theme.plate
        border.width: root.isStanding ? Space.hair : Space.line
        border.color: root.isLate || root.mark === "over" ? Theme.ember
             : root.mark === "running" ? Theme.water : root.isOver ? Theme.hairline : Theme.edge

        Label {
            x: Space.small
            width: parent.width - Space.small - Space.tight
            anchors.verticalCenter: parent.verticalCenter
            visible: width > Space.mark * 1.6
            text: root.name
            size: Type.small
            lineHeight: 0.9
            maximumLineCount: 2
            color: root.isOver ? Theme.ash : Theme.ink
        }
    }
}
