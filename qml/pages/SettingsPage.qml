import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// How this device speaks and looks.
Flickable {
    id: root

    required property Settings settings
    required property Day day
    property bool isNarrow: false
    signal rehearse()
    signal leave()
    signal lookAtParts()
    contentHeight: all.y + all.height + Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Settings")

    Flow {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.wide
        readonly property real share: root.isNarrow ? width : Math.floor((width - Space.wide) / 2)

        Choice {
            width: all.share
            name: qsTr("Light")
            keys: ["noon", "dusk", "clock"]
            words: [qsTr("Noon"), qsTr("Dusk"), qsTr("By the clock")]
            chosen: root.settings.theme
            onChoose: key => root.settings.theme = key
        }
        Choice {
            width: all.share
            name: qsTr("Language")
            keys: ["en", "es"]
            words: ["English", "Español"]
            chosen: root.settings.language
            onChoose: key => root.settings.language = key
        }
        Choice {
            width: all.share
            name: qsTr("Text size")
            keys: ["1", "1.15", "1.3"]
            words: [qsTr("Usual"), qsTr("Larger"), qsTr("Largest")]
            chosen: String(root.settings.textScale)
            onChoose: key => root.settings.textScale = Number(key)
        }
        Choice {
            width: all.share
            name: qsTr("Clock")
            keys: ["24", "12"]
            words: [qsTr("24 hours"), qsTr("12 hours")]
            chosen: root.settings.isTwelveHour ? "12" : "24"
            onChoose: key => root.settings.isTwelveHour = key === "12"
        }
        Choice {
            width: all.share
            name: qsTr("Temperature")
            keys: ["f", "c"]
            words: ["°F", "°C"]
            chosen: root.settings.isFahrenheit ? "f" : "c"
            onChoose: key => root.settings.isFahrenheit = key === "f"
        }
        Choice {
            width: all.share
            name: qsTr("Weights and lengths")
            keys: ["lb", "kg"]
            words: [qsTr("lb and in"), qsTr("kg and cm")]
            chosen: root.settings.isCustomary ? "lb" : "kg"
            onChoose: key => root.settings.isCustomary = key === "lb"
        }
        Choice {
            width: all.share
            name: qsTr("Thumb")
            keys: ["left", "right"]
            words: [qsTr("Left hand"), qsTr("Right hand")]
            chosen: root.settings.isLeftHanded ? "left" : "right"
            onChoose: key => root.settings.isLeftHanded = key === "left"
        }
        Choice {
            width: all.share
            name: qsTr("Movement")
            keys: ["some", "none"]
            words: [qsTr("Usual"), qsTr("None")]
            chosen: root.settings.isCalm ? "none" : "some"
            onChoose: key => root.settings.isCalm = key === "none"
        }
        Choice {
            width: all.share
            name: qsTr("Untouched for two minutes")
            keys: ["dim", "stay"]
            words: [qsTr("Dim"), qsTr("Stay bright")]
            chosen: root.settings.dims ? "dim" : "stay"
            onChoose: key => root.settings.dims = key === "dim"
        }
        Column {
            visible: root.day.isOpen
            width: all.width
            spacing: Space.tight

            Heading { width: parent.width; text: root.day.line.name }
            Flow {
                width: parent.width
                spacing: Space.gap

                PressPlate { objectName: "rehearse"; glyph: Icons.play; text: root.day.line.isRehearsal ? root.day.line.rehearsal : qsTr("Rehearse"); onClicked: root.rehearse() }
                PressPlate { objectName: "allEvents"; glyph: Icons.back; text: qsTr("All events"); onClicked: root.leave() }
            }
        }
        PressPlate { objectName: "parts"; glyph: Icons.table; text: qsTr("Pattern book"); onClicked: root.lookAtParts() }
        Remark { width: all.width; text: qsTr("Local fire and health codes and licensed practice decide.") }
    }
}
