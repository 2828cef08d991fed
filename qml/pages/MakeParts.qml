pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The parts of the event, each with what it holds or what is wrong with it.
Flickable {
    id: root

    required property Editor editor
    /// The part that is open; before one is, the first that lacks something.
    property PartPlate wanted: null
    /// Where the fields, which say it too, are on another page.
    property bool saysLock: false
    contentHeight: all.height + 2 * Space.gap
    clip: true
    onWantedChanged: root.reveal()
    onHeightChanged: root.reveal()

    /// Scrolls when the wanted part is not all in view, and no further than it takes.
    function reveal() {
        if (!root.wanted || root.height <= 0)
            return
        const top = root.wanted.y
        const bottom = all.y + top + root.wanted.height + Space.gap
        if (top < root.contentY || bottom > root.contentY + root.height)
            root.contentY = Math.max(0, Math.min(top, bottom - root.height))
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Parts of the event")

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.gap
        onPositioningComplete: root.reveal()

        Remark { width: parent.width; text: root.saysLock ? root.editor.locked : ""; glyph: Icons.lock; tint: Theme.ink; lines: 12 }

        Repeater {
            model: root.editor.parts

            PartPlate {
                id: one
                required property string key
                required isFaulty
                width: all.width
                isOpen: root.editor.part === one.key
                onIsOpenChanged: if (one.isOpen) root.wanted = one
                Component.onCompleted: if (one.isOpen || one.isFaulty && !root.wanted) root.wanted = one
                onClicked: root.editor.go(one.key)
            }
        }
        PressPlate { visible: root.editor.canWrite; width: parent.width; tone: "quiet"; size: Type.body; text: qsTr("Write it to a file"); onClicked: root.editor.writeFile() }
        Remark { width: parent.width; text: root.editor.written; glyph: Icons.tick; tint: Theme.ink }
    }
}
