import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One pan as it stands: under which control, its last reading, and its clock. A touch opens what
/// can be done with it.
T.AbstractButton {
    id: root

    required property string key
    required property string title
    required property string standing
    required property string last
    required property string leftover
    required property string countdown
    required property string unit
    required property string clock
    required property string mark
    required property bool isBad
    required property bool isOver
    required property bool isClock

    implicitHeight: Math.max(Space.touch, words.implicitHeight + 2 * Space.gap)
    text: root.title
    enabled: !root.isOver
    Accessible.role: Accessible.Button
    Accessible.name: root.title + ": " + root.standing
    Accessible.onPressAction: root.clicked()

    background: Plate {
        fill: root.down ? Theme.waterWash : root.isBad ? Theme.emberWash : root.isOver ? Theme.ground : Theme.plate
        edge: root.visualFocus ? Theme.water : root.isBad ? Theme.ember : root.isOver ? Theme.hairline : Theme.edge
        isNotched: root.mark === "running"
    }
    StateMark { id: shape; x: Space.margin; y: Space.gap; mark: root.mark }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        y: Space.gap
        spacing: Space.tight

        Label { width: parent.width - Space.notch; text: root.title; isStrong: true; color: root.isOver ? Theme.ash : Theme.ink; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; text: root.standing; size: Type.small; color: root.isBad ? Theme.ember : Theme.ash; maximumLineCount: 5; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.leftover; isStrong: true; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.last; size: Type.small; color: Theme.ash; Accessible.ignored: true }
        Row {
            visible: root.countdown !== ""
            width: parent.width
            spacing: Space.gap

            Countdown { id: left; figure: root.countdown; unit: root.unit; size: root.isClock ? Type.countdown : Type.figure }
            Label { anchors.verticalCenter: left.verticalCenter; width: parent.width - left.width - Space.gap; text: root.clock; size: Type.small; Accessible.ignored: true }
        }
    }
}
