import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A call for somebody else, as a band: the whole of it leads to the board where it is answered.
T.AbstractButton {
    id: root

    required property Day day
    /// Beside the way back on a phone there is room for the words alone.
    readonly property bool isShort: root.width < Space.column * 0.6
    readonly property bool isLit: root.day.isFlashOn || Motion.isReduced
    readonly property color ink: root.isLit ? Theme.emberInk : Theme.ink

    implicitHeight: Space.touch
    text: root.day.line.callText
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isLit ? Theme.ember : Theme.ground
        radius: Space.corner
        border.width: Space.line * 2
        border.color: Theme.ember

        Rectangle {
            anchors.fill: parent
            anchors.margins: -Space.tight
            visible: root.visualFocus
            color: Theme.none
            radius: Space.corner
            border.width: Space.line
            border.color: Theme.water
        }
    }
    Glyph {
        x: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        path: Icons.bell
        color: root.ink
    }
    Label {
        anchors.fill: parent
        anchors.leftMargin: 2 * Space.margin + Space.icon
        anchors.rightMargin: root.isShort ? Space.small : 2 * Space.margin + Space.icon
        verticalAlignment: Text.AlignVCenter
        text: root.text
        isStrong: true
        fontSizeMode: Text.Fit
        minimumPixelSize: Type.least
        maximumLineCount: 6
        color: root.ink
        Accessible.ignored: true
    }
    Glyph {
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: !root.isShort
        path: Icons.forward
        color: root.ink
    }
}
