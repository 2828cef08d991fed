import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// What was just noted, and the way back as long as it is offered: the whole bar is the button. In
/// a rail it stands upright.
T.AbstractButton {
    id: root

    /// What was noted.
    required property string noted
    required property string remaining
    property bool isUpright: false

    implicitHeight: root.isUpright ? upright.implicitHeight + 2 * Space.gap
                                   : Math.max(Space.touch, lying.implicitHeight + 2 * Space.small)
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Undo") + ": " + root.noted
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: Theme.ink
        radius: Space.corner
        border.width: root.visualFocus ? Space.line * 2 : 0
        border.color: Theme.water
    }
    Glyph {
        x: root.isUpright ? Math.round((root.width - width) / 2) : Space.margin
        y: root.isUpright ? Space.gap : Math.round((root.height - height) / 2)
        path: Icons.undo
        color: Theme.ground
        size: Space.icon * 1.25
    }
    Column {
        id: upright
        visible: root.isUpright
        x: Space.tight
        y: Space.gap
        width: root.width - 2 * Space.tight
        topPadding: Space.icon * 1.25 + Space.tight
        spacing: Space.tight

        UndoWord { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: qsTr("Undo"); isStrong: true }
        UndoWord { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: root.remaining; isStrong: true }
        UndoWord { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: root.noted; size: Type.least; maximumLineCount: 6 }
    }
    UndoWord {
        id: lying
        anchors.left: parent.left
        anchors.leftMargin: Space.margin + Space.icon * 1.25 + Space.gap
        anchors.right: time.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.isUpright
        text: root.noted
        isStrong: true
        maximumLineCount: 9
        lineHeight: 0.95
    }
    Column {
        id: time
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.isUpright

        UndoWord { anchors.right: parent.right; text: qsTr("Undo"); isStrong: true }
        UndoWord { anchors.right: parent.right; text: root.remaining; isStrong: true; size: Type.lead }
    }
}
