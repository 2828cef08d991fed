import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One copy of everything, by the minute it was made, and the touch that takes from it what is
/// missing here.
Item {
    id: root

    required property string key
    required property string name
    signal restore()

    implicitHeight: touch.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name

    Plate { anchors.fill: parent }
    Label {
        anchors.left: parent.left
        anchors.leftMargin: Space.margin
        anchors.right: touch.left
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: root.name
    }
    PressPlate {
        id: touch
        objectName: "restore"
        anchors.right: parent.right
        anchors.rightMargin: Space.gap
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Take back")
        Accessible.name: qsTr("Take back what is missing here from %1").arg(root.name)
        onClicked: root.restore()
    }
}
