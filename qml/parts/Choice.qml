pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// One of a few: buttons in a row under their heading.
Column {
    id: root

    required property string name
    required property list<string> keys
    required property list<string> words
    required property string chosen
    property bool isHeaded: true
    signal choose(string key)

    spacing: Space.tight
    Accessible.role: Accessible.Grouping
    Accessible.name: root.name

    Heading { width: parent.width; visible: root.isHeaded; text: root.name }
    Grid {
        id: plates
        width: parent.width
        spacing: Space.small
        // In two rows rather than too narrow for a glove.
        columns: Space.touch * root.words.length + Space.small * (root.words.length - 1) <= root.width
            ? root.words.length : Math.ceil(root.words.length / 2)

        Repeater {
            model: root.words.length

            ChoicePlate {
                id: one
                required property int index

                width: (root.width - Space.small * (plates.columns - 1)) / plates.columns
                text: root.words[one.index]
                isChosen: root.keys[one.index] === root.chosen
                onClicked: root.choose(root.keys[one.index])
            }
        }
    }
}
