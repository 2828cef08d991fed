import QtQuick
import Cinderbell.Theme

/// A knob drawn along its groove from end to end: cloth in a pocket does not do that by chance. Let
/// go before the end, it runs back.
Item {
    id: root

    required property string text
    signal slid()

    implicitHeight: Space.hurried
    activeFocusOnTab: true
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.slid()
    Keys.onReturnPressed: root.slid()

    Rectangle {
        anchors.fill: parent
        color: Theme.plate
        radius: Space.corner
        border.width: root.activeFocus ? Space.line * 2 : Space.line
        border.color: root.activeFocus ? Theme.water : Theme.edge
    }
    Label {
        anchors.fill: parent
        anchors.leftMargin: knob.width + Space.gap
        anchors.rightMargin: Space.gap
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        size: Type.lead
        isStrong: true
        Accessible.ignored: true
    }
    Rectangle {
        id: knob
        objectName: "knob"
        readonly property real farthest: root.width - width

        width: Space.hurried
        height: root.height
        radius: Space.corner
        color: Theme.ember

        Glyph { anchors.centerIn: parent; path: Icons.forward; color: Theme.emberInk; size: Type.countdown }
        Behavior on x { enabled: !grip.pressed; NumberAnimation { duration: Motion.calm } }
        MouseArea {
            id: grip
            anchors.fill: parent
            drag.target: knob
            drag.axis: Drag.XAxis
            drag.minimumX: 0
            drag.maximumX: knob.farthest
            drag.threshold: 0
            drag.smoothed: false
            preventStealing: true
            onReleased: {
                const isThrough = knob.x > 0.9 * knob.farthest
                knob.x = 0
                if (isThrough) root.slid()
            }
            onCanceled: knob.x = 0
        }
    }
}
