import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Inside a board to choose.
Item {
    id: root

    required property string glyph
    required property string text
    required property string what
    required property bool isRow

    Glyph {
        id: drawing
        x: root.isRow ? Space.wide : Math.round((root.width - width) / 2)
        y: root.isRow ? Math.round((root.height - height) / 2)
                      : Math.round((root.height - height - words.height - Space.gap) / 2)
        path: root.glyph
        size: Type.countdown
    }
    Column {
        id: words
        x: root.isRow ? drawing.x + drawing.width + Space.wide : Space.margin
        y: root.isRow ? Math.round((root.height - height) / 2) : drawing.y + drawing.height + Space.gap
        width: root.width - x - Space.margin
        spacing: Space.tight

        Label { width: parent.width; text: root.text; size: Type.title; isStrong: true; horizontalAlignment: root.isRow ? Text.AlignLeft : Text.AlignHCenter; Accessible.ignored: true }
        Label { width: parent.width; text: root.what; color: Theme.ash; horizontalAlignment: root.isRow ? Text.AlignLeft : Text.AlignHCenter; Accessible.ignored: true }
    }
}
