import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// A batch on the grate: what, how long to the next turn, and the two touches it wants.
Item {
    id: root

    component BatchTitle: Label {
        size: Type.lead
        isStrong: true
        maximumLineCount: 4
        lineHeight: 0.95
    }

    required property string key
    required property string title
    required property string mark
    required property string state
    required property string awaited
    required property string countdown
    required property string unit
    required property bool isDue
    required property int turnsDone
    required property int turnCount
    required property string turnText
    required property bool canTurn
    required property bool canFinish
    required property string finishVerb
    required property string finishText
    required property double progress
    required property int index
    property bool isNarrow: false
    signal turn()
    signal pull()

    implicitHeight: words.height + touches.height + 3 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title + ", " + root.awaited + " " + root.countdown + " " + root.unit

    Plate {
        anchors.fill: parent
        isNotched: root.mark === "running"
        fill: root.isDue ? Theme.emberWash : Theme.plate
        edge: root.isDue ? Theme.ember : Theme.edge
    }
    Column {
        id: words
        x: Space.margin
        y: Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.tight

        Row {
            width: parent.width - Space.notch
            visible: root.isNarrow
            spacing: Space.small

            StateMark { id: shape; mark: root.mark; isLate: root.isDue }
            BatchTitle { width: parent.width - shape.width - Space.small; text: root.title }
        }
        Item {
            width: parent.width
            height: Math.max(big.height, beside.height)

            Countdown {
                id: big
                anchors.verticalCenter: parent.verticalCenter
                figure: root.countdown
                unit: root.unit
                size: Type.countdown
                color: root.isDue ? Theme.ember : Theme.ink
            }
            Column {
                id: beside
                anchors.left: big.right
                anchors.leftMargin: Space.gap
                anchors.right: parent.right
                anchors.rightMargin: root.isNarrow ? 0 : Space.notch
                anchors.verticalCenter: parent.verticalCenter

                Row {
                    width: parent.width
                    visible: !root.isNarrow
                    spacing: Space.small

                    StateMark { id: aside; mark: root.mark; isLate: root.isDue }
                    BatchTitle { width: parent.width - aside.width - Space.small; text: root.title }
                }
                Label { width: parent.width; text: root.awaited; isStrong: true; maximumLineCount: 1; fontSizeMode: Text.HorizontalFit; minimumPixelSize: Type.small }
                Label {
                    width: parent.width
                    text: qsTr("ends %1").arg(root.finishText)
                    size: Type.small
                    color: Theme.ash
                    maximumLineCount: 2
                }
                Item { width: 1; height: Space.tight }
                Pips { done: root.turnsDone; count: root.turnCount; x: Space.tight; room: parent.width - 2 * Space.tight }
            }
        }
        Cord { width: parent.width; progress: root.progress }
    }
    // Side by side on a phone the one to pull would be 17 mm wide; a glove needs 25.
    Grid {
        id: touches
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Space.gap
        x: Space.margin
        columns: root.isNarrow ? 1 : 2
        spacing: Space.apart

        PressPlate {
            visible: root.canTurn
            width: root.isNarrow ? words.width : (words.width - Space.apart) * 0.6
            height: Space.hurried
            tone: "ember"
            glyph: Icons.turn
            size: Type.title
            text: root.turnText
            onClicked: root.turn()
        }
        PressPlate {
            visible: root.canFinish
            width: root.canTurn && !root.isNarrow ? (words.width - Space.apart) * 0.4 : words.width
            height: Space.hurried
            tone: root.canTurn ? "plain" : "ember"
            glyph: Icons.pull
            size: Type.title
            text: root.finishVerb
            onClicked: root.pull()
        }
    }
}
