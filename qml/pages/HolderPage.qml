import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Who holds this device, and which board they want first.
Flickable {
    id: root

    required property Day day
    signal choose(string board)
    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Who holds this device?")

    Column {
        id: all
        x: Math.max(Space.margin, (root.width - Space.column * 1.6) / 2)
        y: Space.wide
        width: root.width - 2 * x
        spacing: Space.gap

        Label { width: parent.width; text: root.day.line.name; size: Type.title; isStrong: true }
        Heading { width: parent.width; text: qsTr("Who holds this device?") }
        Flow {
            width: parent.width
            spacing: Space.gap

            Repeater {
                model: root.day.people

                PressPlate {
                    required property string key
                    required property string name
                    tone: root.day.person === key ? "water" : "plain"
                    glyph: root.day.person === key ? Icons.tick : Icons.lead
                    text: name
                    onClicked: root.day.person = key
                }
            }
        }
        Heading { width: parent.width; text: qsTr("Which board?") }
        Repeater {
            model: [
                { board: "lead", glyph: Icons.lead, text: qsTr("Lead: the bell and the crew") },
                { board: "fire", glyph: Icons.flame, text: qsTr("Fire: grate, turns and rests") },
                { board: "buffet", glyph: Icons.table, text: qsTr("Buffet: set-up and the line") }
            ]

            PressPlate {
                required property var modelData
                width: all.width
                height: Space.hurried
                size: Type.title
                glyph: modelData.glyph
                text: modelData.text
                onClicked: root.choose(modelData.board)
            }
        }
    }
}
