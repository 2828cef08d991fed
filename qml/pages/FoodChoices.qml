pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A few things to choose from, one under the other; what is hard to take back is held, and stands
/// apart at the foot.
Column {
    id: root

    required property FoodEntry entry
    spacing: Space.small

    Repeater {
        model: root.entry.choices

        Item {
            id: one
            required property string key
            required property string text
            required property string note
            required property bool isChosen
            required property bool isGrave
            required property int index

            width: root.width
            height: (one.isGrave && one.index > 0 ? Space.apart : 0) + (one.isGrave ? grave.height : plate.height)

            NotePlate {
                id: plate
                width: parent.width
                visible: !one.isGrave
                text: one.text
                note: one.note
                isChosen: one.isChosen
                onClicked: root.entry.choose(one.key)
            }
            HoldPlate {
                id: grave
                anchors.bottom: parent.bottom
                width: parent.width
                height: Space.hurried
                visible: one.isGrave
                text: one.text
                onHeld: root.entry.choose(one.key)
            }
        }
    }
    Column {
        width: parent.width
        visible: root.entry.ask.takesWords
        spacing: Space.small

        Label { width: parent.width; text: qsTr("Or in words of your own") }
        LineField { id: own; objectName: "ownWords"; width: parent.width; Accessible.name: qsTr("Or in words of your own"); onAccepted: root.entry.sayInWords(own.text) }
        PressPlate { width: parent.width; isOff: own.text.trim() === ""; tone: "water"; text: qsTr("Write down"); onClicked: root.entry.sayInWords(own.text) }
    }
}
