pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The parts of the event, each with what it holds or what is wrong with it.
Flickable {
    id: root

    required property Editor editor
    contentHeight: all.height + 2 * Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Parts of the event")

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.gap

        Repeater {
            model: root.editor.parts

            PartPlate {
                id: one
                required property string key
                required isFaulty
                width: all.width
                isOpen: root.editor.part === one.key
                onClicked: root.editor.go(one.key)
            }
        }
        PressPlate { visible: root.editor.canWrite; width: parent.width; tone: "quiet"; size: Type.body; text: qsTr("Write it to a file"); onClicked: root.editor.writeFile() }
        Remark { width: parent.width; text: root.editor.written; glyph: Icons.tick; tint: Theme.ink }
    }
}
