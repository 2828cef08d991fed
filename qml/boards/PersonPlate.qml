import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One of the crew: what now, for how long; what next, and when.
Item {
    id: root

    required property string name
    required property string now
    required property string awaited
    required property string countdown
    required property string unit
    required property string mark
    required property string next
    required property string nextAt
    required property bool isLate
    required property bool isDue
    required property int index

    implicitHeight: words.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ": " + root.now + ", " + root.countdown + " " + root.unit + " " + root.awaited

    Plate {
        anchors.fill: parent
        isNotched: root.mark === "running"
        edgeWidth: root.isDue ? Space.line : Space.hair
        fill: root.isDue ? Theme.emberWash : Theme.plate
        edge: root.isDue ? Theme.ember : Theme.edge
    }
    Column {
        id: words
        x: Space.margin
        y: Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.tight

        Label { text: root.name; size: Type.small; isStrong: true; color: Theme.ash }
        Row {
            width: parent.width
            spacing: Space.small

            StateMark { id: shape; mark: root.mark; isLate: root.isLate }
            Label {
                width: parent.width - shape.width - left.width - 2 * Space.small
                text: root.now
                isStrong: true
                maximumLineCount: 4
            }
            Column {
                id: left
                visible: root.countdown !== ""

                Countdown {
                    anchors.right: parent.right
                    figure: root.countdown
                    unit: root.unit
                    size: Type.figure
                    color: root.isDue ? Theme.ember : Theme.ink
                }
                Label { anchors.right: parent.right; text: root.awaited; size: Type.small; color: root.isDue ? Theme.ember : Theme.ash; wrapMode: Text.NoWrap }
            }
        }
        Label {
            width: parent.width
            visible: root.next !== ""
            text: qsTr("then %1 · %2").arg(root.next).arg(root.nextAt)
            size: Type.small
            color: Theme.ash
            maximumLineCount: 4
        }
    }
}
