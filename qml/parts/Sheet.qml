import QtQuick
import Cinderbell.Theme

/// Something asked for in between: slides over the board from below, where the thumb is, and goes
/// when the dimmed board is touched or Escape is pressed.
Item {
    id: root

    default property alias content: body.data
    /// What stays at the foot, in sight, however long the rest is: the key that does what was asked.
    property alias actions: feet.data
    required property string title
    /// Not wider than this.
    property real span: Space.column * 1.4
    /// A key beside the title that closes it: for what may be longer than the screen.
    property bool hasWayOut: false
    signal closed()

    Accessible.role: Accessible.Dialog
    Accessible.name: root.title

    Shortcut { sequence: "Esc"; enabled: root.visible && root.enabled; onActivated: root.closed() }
    Rectangle {
        anchors.fill: parent
        color: Theme.scrim

        // Not a TapHandler: it would let the press through to the board below.
        MouseArea { anchors.fill: parent; onClicked: root.closed() }
    }
    Rectangle {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        width: Math.min(parent.width, root.span)
        // The dimmed strip above stays: touching it closes the sheet.
        height: Math.min(head.height + body.height + body.spacing + (feet.room > 0 ? head.y + Space.gap + feet.room : 2 * Space.wide), parent.height - Space.wide)
        color: Theme.ground
        border.width: Space.line
        border.color: Theme.edge

        MouseArea { anchors.fill: parent }
        Item {
            id: head
            x: Space.margin
            y: root.hasWayOut ? Space.gap : Space.wide
            width: parent.width - 2 * Space.margin
            height: root.hasWayOut ? Math.max(way.height, title.height) : title.height

            Label {
                id: title
                anchors.verticalCenter: parent.verticalCenter
                width: parent.width - (root.hasWayOut ? way.width + Space.gap : 0)
                text: root.title
                size: Type.title
                isStrong: true
                maximumLineCount: 6
            }
            PressPlate {
                id: way
                anchors.right: parent.right
                visible: root.hasWayOut
                glyph: Icons.cross
                Accessible.name: qsTr("Close")
                onClicked: root.closed()
            }
        }
        Flickable {
            anchors.fill: parent
            anchors.margins: Space.line
            anchors.topMargin: head.y + head.height
            anchors.bottomMargin: feet.room + Space.line
            contentHeight: body.height + body.spacing + (feet.room > 0 ? Space.gap : Space.wide) - Space.line
            interactive: contentHeight > height
            clip: true

            Column {
                id: body
                x: Space.margin
                y: spacing
                width: parent.width - 2 * Space.margin
                spacing: Space.gap
            }
        }
        Column {
            id: feet
            readonly property real room: feet.height > 0 ? feet.height + Space.gap : 0
            x: Space.margin
            y: parent.height - feet.room
            width: parent.width - 2 * Space.margin
            spacing: Space.gap
        }
    }
}
