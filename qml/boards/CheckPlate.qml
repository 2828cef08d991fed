import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// A check to do: which dish, what it must show, when. A touch opens the keys.
T.AbstractButton {
    id: root

    required property string key
    required property string dish
    required property string what
    required property string limit
    required property string due
    required property string countdown
    required property string unit
    required property string mark
    required property string missed
    required property bool isDue
    property bool isNarrow: false

    implicitHeight: Math.max(Space.touch, words.implicitHeight + (root.isNarrow ? time.height + Space.tight : 0) + 2 * Space.gap)
    text: root.dish
    Accessible.role: Accessible.Button
    Accessible.name: root.dish + ": " + root.what
    Accessible.onPressAction: root.clicked()

    background: Plate {
        fill: root.down ? Theme.waterWash : root.isDue ? Theme.emberWash : Theme.plate
        edge: root.visualFocus ? Theme.water : root.isDue ? Theme.ember : root.mark === "ready" ? Theme.edge : Theme.hairline
    }
    StateMark { id: shape; x: Space.margin; y: Space.gap; mark: root.mark }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: parent.right
        anchors.rightMargin: Space.margin + (root.isNarrow ? 0 : time.width + Space.gap)
        y: Space.gap
        spacing: Space.tight

        Label { width: parent.width; text: root.dish; size: Type.lead; isStrong: true; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; text: root.what; size: Type.small; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.limit; size: Type.small; isStrong: true; maximumLineCount: 4; Accessible.ignored: true }
        Label { width: parent.width; visible: text !== ""; text: root.missed; size: Type.small; color: Theme.ember; Accessible.ignored: true }
    }
    // Under the words on a phone, so that a long name keeps its width.
    Grid {
        id: time
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        y: root.isNarrow ? words.y + words.height + Space.tight : Space.gap
        columns: root.isNarrow ? 2 : 1
        spacing: root.isNarrow ? Space.gap : Space.tight
        horizontalItemAlignment: Grid.AlignRight
        verticalItemAlignment: Grid.AlignVCenter

        Countdown { figure: root.countdown; unit: root.unit; size: Type.figure; color: root.isDue ? Theme.ember : Theme.ink }
        Label { text: root.due; size: Type.small; color: Theme.ash; wrapMode: Text.NoWrap; Accessible.ignored: true }
    }
}
