import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// How likely all is out by the bell, and what would raise that.
Row {
    id: root

    required property Day day

    spacing: Space.margin

    Figure { id: chance; anchors.verticalCenter: words.verticalCenter; text: root.day.line.chance; size: Type.countdown * 0.8 }
    Column {
        id: words
        width: root.width - chance.width - Space.margin
        spacing: Space.tight

        Label { width: parent.width; text: qsTr("chance that all is out by the bell"); isStrong: true }
        Label {
            width: parent.width
            text: root.day.line.chanceReady + " · " + root.day.line.chanceEarlier
            size: Type.small
            color: Theme.ash
        }
    }
}
