import QtQuick
import Cinderbell.Theme

/// Inside a button: a drawing and its words, side by side or one over the other.
Item {
    id: root

    required property string text
    required property string glyph
    required property color ink
    required property int size
    /// The width of the words on one line.
    required property real extent
    property bool isStacked: false
    /// Starts at the left, as rows of a list do, instead of in the middle.
    property bool isLeading: false
    readonly property real beside: drawing.visible && !root.isStacked ? drawing.width + Space.gap : 0

    Grid {
        anchors.verticalCenter: parent.verticalCenter
        x: root.isLeading ? Space.wide : Math.round((parent.width - width) / 2)
        columns: root.isStacked || !drawing.visible || root.text === "" ? 1 : 2
        spacing: root.isStacked ? Space.small : Space.gap
        horizontalItemAlignment: Grid.AlignHCenter
        verticalItemAlignment: Grid.AlignVCenter

        Glyph {
            id: drawing
            visible: root.glyph !== ""
            path: root.glyph
            color: root.ink
            size: root.isStacked || root.size >= Type.title ? Space.icon * 1.25 : Space.icon
        }
        Label {
            visible: root.text !== ""
            width: Math.min(Math.ceil(root.extent) + 2, root.width - 2 * Space.small - root.beside
                            - (root.isLeading ? Space.wide : 0))
            text: root.text
            size: root.size
            isStrong: true
            wrapMode: Text.WordWrap
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Type.small
            maximumLineCount: 2
            lineHeight: 0.95
            verticalAlignment: Text.AlignVCenter
            horizontalAlignment: root.isLeading ? Text.AlignLeft : Text.AlignHCenter
            color: root.ink
            Accessible.ignored: true
        }
    }
}
