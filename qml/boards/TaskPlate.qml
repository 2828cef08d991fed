pragma ComponentBehavior: Bound

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
    required property bool isList
    required property string awaited
    required property string countdown
    required property string unit
    readonly property string remaining: root.unit === "" ? root.countdown : root.countdown + "\u00a0" + root.unit
    required property string whenText
    required property bool canStart
    required property bool canFinish
    required property bool canSkip
    required property bool canComeBack
    required property string startVerb
    required property string finishVerb
    required property string detail
    required property string caution
    required property string heading
    required property RowList lines
    required property int index
    property bool showsHeading: false
    property bool showsLines: false
    property bool showsSkip: false
    property bool showsCaution: false
    property bool showsReturn: false
    property bool canPlan: true
    property int columns: 2
    /// What is held stands below the plate's words, not beside its touch.
    property bool isSkipBelow: root.columns === 1
    signal start()
    signal finish()
    signal skip()
    signal comeBack()
    signal tick(int line)
    /// The room the heading takes above the plate.
    readonly property real above: part.visible ? part.height + Space.small : 0
    /// What is held lies apart from the touches of this plate and of those above and below it.
    readonly property bool offersSkip: root.showsSkip && root.canSkip && root.isOpen
    readonly property bool offersReturn: root.showsReturn && root.canComeBack
    readonly property real skipRoom: root.offersSkip ? Space.apart - Space.gap : 0
    readonly property bool isOpen: root.mark !== "done" && root.mark !== "skipped"

    implicitHeight: root.above + all.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title + ", " + root.state + ", " + root.remaining + " " + root.awaited

    Label {
        id: part
        visible: root.showsHeading && root.heading !== ""
        topPadding: root.index > 0 ? Space.margin : 0
        width: parent.width
        text: root.heading
        size: Type.lead
        isStrong: true
        maximumLineCount: 1
        Accessible.role: Accessible.Heading
    }
    Plate {
        anchors.fill: parent
        anchors.topMargin: root.above
        isNotched: root.mark === "running"
        edgeWidth: root.isOpen ? Space.line : Space.hair
        edge: root.isDue ? Theme.ember : root.isOpen ? Theme.edge : Theme.hairline
        fill: root.isOpen ? Theme.plate : Theme.ground
    }
    Column {
        id: all
        x: Space.margin
        y: root.above + Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.gap

        Item {
            width: parent.width
            height: Math.max(words.height, touches.visible ? touches.y + Space.touch + (held.visible && list.visible ? root.skipRoom : 0) : 0)

            StateMark { id: shape; mark: root.mark; isLate: root.isLate; y: Space.tight / 2 }
            Column {
                id: words
                spacing: Space.tight
                anchors.left: shape.right
                anchors.leftMargin: Space.gap
                anchors.right: touches.left
                anchors.rightMargin: Space.small

                Label {
                    width: parent.width
                    text: root.title
                    isStrong: root.isOpen
                    color: root.isOpen ? Theme.ink : Theme.ash
                    maximumLineCount: 8
                }
                Label {
                    width: parent.width
                    text: root.isOpen ? root.remaining + " " + root.awaited + " · " + root.whenText
                                      : (root.state + " " + root.countdown).trim()
                    size: Type.small
                    color: root.isDue ? Theme.ember : Theme.ash
                    maximumLineCount: 6
                }
                Label {
                    width: parent.width
                    visible: root.detail !== ""
                    text: root.detail
                    size: Type.small
                    color: Theme.ash
                    maximumLineCount: 2
                }
            }
            Row {
                id: touches
                anchors.right: parent.right
                y: held.visible ? root.skipRoom - Space.gap : 0
                visible: root.canStart || root.canFinish || root.offersReturn
                width: visible ? implicitWidth : 0
                spacing: Space.apart

                HoldPlate {
                    id: held
                    visible: root.offersSkip && !root.isSkipBelow
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
                PressPlate {
                    visible: root.offersReturn
                    enabled: root.canPlan
                    size: Type.body
                    text: root.canPlan ? qsTr("Bring back") : qsTr("Planning…")
                    Accessible.name: root.canPlan ? qsTr("Bring back: %1").arg(root.title) : text
                    onClicked: root.comeBack()
                }
            }
        }
        Remark { width: parent.width; text: root.showsCaution ? root.caution : "" }
        Grid {
            id: list
            width: parent.width
            // What cannot begin yet is one line; its list would only bury what can.
            visible: root.showsLines && (root.canStart || root.canFinish || root.isList && root.isOpen) && root.lines.count > 0
            columns: root.columns
            spacing: Space.small

            Repeater {
                model: root.showsLines ? root.lines : null

                TickTile {
                    id: tile
                    required property int line
                    required text
                    required isTicked
                    width: (all.width - Space.small * (root.columns - 1)) / root.columns
                    onTicked: root.tick(tile.line)
                }
            }
        }
        // On a narrow board it stands far from the touches of the hurry.
        Item {
            width: parent.width
            height: alone.y + alone.height + Math.max(0, root.skipRoom - Space.gap - Space.small)
            visible: root.offersSkip && root.isSkipBelow

            HoldPlate {
                id: alone
                y: root.skipRoom
                width: parent.width
                text: qsTr("Hold: leave out")
                onHeld: root.skip()
            }
        }
    }
}
