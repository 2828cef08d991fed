import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One piece that may be pulled with others: its number, class and minute; touched, it is ticked.
T.AbstractButton {
    id: root

    required property string key
    required property string name
    required property string number
    required property string time
    required property string mark
    required property int studs
    required property bool isChosen
    required property bool isDue
    required property int index

    implicitHeight: Space.hurried
    implicitWidth: Space.hurried
    Accessible.role: Accessible.CheckBox
    Accessible.name: root.name
    Accessible.checkable: true
    Accessible.checked: root.isChosen
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.isChosen ? Theme.water : root.down ? Theme.waterWash : Theme.plate
        radius: Space.corner
        border.width: root.visualFocus ? Space.line * 2 : Space.line
        border.color: root.isDue && !root.isChosen ? Theme.ember : Theme.edge
    }
    contentItem: PieceTileFace { number: root.number; mark: root.mark; studs: root.studs; time: root.time; isChosen: root.isChosen }
}
