pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Who holds this device, and which board they want first.
Flickable {
    id: root

    required property Day day
    property bool isNarrow: false
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
        readonly property real share: root.isNarrow ? width : (width - 2 * Space.gap) / 3

        Label { width: parent.width; text: root.day.line.name; size: Type.title; isStrong: true }
        Heading { width: parent.width; text: qsTr("Who holds this device?") }
        Flow {
            width: parent.width
            spacing: Space.gap

            Repeater {
                model: root.day.people

                PressPlate {
                    id: person
                    required property string key
                    required property string name
                    tone: root.day.person === person.key ? "water" : "plain"
                    glyph: root.day.person === person.key ? Icons.tick : Icons.lead
                    text: person.name
                    onClicked: root.day.person = person.key
                }
            }
        }
        Heading { width: parent.width; text: qsTr("Which board?") }
        Grid {
            width: parent.width
            columns: root.isNarrow ? 1 : 3
            spacing: Space.gap

            BoardPlate { width: all.share; isRow: root.isNarrow; glyph: Icons.lead; text: qsTr("Lead"); what: qsTr("The bell, the crew, the weakest link"); onClicked: root.choose("lead") }
            BoardPlate { width: all.share; isRow: root.isNarrow; glyph: Icons.flame; text: qsTr("Fire"); what: qsTr("The grate, turns, pulls and rests"); onClicked: root.choose("fire") }
            BoardPlate { width: all.share; isRow: root.isNarrow; glyph: Icons.table; text: qsTr("Buffet"); what: qsTr("Set-up to tick, and the line"); onClicked: root.choose("buffet") }
        }
    }
}
