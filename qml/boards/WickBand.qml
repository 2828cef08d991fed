import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The wick across the top of every board, and beside its bell the distance and the hour.
Item {
    id: root

    required property Day day
    implicitHeight: Space.wick
    Accessible.role: Accessible.Indicator
    Accessible.name: root.day.line.fromBell + ", " + root.day.line.serveClock

    WickPicture {
        anchors.left: parent.left
        anchors.right: hours.left
        height: parent.height
        wick: root.day.wick
        ink: Theme.ink
        ash: Theme.ash
        ember: Theme.ember
        water: Theme.water
        ground: Theme.ground
        cord: Space.tight
        font.family: Type.family
        font.pixelSize: Type.small
    }
    Column {
        id: hours
        anchors.right: parent.right
        anchors.rightMargin: Space.margin
        anchors.verticalCenter: parent.verticalCenter

        Figure { text: root.day.line.serveClock; size: Type.lead }
        Figure { text: root.day.line.fromBell; size: Type.body; color: Theme.ash }
        Label { visible: root.day.battery !== ""; text: root.day.battery; size: Type.least; isStrong: true; color: Theme.ember; wrapMode: Text.NoWrap }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Space.hair
        color: Theme.hairline
    }
}
