import QtQuick
import Cinderbell.Theme
import Cinderbell.Models

/// Nobody has touched the device for a while: it darkens, to spare the battery and the eyes at
/// dusk. A call lifts the shade at once; the first touch or key lifts it and does nothing else.
Item {
    id: root

    required property bool isWanted
    required property bool isCalling
    property int after: 120000
    property bool isDrawn: false
    readonly property bool isWaiting: root.isWanted && !root.isCalling && !root.isDrawn
    /// Somebody is there.
    function touched() {
        if (root.isWaiting) idle.restart()
    }

    visible: root.isDrawn
    onIsWantedChanged: root.isDrawn = false
    onIsCallingChanged: root.isDrawn = false

    Timer {
        id: idle
        interval: root.after
        running: root.isWaiting
        onTriggered: root.isDrawn = root.isWaiting
    }
    KeyWatch {
        isKeeping: root.isDrawn
        onStruck: { root.isDrawn = false; root.touched() }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.shade

        MouseArea { anchors.fill: parent; onPressed: root.isDrawn = false }
    }
}
