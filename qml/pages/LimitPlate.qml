import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One limit with its source; a touch makes it stricter.
T.AbstractButton {
    id: root

    required property string key
    required property string name
    required property string value
    required property string source
    required property bool isLocal
    required property bool canChange

    implicitHeight: Math.max(Space.touch, words.implicitHeight + 2 * Space.small)
    text: root.name
    enabled: root.canChange
    Accessible.role: Accessible.Button
    Accessible.name: root.name + ": " + root.value
    Accessible.onPressAction: root.clicked()

    // What cannot be made stricter lies flat: nothing to touch.
    background: Plate {
        fill: root.down || root.isLocal ? Theme.waterWash : root.canChange ? Theme.plate : Theme.none
        edge: root.visualFocus ? Theme.water : root.canChange ? Theme.edge : Theme.hairline
        edgeWidth: root.canChange ? Space.line : Space.hair
    }
    Column {
        id: words
        x: Space.margin
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - 2 * Space.margin
        spacing: Space.tight

        Label { width: parent.width; text: root.name + " · " + root.value; isStrong: true; maximumLineCount: 5; Accessible.ignored: true }
        Label { width: parent.width; text: root.source; size: Type.small; color: Theme.ash; maximumLineCount: 4; Accessible.ignored: true }
    }
}
