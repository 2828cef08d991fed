import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One dish of the line: touched it is shown in the drawing and offers to go earlier or later; its
/// grip is dragged.
Item {
    id: root

    required property string key
    required property string number
    required property string name
    required property string where
    required property string card
    required property bool isWaiting
    required property bool isChosen
    required property bool canGoEarlier
    required property bool canGoLater
    signal choose()
    signal move(real rows)
    readonly property real plain: Math.max(Space.touch, words.height + 2 * Space.small)

    implicitHeight: root.plain + (root.isChosen ? Space.touch + 2 * Space.small : 0)
    z: grip.drag.active ? 1 : 0
    Accessible.role: Accessible.ListItem
    Accessible.name: root.number + " " + root.name + ", " + root.where + ", " + root.card

    Item {
        id: body
        width: root.width
        height: root.height

        Plate { anchors.fill: parent; edgeWidth: root.isChosen ? Space.line * 2 : Space.line; edge: root.isWaiting ? Theme.ember : Theme.edge; fill: grip.drag.active ? Theme.waterWash : Theme.plate }
        Label { id: place; x: Space.gap; y: Math.round((root.plain - height) / 2); width: Space.icon * 1.4; text: root.number; size: Type.title; isStrong: true; horizontalAlignment: Text.AlignHCenter }
        Column {
            id: words
            x: place.x + place.width + Space.gap
            y: Math.round((root.plain - height) / 2)
            width: root.width - x - grip.width - Space.small

            Label { width: parent.width; text: root.name; size: Type.lead; isStrong: true; maximumLineCount: 6 }
            Label { width: parent.width; text: root.where; size: Type.small; color: root.isWaiting ? Theme.ember : Theme.ash }
            Label { width: parent.width; text: root.card; size: Type.small; maximumLineCount: 6 }
        }
        T.AbstractButton {
            id: whole
            width: parent.width - grip.width
            height: root.plain
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("Show %1").arg(root.name)
            Accessible.onPressAction: root.choose()
            onClicked: root.choose()
            background: Rectangle { visible: whole.visualFocus; color: Theme.none; radius: Space.corner; border.width: Space.line * 2; border.color: Theme.water }
        }
        MouseArea {
            id: grip
            anchors.right: parent.right
            width: Space.touch
            height: root.plain
            preventStealing: true
            drag.target: body
            drag.axis: Drag.YAxis
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("Drag %1").arg(root.name)
            onReleased: {
                root.move(body.y / (root.plain + Space.small))
                body.y = 0
            }

            Glyph { anchors.centerIn: parent; path: "M3 6 L21 6 L21 8.6 L3 8.6 Z M3 10.8 L21 10.8 L21 13.4 L3 13.4 Z M3 15.6 L21 15.6 L21 18.2 L3 18.2 Z" }
        }
        Row {
            x: Space.small
            y: root.plain
            visible: root.isChosen
            spacing: Space.apart
            readonly property real share: (root.width - 2 * Space.small - Space.apart) / 2

            PressPlate { width: parent.share; isOff: !root.canGoEarlier; size: Type.body; glyph: root.width > Space.column ? Icons.back : ""; text: qsTr("Earlier"); onClicked: root.move(-1) }
            PressPlate { width: parent.share; isOff: !root.canGoLater; size: Type.body; glyph: root.width > Space.column ? Icons.forward : ""; text: qsTr("Later"); onClicked: root.move(1) }
        }
    }
}
