import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// A shape and the word it stands for.
Row {
    id: root

    required property string mark
    required property string text

    spacing: Space.small

    StateMark { mark: root.mark; size: Space.mark * 0.8; anchors.verticalCenter: word.verticalCenter }
    Label { id: word; text: root.text; size: Type.small; color: Theme.ash; wrapMode: Text.NoWrap }
}
