import QtQuick
import Cinderbell.Theme

/// The name of a part of a board, with a note at its far end.
Item {
    id: root

    required property string text
    property string note: ""

    implicitHeight: name.implicitHeight + Space.small
    Accessible.role: Accessible.Heading
    Accessible.name: root.text

    Label {
        id: name
        width: root.width - (root.note !== "" ? tail.width + Space.gap : 0)
        text: root.text
        size: Type.body
        isStrong: true
        color: Theme.ash
        maximumLineCount: 2
        Accessible.ignored: true
    }
    Label {
        id: tail
        anchors.right: parent.right
        anchors.baseline: name.baseline
        text: root.note
        size: Type.small
        color: Theme.ash
        wrapMode: Text.NoWrap
        maximumLineCount: 1
    }
}
