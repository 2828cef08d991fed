import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One piece of work before the van leaves, with the limits its food is held to.
Item {
    id: root

    required property string name
    required property string when
    required property string then
    required property string limits

    implicitHeight: words.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name + ", " + root.when + ", " + root.then + ", " + root.limits

    Plate { anchors.fill: parent }
    Column {
        id: words
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.tight

        Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 6 }
        Label { width: parent.width; text: root.when; maximumLineCount: 4 }
        Label { width: parent.width; text: root.then; color: Theme.ash; maximumLineCount: 3 }
        Label { width: parent.width; visible: text !== ""; text: root.limits; size: Type.small; maximumLineCount: 12 }
    }
}
