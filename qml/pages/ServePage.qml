pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The line while guests pass: count by tens, see the end, keep the pans full.
Flickable {
    id: root

    required property Serve serve
    property bool isNarrow: false
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin : Math.floor((root.width - 3 * Space.margin) / 2)

    contentHeight: Math.max(counter.y + counter.height, pans.y + pans.height) + Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Serve")

    Column {
        id: counter
        x: Space.margin
        y: Space.margin
        width: root.half
        spacing: Space.small

        Heading { width: parent.width; text: qsTr("Guests through the line"); note: root.serve.line.pace }
        Row {
            spacing: Space.gap

            Figure { id: through; text: root.serve.line.counted; size: Type.countdown }
            Label { anchors.baseline: through.baseline; text: root.serve.line.expected; size: Type.lead }
        }
        PressPlate {
            objectName: "countGuests"
            width: parent.width
            height: Space.hurried
            visible: root.serve.line.canCount
            tone: "ember"
            size: Type.title
            text: root.serve.line.countVerb
            onClicked: root.serve.count()
        }
        Label { width: parent.width; text: root.serve.line.end; size: Type.title; isStrong: true }
        Label { width: parent.width; visible: text !== ""; text: root.serve.line.band; color: Theme.ash }
        Label { width: parent.width; visible: text !== ""; text: root.serve.line.queue; size: Type.lead }
        Label { width: parent.width; visible: text !== ""; text: root.serve.line.bottleneck }
        Remark { width: parent.width; text: root.serve.refusal; tint: Theme.ember }
        Item { width: 1; height: Space.apart; visible: root.serve.line.canEnd }
        PressPlate {
            objectName: "lastGuest"
            width: parent.width
            visible: root.serve.line.canEnd
            text: qsTr("Last guest is through")
            onClicked: root.serve.lastGuest()
        }
    }
    Column {
        id: pans
        x: root.isNarrow ? Space.margin : root.half + 2 * Space.margin
        y: root.isNarrow ? counter.y + counter.height + Space.wide : Space.margin
        width: root.half
        spacing: Space.gap

        Heading { width: parent.width; text: qsTr("Pans on the line, a forecast: tap what you see") }
        Repeater {
            model: root.serve.pans

            LinePanPlate {
                id: pan
                width: pans.width
                onTapped: percent => root.serve.tap(pan.key, percent)
                onNext: root.serve.nextPan(pan.key)
            }
        }
        Remark { width: parent.width; text: qsTr("A fresh pan for an empty pan, never topped up. Whether food may be served, the record says.") }
    }
}
