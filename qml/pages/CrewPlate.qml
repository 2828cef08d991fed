import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One of the crew: there or gone, and what they can do.
Item {
    id: root

    required property string key
    required property string name
    required property bool isHere
    required property bool isNew
    required property bool isChanged
    required property list<string> skills
    required property list<string> skillWords
    required property list<string> chosen
    property bool canChange: true
    property bool isNarrow: false
    signal setHere(bool isHere)
    signal toggleSkill(string skill)
    signal drop()
    signal askName()

    implicitHeight: all.height + 2 * Space.gap
    Accessible.role: Accessible.Grouping
    Accessible.name: root.name

    Plate { anchors.fill: parent; edgeWidth: root.isChanged ? Space.line : Space.hair; edge: root.isChanged ? Theme.edge : Theme.hairline }
    Column {
        id: all
        x: Space.gap
        y: Space.gap
        width: parent.width - 2 * x
        spacing: Space.gap

        Item {
            width: parent.width
            height: root.isNarrow ? called.height + keys.height + Space.small : keys.height

            Label {
                id: called
                width: root.isNarrow ? parent.width : keys.x - Space.gap
                y: root.isNarrow ? 0 : Math.round((keys.height - height) / 2)
                text: root.name !== "" ? root.name : qsTr("Without a name")
                size: Type.lead
                isStrong: true
                maximumLineCount: 2
                color: root.isHere ? Theme.ink : Theme.ash
            }
            Row {
                id: keys
                anchors.right: parent.right
                anchors.bottom: parent.bottom
                spacing: Space.small
                readonly property real share: root.isNarrow ? Math.floor((all.width - spacing) / 2) : Math.round(Space.touch * 1.3)

                PressPlate { visible: root.isNew; enabled: root.canChange; width: keys.share; glyph: Icons.pencil; Accessible.name: qsTr("Name: %1").arg(root.name); onClicked: root.askName() }
                PressPlate { visible: root.isNew; enabled: root.canChange; width: keys.share; glyph: Icons.erase; Accessible.name: qsTr("Take off the list: %1").arg(root.name); onClicked: root.drop() }
                ChoicePlate { visible: !root.isNew; enabled: root.canChange; width: keys.share; text: qsTr("There"); isChosen: root.isHere; Accessible.name: qsTr("%1 is there").arg(root.name); onClicked: root.setHere(true) }
                ChoicePlate { visible: !root.isNew; enabled: root.canChange; width: keys.share; text: qsTr("Gone"); isChosen: !root.isHere; Accessible.name: qsTr("%1 is gone").arg(root.name); onClicked: root.setHere(false) }
            }
        }
        MakeOptions {
            width: parent.width
            visible: root.isHere || !root.isNarrow
            enabled: root.canChange && root.isHere
            isHeaded: false
            isMany: true
            isNarrow: root.isNarrow
            name: root.name
            keys: root.skills
            words: root.skillWords
            chosen: root.chosen
            onChoose: key => root.toggleSkill(key)
        }
    }
}
