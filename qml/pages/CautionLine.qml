import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One caution and its source.
Column {
    id: root

    required property string heading
    required property string text
    required property string source

    spacing: Space.tight
    bottomPadding: Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.text

    Heading { width: parent.width; visible: root.heading !== ""; text: root.heading }
    Label { width: parent.width; text: root.text; maximumLineCount: 20; Accessible.ignored: true }
    Label { width: parent.width; text: root.source; size: Type.small; color: Theme.ash; maximumLineCount: 12 }
}
