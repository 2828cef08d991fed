import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Inside the tile of a piece: number, state, class and minute, and a tick when it is chosen.
Item {
    id: root

    required property string number
    required property string mark
    required property int studs
    required property string time
    required property bool isChosen
    readonly property color tint: root.isChosen ? Theme.waterInk : Theme.ink

    Glyph {
        anchors.right: parent.right
        anchors.rightMargin: Space.small
        y: Space.small
        visible: root.isChosen
        path: Icons.tick
        color: root.tint
    }
    Column {
        x: Space.gap
        width: parent.width - 2 * Space.gap
        anchors.verticalCenter: parent.verticalCenter
        spacing: Space.tight

        Row {
            spacing: Space.small

            Figure { id: figure; text: root.number; size: Type.figure; color: root.tint; Accessible.ignored: true }
            StateMark { mark: root.mark; anchors.verticalCenter: figure.verticalCenter; color: root.tint }
        }
        Studs { count: root.studs; tint: root.tint }
        Label { width: parent.width; text: root.time; isStrong: true; maximumLineCount: 1; fontSizeMode: Text.HorizontalFit; minimumPixelSize: Type.least; color: root.tint; Accessible.ignored: true }
    }
}
