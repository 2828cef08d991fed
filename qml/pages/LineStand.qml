import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One vessel from above, with the number of its dish; its card lies before it.
Item {
    id: root

    required property string number
    required property string name
    required property real begin
    required property real behind
    required property real length
    required property real depth
    required property bool isOnRiser
    required property bool isPlaced
    required property bool isChosen
    required property bool hasCard
    property real scaling: 0.2
    property real floor: 0

    x: Math.round(root.begin * root.scaling)
    y: Math.round(root.behind * root.scaling)
    width: Math.max(Space.small, Math.floor(root.length * root.scaling))
    height: Math.max(Space.small, Math.floor(root.depth * root.scaling))
    Accessible.role: Accessible.Graphic
    Accessible.name: root.number + " " + root.name

    Rectangle {
        anchors.fill: parent
        radius: Space.tight
        color: root.isChosen ? Theme.ink : root.isPlaced ? Theme.waterWash : Theme.ground
        border.width: Space.line
        border.color: root.isPlaced ? Theme.water : Theme.edge
    }
    Rectangle {
        anchors.fill: parent
        anchors.margins: Space.line + Space.tight
        visible: root.isOnRiser
        color: Theme.none
        border.width: Space.hair
        border.color: root.isChosen ? Theme.ground : Theme.edge
    }
    Text {
        anchors.centerIn: parent
        text: root.number
        color: root.isChosen ? Theme.ground : Theme.ink
        font.family: Type.strongFamily
        font.weight: Type.strong
        font.pixelSize: Math.min(Type.body, parent.height * 0.7, parent.width * 0.55)
        Accessible.ignored: true
    }
    Rectangle {
        visible: root.hasCard && !root.isOnRiser
        anchors.horizontalCenter: parent.horizontalCenter
        y: root.floor - root.y - height - Space.line
        width: Math.min(parent.width, Space.gap * 2)
        height: Space.tight
        color: Theme.ink
    }
}
