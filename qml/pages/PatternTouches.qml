import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Everything a thumb can press, at rest, chosen, settled and out of reach.
Column {
    id: root

    property bool isTicked: false
    property bool isHeld: false
    property string chosen: "one"
    spacing: Space.gap

    Heading { width: parent.width; text: qsTr("Touches") }
    Flow {
        width: parent.width
        spacing: Space.gap

        PressPlate { text: qsTr("Plain") }
        PressPlate { tone: "ember"; glyph: Icons.flame; text: qsTr("Now") }
        PressPlate { tone: "water"; glyph: Icons.tick; text: qsTr("Settled") }
        PressPlate { tone: "quiet"; text: qsTr("Quiet") }
        PressPlate { isOff: true; text: qsTr("Not yet") }
    }
    Choice {
        width: parent.width
        name: qsTr("One of a few")
        keys: ["one", "two", "three"]
        words: [qsTr("Low"), qsTr("Medium"), qsTr("High")]
        chosen: root.chosen
        onChoose: key => root.chosen = key
    }
    TickTile { width: parent.width; text: qsTr("Chafers filled, lids on"); isTicked: root.isTicked; onTicked: root.isTicked = true }
    TickTile { width: parent.width; text: qsTr("Signs in front of every dish"); isTicked: true }
    Item {
        width: parent.width
        height: hard.height + 2 * Space.apart

        HoldPlate { id: hard; anchors.verticalCenter: parent.verticalCenter; width: parent.width; text: root.isHeld ? qsTr("Held") : qsTr("Hold: hard to take back"); onHeld: root.isHeld = true }
    }
    UndoBar { width: parent.width; noted: qsTr("Turned: chicken thighs"); remaining: "0:42" }
}
