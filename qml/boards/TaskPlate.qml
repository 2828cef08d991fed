import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// One task with its countdown, its one next touch, and its lines to tick.
Item {
    id: root

    required property string key
    required property string title
    required property string mark
    required property string state
    required property bool isLate
    required property bool isDue
    required property string awaited
    required property string countdown
    required property string startText
    required property string people
    required property bool canStart
    required property bool canFinish
    required property bool canSkip
    required property string startVerb
    required property string finishVerb
    required property string progressText
    required property string caution
    required property RowList lines
    required property int index
    property bool showsLines: false
    property bool showsSkip: false
    property bool showsCaution: false
    property int columns: 2
    signal start()
    signal finish()
    signal skip()
    signal tick(int line)
    readonly property bool isOpen: root.mark !== "done" && root.mark !== "skipped"

    implicitHeight: all.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title + ", " + root.state + ", " + root.countdown + " " + root.awaited

    Plate {
        anchors.fill: parent
        isNotched: root.mark === "running"
        edgeWidth: root.isOpen ? Space.line : Space.hair
        edge: root.isDue ? Theme.ember : root.isOpen ? Theme.edge : Theme.hairline
        fill: root.isOpen ? Theme.plate : Theme.ground
    }
    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.gap

        Item {
            width: parent.width
            height: Math.max(words.height, touches.visible ? Space.touch : 0)

            StateMark { id: shape; mark: root.mark; isLate: root.isLate; y: Space.tight / 2 }
            Column {
                id: words
                anchors.left: shape.right
                anchors.leftMargin: Space.gap
                anchors.right: touches.left
                anchors.rightMargin: Space.small

                Label {
                    width: parent.width
                    text: root.title
                    isStrong: root.isOpen
                    color: root.isOpen ? Theme.ink : Theme.ash
                    maximumLineCount: 2
                }
                Label {
                    width: parent.width
                    text: root.isOpen ? root.countdown + " " + root.awaited + " · " + root.startText
                                      : root.state + " " + root.countdown
                    size: Type.small
                    color: root.isDue ? Theme.ember : Theme.ash
                    maximumLineCount: 2
                }
                Label {
                    width: parent.width
                    visible: root.progressText !== "" || root.people !== ""
                    text: root.people + (root.progressText !== "" ? " · " + root.progressText : "")
                    size: Type.small
                    color: Theme.ash
                    maximumLineCount: 1
                }
            }
            Row {
                id: touches
                anchors.right: parent.right
                visible: root.canStart || root.canFinish
                width: visible ? implicitWidth : 0
                spacing: Space.apart

                HoldPlate {
                    visible: root.showsSkip && root.canSkip
                    text: qsTr("Hold: leave out")
                    onHeld: root.skip()
                }
                PressPlate {
                    visible: root.canStart || root.canFinish
                    tone: root.isDue || root.isLate ? "ember" : root.canFinish ? "water" : "plain"
                    size: Type.body
                    text: root.canFinish ? root.finishVerb : root.startVerb
                    onClicked: root.canFinish ? root.finish() : root.start()
                }
            }
        }
        Remark { width: parent.width; text: root.showsCaution ? root.caution : "" }
        Grid {
            width: parent.width
            visible: root.showsLines && root.isOpen && root.lines.count > 0
            columns: root.columns
            spacing: Space.small

            Repeater {
                model: root.showsLines ? root.lines : null

                TickTile {
                    required property int line
                    required text
                    required isTicked
                    width: (all.width - Space.small * (root.columns - 1)) / root.columns
                    onClicked: root.tick(line)
                }
            }
        }
    }
}
