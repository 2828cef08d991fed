import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One row of the pack list: one touch when all of it is in, a number when only some is.
Item {
    id: root

    required property string key
    required property string text
    required property string counted
    required property bool isIn
    required property bool canCount
    signal tick()
    signal count()

    implicitHeight: Space.hurried

    TickTile {
        width: root.width - (some.visible ? some.width + Space.small : 0)
        text: root.text
        isTicked: root.isIn
        onTicked: root.tick()
    }
    PressPlate {
        id: some
        anchors.right: parent.right
        width: Space.touch
        height: parent.height
        visible: root.canCount
        size: Type.body
        text: root.counted
        Accessible.name: qsTr("Count: %1, %2").arg(root.text).arg(root.counted)
        onClicked: root.count()
    }
}
