import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme
import Cinderbell.Parts

/// One figure: its name over its amount; an own value has a bold edge and says so.
T.AbstractButton {
    id: root

    required property string name
    required property string amount
    required property string note
    required property bool isOwn
    required property bool opens

    implicitHeight: Math.max(Space.touch, root.implicitContentHeight)
    enabled: root.opens
    Accessible.role: Accessible.Button
    Accessible.name: root.name + ": " + root.amount + (root.note !== "" ? ", " + root.note : "")
    Accessible.onPressAction: root.clicked()

    background: Plate {
        edgeWidth: root.isOwn ? Space.line * 2 : root.opens ? Space.line : Space.hair
        edge: root.visualFocus ? Theme.water : root.isOwn ? Theme.ember : root.opens ? Theme.edge : Theme.hairline
        fill: root.down ? Theme.waterWash : root.isOwn ? Theme.emberWash : root.opens ? Theme.plate : Theme.ground
    }
    contentItem: FigureFace {
        name: root.name
        amount: root.amount
        note: root.note
    }
}
