import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One of a few: buttons in a row, the chosen one filled and ticked.
Row {
    id: root

    required property string name
    required property list<string> keys
    required property list<string> words
    required property string chosen
    signal choose(string key)

    spacing: Space.tight
    Accessible.role: Accessible.RadioButton
    Accessible.name: root.name

    Repeater {
        model: root.words.length

        T.AbstractButton {
            id: one
            required property int index
            readonly property bool isChosen: root.keys[one.index] === root.chosen

            width: (root.width - root.spacing * (root.words.length - 1)) / root.words.length
            height: Space.touch
            text: root.words[one.index]
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.RadioButton
            Accessible.name: one.text
            Accessible.checked: one.isChosen
            Accessible.onPressAction: one.click()
            onClicked: root.choose(root.keys[one.index])

            background: Rectangle {
                color: one.isChosen ? Theme.ink : Theme.plate
                radius: Space.corner
                border.width: Space.line
                border.color: one.visualFocus ? Theme.water : Theme.edge
            }
            contentItem: Item {
                TextMetrics { id: measure; font: word.font; text: one.text }
                Row {
                    anchors.centerIn: parent
                    spacing: Space.small

                    Glyph {
                        visible: one.isChosen
                        anchors.verticalCenter: parent.verticalCenter
                        path: Icons.tick
                        size: Space.mark
                        color: Theme.ground
                    }
                    Label {
                        id: word
                        width: Math.min(Math.ceil(measure.advanceWidth) + 2, one.width - 2 * Space.small
                                        - (one.isChosen ? Space.mark + Space.small : 0))
                        text: one.text
                        isStrong: true
                        maximumLineCount: 2
                        color: one.isChosen ? Theme.ground : Theme.ink
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
