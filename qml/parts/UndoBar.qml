import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// What was just noted, and the way back as long as it is offered: the whole bar is the button. In
/// a rail it stands upright; beside a call it is brief and says no more than that there is a way back.
T.AbstractButton {
    id: root

    /// What was noted.
    required property string noted
    required property string remaining
    property bool isUpright: false
    property bool isBrief: false
    /// A second tap in the same breath is a slip of the glove: it would take back one touch more.
    signal takeBack()
    onClicked: {
        if (settling.running)
            return
        settling.start()
        root.takeBack()
    }

    implicitHeight: root.isUpright ? upright.implicitHeight + 2 * Space.gap : Space.touch
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Undo") + ": " + root.noted
    Accessible.onPressAction: root.clicked()

    Timer {
        id: settling
        interval: 600
    }
    background: Rectangle {
        color: Theme.ink
        radius: Space.corner
        border.width: root.visualFocus ? Space.line * 2 : 0
        border.color: Theme.water
    }
    Glyph {
        x: root.isUpright || root.isBrief ? Math.round((root.width - width) / 2) : Space.margin
        y: root.isUpright || root.isBrief ? Space.gap : Math.round((root.height - height) / 2)
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
        height: parent.height - 2 * Space.tight
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.isUpright && !root.isBrief
        verticalAlignment: Text.AlignVCenter
        text: root.noted
        isStrong: true
        fontSizeMode: Text.Fit
        minimumPixelSize: Type.least
        maximumLineCount: 6
        lineHeight: 0.95
    }
    UndoWord {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Space.gap
        visible: root.isBrief
        text: root.remaining
        isStrong: true
        size: Type.lead
    }
    Column {
        id: time
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.isUpright && !root.isBrief

        UndoWord { anchors.right: parent.right; text: qsTr("Undo"); isStrong: true }
        UndoWord { anchors.right: parent.right; text: root.remaining; isStrong: true; size: Type.lead }
    }
}
