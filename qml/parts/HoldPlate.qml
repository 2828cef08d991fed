import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A button for what is hard to take back: it acts only when held, and fills while it is.
T.AbstractButton {
    id: root

    /// Nothing to be done with it now: an outline, its word as readable as ever.
    property bool isOff: false
    signal held()

    readonly property TextMetrics extent: TextMetrics {
        font.family: Type.strongFamily
        font.weight: Type.strong
        font.pixelSize: Type.body
        text: root.text
    }
    property real filled: 0

    enabled: !root.isOff
    implicitWidth: Math.ceil(root.extent.advanceWidth) + 2 + 2 * Space.margin
    implicitHeight: Space.touch
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.held()
    Keys.onReturnPressed: root.held()
    onPressedChanged: root.pressed ? root.filling.restart() : root.filling.stop()

    background: Rectangle {
        color: root.isOff ? Theme.none : Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: root.isOff ? Theme.hairline : Theme.ash
        clip: true

        Rectangle {
            width: parent.width * root.filled
            height: parent.height
            radius: Space.corner
            color: Theme.emberWash
            border.width: Space.line
            border.color: Theme.ember
            visible: root.filled > 0
        }
    }
    contentItem: Label {
        text: root.text
        color: Theme.ash
        isStrong: true
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    readonly property NumberAnimation filling: NumberAnimation {
        target: root
        property: "filled"
        from: 0
        to: 1
        duration: Motion.hold
        onFinished: {
            root.filled = 0
            root.held()
        }
        onStopped: root.filled = 0
    }
}
