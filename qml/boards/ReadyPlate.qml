import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Whether the bell will be kept, as it looks now; leads to the promise and what could be changed.
T.AbstractButton {
    id: root

    required property Day day

    implicitHeight: Space.touch
    text: root.day.line.ready + " · " + root.day.line.spare
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Plate {
        fill: root.day.line.isLate ? Theme.emberWash : Theme.waterWash
        edge: root.day.line.isLate || root.visualFocus ? Theme.ember : Theme.water
    }
    contentItem: ReadyFace {
        text: root.text
        mark: root.day.line.readyMark
    }
}
