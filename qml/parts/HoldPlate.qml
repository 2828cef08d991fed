import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A button for what is hard to take back: it acts only when held, and fills while it is. A key is
/// held the same way; a switch or a screen reader, which can only press, presses twice.
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
    property bool isKeyDown: false
    readonly property bool isHeld: root.pressed || root.isKeyDown
    /// Pressed once by what cannot hold; the next press within this time acts.
    property bool isAsked: false
    readonly property Timer patience: Timer { interval: 5000; onTriggered: root.isAsked = false }

    function press() {
        if (root.isAsked) root.act()
        else root.isAsked = true
        if (root.isAsked) root.patience.restart()
    }
    function act() {
        root.isAsked = false
        root.held()
    }

    enabled: !root.isOff
    implicitWidth: Math.ceil(root.extent.advanceWidth) + 2 + 2 * Space.margin
    implicitHeight: Space.touch
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.description: root.isAsked ? qsTr("Once more to do it") : ""
    Accessible.onPressAction: root.press()
    Keys.onPressed: event => {
        event.accepted = root.isStroke(event.key)
        if (event.accepted && !event.isAutoRepeat) root.isKeyDown = true
    }
    Keys.onReleased: event => {
        event.accepted = root.isStroke(event.key)
        if (!event.accepted || event.isAutoRepeat || !root.isKeyDown) return
        // Let go before it was full: by a switch, perhaps.
        if (root.filling.running) root.press()
        root.isKeyDown = false
    }
    onActiveFocusChanged: root.isKeyDown = root.isAsked = false
    onIsHeldChanged: root.isHeld ? root.filling.restart() : root.filling.stop()

    function isStroke(key: int): bool {
        return key === Qt.Key_Space || key === Qt.Key_Return || key === Qt.Key_Enter
    }

    background: Rectangle {
        color: root.isOff ? Theme.none : root.isAsked ? Theme.emberWash : Theme.plate
        radius: Space.corner
        border.width: Space.line
        border.color: root.isOff ? Theme.hairline : root.isAsked ? Theme.ember : Theme.ash
        clip: !root.visualFocus

        Rectangle {
            width: parent.width * root.filled
            height: parent.height
            radius: Space.corner
            color: Theme.emberWash
            border.width: Space.line
            border.color: Theme.ember
            visible: root.filled > 0
        }
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
            root.act()
        }
        onStopped: root.filled = 0
    }
}
