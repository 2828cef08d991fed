import QtQuick
import Cinderbell.Theme

/// A caution or a notice: a drawing and a line or two, quiet but readable.
Row {
    id: root

    required property string text
    property string glyph: Icons.caution
    property color tint: Theme.ash
    property int lines: 5

    spacing: Space.small
    visible: root.text !== ""
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text

    Glyph {
        // In the middle of the first line.
        y: Math.round((first.height - height) / 2)
        path: root.glyph
        size: Space.mark
        color: root.tint
    }
    Label {
        width: root.width - Space.mark - Space.small
        text: root.text
        size: Type.small
        color: root.tint
        maximumLineCount: root.lines
        Accessible.ignored: true
    }
    FontMetrics { id: first; font.family: Type.family; font.pixelSize: Type.small }
}
