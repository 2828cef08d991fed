import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A button for what is hard to take back: it acts only when held, and fills while it is.
T.AbstractButton {
    id: root

    signal held()

    implicitWidth: word.implicitWidth + 2 * Space.margin
    implicitHeight: Space.touch
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.held()
    Keys.onReturnPressed: root.held()
    onPressedChanged: root.pressed ? filling.restart() : filling.stop()

    background: Rectangle {
        color: Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: Theme.ash
        clip: true

        Rectangle {
            id: fill
            width: 0
            height: parent.height
            color: Theme.emberWash

            NumberAnimation on width {
                id: filling
                running: false
                from: 0
                to: root.width
                duration: Motion.hold
                onFinished: {
                    fill.width = 0
                    root.held()
                }
                onStopped: fill.width = 0
            }
        }
    }
    contentItem: Label {
        id: word
        text: root.text
        color: Theme.ash
        isStrong: true
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
