import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// How this device speaks and looks.
Flickable {
    id: root

    required property Settings settings
    required property Day day
    signal rehearse()
    signal leave()
    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Settings")

    Column {
        id: all
        x: Math.max(Space.margin, (root.width - Space.column * 1.5) / 2)
        y: Space.margin
        width: root.width - 2 * x
        spacing: Space.small

        Heading { width: parent.width; text: qsTr("Light") }
        Choice {
            width: parent.width
            name: qsTr("Light")
            keys: ["noon", "dusk", "clock"]
            words: [qsTr("Noon"), qsTr("Dusk"), qsTr("By the clock")]
            chosen: root.settings.theme
            onChoose: key => root.settings.theme = key
        }
        Heading { width: parent.width; text: qsTr("Language") }
        Choice {
            width: parent.width
            name: qsTr("Language")
            keys: ["en", "es"]
            words: ["English", "Español"]
            chosen: root.settings.language
            onChoose: key => root.settings.language = key
        }
        Heading { width: parent.width; text: qsTr("Clock") }
        Choice {
            width: parent.width
            name: qsTr("Clock")
            keys: ["24", "12"]
            words: [qsTr("24 hours"), qsTr("12 hours")]
            chosen: root.settings.isTwelveHour ? "12" : "24"
            onChoose: key => root.settings.isTwelveHour = key === "12"
        }
        Heading { width: parent.width; text: qsTr("Temperature") }
        Choice {
            width: parent.width
            name: qsTr("Temperature")
            keys: ["f", "c"]
            words: ["°F", "°C"]
            chosen: root.settings.isFahrenheit ? "f" : "c"
            onChoose: key => root.settings.isFahrenheit = key === "f"
        }
        Heading { width: parent.width; text: qsTr("Thumb") }
        Choice {
            width: parent.width
            name: qsTr("Thumb")
            keys: ["left", "right"]
            words: [qsTr("Left hand"), qsTr("Right hand")]
            chosen: root.settings.isLeftHanded ? "left" : "right"
            onChoose: key => root.settings.isLeftHanded = key === "left"
        }
        Heading { width: parent.width; text: qsTr("Movement") }
        Choice {
            width: parent.width
            name: qsTr("Movement")
            keys: ["some", "none"]
            words: [qsTr("Usual"), qsTr("None")]
            chosen: root.settings.isCalm ? "none" : "some"
            onChoose: key => root.settings.isCalm = key === "none"
        }
        Heading { width: parent.width; visible: root.day.isOpen; text: root.day.line.name }
        Row {
            visible: root.day.isOpen
            spacing: Space.gap

            PressPlate { glyph: Icons.play; text: root.day.line.isRehearsal ? root.day.line.rehearsal : qsTr("Rehearse"); onClicked: root.rehearse() }
            PressPlate { glyph: Icons.back; text: qsTr("All events"); onClicked: root.leave() }
        }
    }
}
