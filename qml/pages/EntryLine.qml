import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One entry of the record, to read; a reading can be corrected by a new entry.
Item {
    id: root

    required property string key
    required property string when
    required property string about
    required property string what
    required property string value
    required property string by
    required property string note
    required property bool canCorrect
    required property int index
    signal correct()

    implicitHeight: Math.max(words.height, touch.visible ? touch.height : 0) + 2 * Space.small
    Accessible.role: Accessible.ListItem
    Accessible.name: root.when + ", " + root.about + ", " + root.what + ", " + root.value

    Rectangle { width: parent.width; height: Space.hair; visible: root.index > 0; color: Theme.hairline }
    Column {
        id: words
        y: Space.small
        anchors.left: parent.left
        anchors.right: touch.left
        anchors.rightMargin: Space.gap
        spacing: Space.tight

        Label { width: parent.width; text: root.about + (root.value !== "" ? " · " + root.value : ""); isStrong: true; maximumLineCount: 5 }
        Label { width: parent.width; text: root.when + " · " + root.what + (root.by !== "" ? " · " + root.by : ""); size: Type.small; color: Theme.ash; maximumLineCount: 5 }
        Label { width: parent.width; visible: text !== ""; text: root.note; size: Type.small; color: Theme.ember; maximumLineCount: 4 }
    }
    PressPlate {
        id: touch
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: root.canCorrect
        width: visible ? implicitWidth : 0
        size: Type.body
        text: qsTr("Amend")
        Accessible.name: qsTr("Amend %1").arg(root.about)
        onClicked: root.correct()
    }
}
