import QtQuick
import Cinderbell.Theme

/// Something asked for in between: slides over the board from below, where the thumb is, and goes
/// when the dimmed board is touched.
Item {
    id: root

    default property alias content: body.data
    required property string title
    /// Not wider than this.
    property real span: Space.column * 1.4
    signal closed()

    Accessible.role: Accessible.Dialog
    Accessible.name: root.title

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
        height: Math.min(body.height + 2 * Space.wide, parent.height - Space.wide)
        color: Theme.ground
        border.width: Space.line
        border.color: Theme.edge

        MouseArea { anchors.fill: parent }
        Flickable {
            anchors.fill: parent
            anchors.margins: Space.line
            contentHeight: body.height + 2 * Space.wide
            interactive: contentHeight > height
            clip: true

            Column {
                id: body
                x: Space.margin
                y: Space.wide
                width: parent.width - 2 * Space.margin
                spacing: Space.gap

                Label {
                    width: parent.width
                    text: root.title
                    size: Type.title
                    isStrong: true
                }
            }
        }
    }
}
