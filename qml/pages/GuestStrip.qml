import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What if others came: two counts to step or type; nothing is changed until somebody says so.
Column {
    id: root

    required property Figures figures
    property bool isNarrow: false

    spacing: Space.small

    Label { width: parent.width; text: root.figures.guests; size: Type.lead; isStrong: true }
    Grid {
        width: parent.width
        columns: root.isNarrow ? 1 : 2
        spacing: Space.small

        CountStepper {
            width: root.isNarrow ? root.width : Math.floor((root.width - Space.small) / 2)
            text: root.figures.adults
            lessName: qsTr("5 adults fewer")
            moreName: qsTr("5 adults more")
            onLess: root.figures.tryGuests(-5, 0)
            onMore: root.figures.tryGuests(5, 0)
            onAsk: root.figures.ask("adults")
        }
        CountStepper {
            width: root.isNarrow ? root.width : Math.floor((root.width - Space.small) / 2)
            text: root.figures.children
            lessName: qsTr("1 child fewer")
            moreName: qsTr("1 child more")
            onLess: root.figures.tryGuests(0, -1)
            onMore: root.figures.tryGuests(0, 1)
            onAsk: root.figures.ask("children")
        }
    }
    Rectangle {
        width: parent.width
        height: said.height + 2 * Space.gap
        visible: root.figures.isTrial
        color: Theme.waterWash
        radius: Space.corner
        border.width: Space.line
        border.color: Theme.water

        Column {
            id: said
            x: Space.gap
            y: Space.gap
            width: parent.width - 2 * Space.gap
            spacing: Space.gap

            Label { width: parent.width; text: root.figures.trial; isStrong: true; maximumLineCount: 6 }
            Flow {
                width: parent.width
                spacing: Space.gap

                PressPlate { tone: root.figures.isPlanning ? "plain" : "water"; size: Type.body; enabled: !root.figures.isPlanning; text: root.figures.isPlanning ? qsTr("Planning…") : qsTr("So many come"); onClicked: root.figures.useTrial() }
                PressPlate { size: Type.body; text: qsTr("Leave as agreed"); onClicked: root.figures.dropTrial() }
            }
        }
    }
}
