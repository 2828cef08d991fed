import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A call, over the whole board, seen without sound. Turns over once a beat, far below three
/// flashes a second (WCAG 2.1, 2.3.1); with reduced motion it stands still.
Rectangle {
    id: root

    required property Day day
    readonly property bool isLit: root.day.isFlashOn || Motion.isReduced
    readonly property color ink: root.isLit ? Theme.emberInk : Theme.ink

    visible: root.day.ringing.count > 0
    color: root.isLit ? Theme.ember : Theme.ground
    Accessible.role: Accessible.AlertMessage
    Accessible.name: qsTr("Call")

    TapHandler {}
    ListView {
        anchors.fill: parent
        anchors.margins: Space.wide
        model: root.day.ringing
        spacing: Space.wide
        clip: true

        delegate: Column {
            id: call
            required property string key
            required property string task
            required property string call
            required property string title
            required property string icon
            required property string overdue
            required property string actVerb
            required property string act
            width: ListView.view.width
            spacing: Space.gap

            Row {
                spacing: Space.gap

                Glyph {
                    path: call.icon === "turn" ? Icons.turn : call.icon === "pull" ? Icons.pull
                        : call.icon === "rest" ? Icons.rest : call.icon === "flame" ? Icons.flame
                        : call.icon === "putOn" ? Icons.putOn : Icons.bell
                    size: Type.countdown
                    color: root.ink
                }
                Label { width: call.width - Type.countdown - Space.gap; text: call.call; size: Type.countdown * 0.8; isStrong: true; color: root.ink; maximumLineCount: 2 }
            }
            Label { width: parent.width; text: call.title + " · " + call.overdue; size: Type.title; isStrong: true; color: root.ink }
            Row {
                spacing: Space.apart

                PressPlate {
                    visible: call.actVerb !== ""
                    width: (call.width - Space.apart) / 2
                    height: Space.hurried
                    size: Type.title
                    text: call.actVerb
                    onClicked: root.day.act(call.act, call.task)
                }
                PressPlate {
                    width: (call.width - Space.apart) / 2
                    height: Space.hurried
                    size: Type.title
                    text: qsTr("Heard")
                    onClicked: root.day.acknowledge(call.key)
                }
            }
        }
    }
}
