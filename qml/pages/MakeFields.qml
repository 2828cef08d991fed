pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The fields of the part that is open.
Flickable {
    id: root

    required property Editor editor
    required property bool isNarrow
    signal askNumber(string key, string name, int kind, real number, real least, real most)
    signal askText(string key, string name, string value)
    contentHeight: all.height + 2 * Space.gap
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: root.editor.title

    Connections {
        target: root.editor
        function onPlaceChanged() { root.contentY = 0 }
    }
    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.gap

        Remark { width: parent.width; text: root.editor.locked; glyph: Icons.lock; tint: Theme.ink; lines: 12 }
        Repeater {
            model: root.editor.fields

            MakeField {
                id: field
                width: all.width
                isNarrow: root.isNarrow
                isOff: root.editor.locked !== ""
                onStep: by => root.editor.step(field.key, by)
                onAskNumber: root.askNumber(field.key, field.name, field.numberKind, field.number, field.least, field.most)
                onAskText: root.askText(field.key, field.name, field.value)
                onChoose: key => root.editor.setText(field.key, key)
                onAct: root.editor.act(field.key)
            }
        }
    }
}
