pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One of a few, or any of them: plates in a grid under their heading.
Column {
    id: root

    required property string name
    required property list<string> keys
    required property list<string> words
    required property list<string> chosen
    required property bool isMany
    required property bool isNarrow
    /// Without a heading each plate says for itself what it belongs to.
    property bool isHeaded: true
    signal choose(string key)

    spacing: Space.small
    Accessible.role: Accessible.Grouping
    Accessible.name: root.name

    Label { width: parent.width; visible: root.isHeaded; text: root.name; isStrong: true; Accessible.ignored: true }
    Grid {
        id: grid
        columns: root.isNarrow ? 2 : 3
        spacing: Space.small

        Repeater {
            model: root.visible ? root.words.length : 0

            ChoicePlate {
                id: one
                required property int index
                width: Math.floor((root.width - (grid.columns - 1) * grid.spacing) / grid.columns)
                text: root.words[one.index]
                isChosen: root.chosen.indexOf(root.keys[one.index]) >= 0
                Accessible.role: root.isMany ? Accessible.Button : Accessible.RadioButton
                Accessible.checkable: root.isMany
                Accessible.name: root.isHeaded ? one.text : qsTr("%1: %2").arg(root.name).arg(one.text)
                onClicked: root.choose(root.keys[one.index])
            }
        }
    }
}
