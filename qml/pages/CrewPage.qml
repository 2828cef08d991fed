pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Who is there: somebody goes, comes or takes over other work, and the rest of the day is planned
/// for those who are there.
Item {
    id: root

    required property Crew crew
    property bool isNarrow: false
    property bool isReadOnly: false
    property bool isNaming: false
    signal back()

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Crew")

    Flickable {
        id: list
        enabled: !root.isNaming
        width: parent.width
        height: parent.height - foot.height
        contentHeight: all.height + 2 * Space.margin
        clip: true

        Column {
            id: all
            x: root.isNarrow ? Space.margin : Space.wide
            y: Space.margin
            width: list.width - 2 * x
            spacing: Space.gap

            PageHead { width: parent.width; title: qsTr("Who is there now"); note: root.isNarrow ? "" : qsTr("Somebody goes, comes, or takes over other work: say so here, then plan the rest."); onBack: root.back() }
            Grid {
                id: plates
                width: parent.width
                columns: root.isNarrow ? 1 : 2
                columnSpacing: Space.gap
                rowSpacing: Space.gap
                readonly property real share: Math.floor((width - (columns - 1) * columnSpacing) / columns)

                Repeater {
                    model: root.crew.rows

                    CrewPlate {
                        id: plate
                        width: plates.share
                        isNarrow: root.isNarrow
                        canChange: !root.crew.isPlanning && !root.isReadOnly
                        onSetHere: isHere => root.crew.setHere(plate.key, isHere)
                        onToggleSkill: skill => root.crew.toggleSkill(plate.key, skill)
                        onDrop: root.crew.drop(plate.key)
                        onAskName: { root.isNaming = true; keyboard.ask(plate.key, qsTr("Name"), plate.name) }
                    }
                }
                PressPlate {
                    width: plates.share
                    isOff: root.crew.isPlanning || root.isReadOnly
                    glyph: Icons.plus
                    text: qsTr("Somebody comes")
                    onClicked: root.crew.add([])
                }
            }
        }
    }
    Rectangle {
        id: foot
        enabled: !root.isNaming
        anchors.bottom: parent.bottom
        width: parent.width
        height: root.isNarrow ? said.height + plan.height + 3 * Space.small : plan.height + 2 * Space.small
        color: Theme.ground

        Rectangle { width: parent.width; height: Space.hair; color: Theme.hairline }
        Remark {
            id: said
            x: all.x
            y: root.isNarrow ? Space.small : Math.round((foot.height - height) / 2)
            width: root.isNarrow ? parent.width - 2 * all.x : plan.x - all.x - Space.gap
            text: root.crew.isPlanning ? qsTr("Planning…") : root.crew.refusal !== "" ? root.crew.refusal : root.crew.change !== "" ? root.crew.change : qsTr("As planned: nothing is changed.")
            glyph: root.crew.refusal !== "" ? Icons.caution : root.crew.change !== "" ? Icons.pencil : Icons.tick
            tint: root.crew.refusal !== "" ? Theme.ember : Theme.ink
        }
        PressPlate {
            id: plan
            objectName: "planCrew"
            x: root.isNarrow ? all.x : parent.width - all.x - width
            y: root.isNarrow ? said.height + 2 * Space.small : Space.small
            width: root.isNarrow ? parent.width - 2 * all.x : Math.max(plates.share, implicitWidth)
            visible: !root.crew.isPlanning
            tone: root.crew.change === "" ? "plain" : "ember"
            glyph: Icons.bell
            isOff: root.crew.change === "" || root.isReadOnly
            text: qsTr("Plan the rest for them")
            onClicked: root.crew.plan()
        }
        // Held, lest a second touch of the key that was here ends what the first began.
        HoldPlate {
            objectName: "stopPlanning"
            x: plan.x
            y: plan.y
            width: plan.width
            height: plan.height
            visible: root.crew.isPlanning
            text: qsTr("Hold to stop")
            onHeld: root.crew.stopPlanning()
        }
    }
    TextSheet { id: keyboard; z: 2; anchors.fill: parent; visible: root.isNaming; onTaken: (key, text) => root.crew.setName(key, text); onClosed: root.isNaming = false }
}
