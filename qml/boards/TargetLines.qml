import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// The pull target and, never apart from it, the published minimum with its source.
Column {
    id: root

    required property string target
    required property string minimum
    required property string source
    required property string warning

    spacing: Space.tight

    Label { width: parent.width; visible: text !== ""; text: root.target; size: Type.lead; isStrong: true }
    Label { width: parent.width; visible: text !== ""; text: root.minimum; isStrong: true; maximumLineCount: 4 }
    Label { width: parent.width; visible: root.minimum !== ""; text: root.source; size: Type.small; color: Theme.ash; maximumLineCount: 4 }
    Remark { width: parent.width; text: root.warning; tint: Theme.ember }
}
