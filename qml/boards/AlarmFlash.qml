pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A call, over the whole board, seen without sound. Turns over once a beat, far below three
/// flashes a second (WCAG 2.1, 2.3.1); with reduced motion it stands still.
Rectangle {
    id: root

    required property Day day
    property bool isNarrow: false
    readonly property bool isLit: root.day.isFlashOn || Motion.isReduced

    color: root.isLit ? Theme.ember : Theme.ground
    border.width: Space.gap
    border.color: Theme.ember
    Accessible.role: Accessible.AlertMessage
    Accessible.name: qsTr("Call")

    MouseArea { anchors.fill: parent }
    ListView {
        anchors.fill: parent
        anchors.margins: root.isNarrow ? Space.margin : Space.wide
        model: root.day.ringing
        spacing: Space.wide
        clip: true

        delegate: CallPlate {
            id: call
            width: ListView.view.width
            ink: root.isLit ? Theme.emberInk : Theme.ink
            isNarrow: root.isNarrow
            onActed: call.act === "measure" ? root.day.follow(call.key) : root.day.act(call.act, call.task)
            onHeard: root.day.acknowledge(call.key)
        }
    }
}
