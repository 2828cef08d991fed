pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// One grate to scale: touch a piece, or near it, and its sheet opens.
Column {
    id: root

    required property string key
    required property string name
    required property string note
    required property double ratio
    required property int onIt
    required property string hand
    required property chartFace fire
    required property string topUp
    required property string need
    required property bool canTouch
    required property RowList pieces
    required property int index
    required property Fire board
    property bool isNarrow: false
    /// On a phone the grate lies down the screen, where its pieces are larger.
    readonly property real across: root.isNarrow ? Math.min(root.width, Space.mm * 118 / root.ratio) : root.width

    spacing: Space.small
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.note

    Heading { width: parent.width; text: root.name }
    Label { width: parent.width; visible: root.pieces.count > 0; text: root.note; isStrong: true }
    GrateMap {
        id: map
        visible: root.pieces.count > 0
        anchors.horizontalCenter: parent.horizontalCenter
        width: root.across
        height: root.isNarrow ? Math.round(root.across * root.ratio) : Math.round(root.width / root.ratio)
        fire: root.board
        grate: root.key
        isTurned: root.isNarrow
        coolWord: qsTr("Cool side")
        ink: Theme.ink
        ash: Theme.ash
        hairline: Theme.hairline
        plate: Theme.plate
        ember: Theme.ember
        emberInk: Theme.emberInk
        emberWash: Theme.emberWash
        water: Theme.water
        waterWash: Theme.waterWash
        line: Space.line
        least: Type.small
        most: Type.title
        family: Type.strongFamily

        MouseArea {
            anchors.fill: parent
            Accessible.role: Accessible.Graphic
            Accessible.name: root.name
            onClicked: mouse => root.board.openPiece(map.pieceAt(mouse.x, mouse.y))
        }
        Repeater {
            model: root.pieces

            Item {
                id: piece
                required property string key
                required property string name
                required property double along
                required property double across
                required property double alongSize
                required property double acrossSize

                x: map.isTurned ? (1 - piece.across - piece.acrossSize) * map.width : piece.along * map.width
                y: map.isTurned ? piece.along * map.height : piece.across * map.height
                width: map.isTurned ? piece.acrossSize * map.width : piece.alongSize * map.width
                height: map.isTurned ? piece.alongSize * map.height : piece.acrossSize * map.height
                Accessible.role: Accessible.Button
                Accessible.name: piece.name
                Accessible.onPressAction: root.board.openPiece(piece.key)
                activeFocusOnTab: true
                Keys.onReturnPressed: root.board.openPiece(piece.key)
                Keys.onSpacePressed: root.board.openPiece(piece.key)

                Rectangle {
                    anchors.fill: parent
                    anchors.margins: -Space.tight
                    visible: piece.activeFocus
                    color: Theme.none
                    radius: Space.corner
                    border.width: Space.line * 2
                    border.color: Theme.water
                }
            }
        }
    }
    Flow {
        width: parent.width
        visible: map.visible
        spacing: Space.gap

        MarkWord { mark: "running"; text: qsTr("over the coals") }
        MarkWord { mark: "over"; text: qsTr("due") }
        MarkWord { mark: "ready"; text: qsTr("on the cool side") }
        MarkWord { mark: "done"; text: qsTr("pulled") }
    }
    Label { width: parent.width; visible: text !== ""; text: root.hand; maximumLineCount: 5 }
    TimeChart { width: parent.width; chart: root.fire; tall: Space.mm * 26 }
    Label { width: parent.width; visible: text !== ""; text: root.topUp; isStrong: true; maximumLineCount: 4 }
    Label { width: parent.width; visible: text !== ""; text: root.need; size: Type.small; color: Theme.ash; maximumLineCount: 8 }
    Row {
        width: parent.width
        visible: root.canTouch
        spacing: Space.gap

        PressPlate { width: (parent.width - parent.spacing) / 2; size: Type.body; text: qsTr("Hand test"); onClicked: root.board.askHand(root.key) }
        PressPlate { width: (parent.width - parent.spacing) / 2; size: Type.body; text: qsTr("Coal added"); onClicked: root.board.askCoal(root.key) }
    }
}
