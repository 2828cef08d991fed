import QtQuick
import Cinderbell.Theme

/// Keys for a number, wide enough for a glove: what stands there on top with its unit, digits below.
/// Says what was touched and keeps nothing.
Column {
    id: root

    required property string name
    required property string text
    required property string unitWord
    required property list<string> units
    required property int unit
    required property string problem
    property bool takesPoint: false
    property bool takesSign: false
    property int keyHeight: Space.touch
    /// The units are one key beside the figure, each touch the next: a row of their own pushes the
    /// last digits off the sheet.
    readonly property bool hasUnitKey: root.units.length > 1
    signal pressed(string key)
    signal erased()
    signal unitChosen(int unit)

    spacing: Space.small
    Accessible.role: Accessible.Grouping
    Accessible.name: root.name

    Item {
        width: parent.width
        height: display.height

        KeyPlate {
            id: sign
            visible: root.takesSign
            width: Space.touch
            height: display.height
            symbol: "-"
            onClicked: root.pressed("-")
        }
        Rectangle {
            id: display
            x: sign.visible ? sign.width + Space.small : 0
            width: (one.visible ? one.x - Space.small : parent.width) - x
            height: Math.max(Space.touch, figure.lineHeight + 2 * Space.small)
            color: Theme.plate
            radius: Space.corner
            border.width: Space.line
            border.color: root.problem !== "" ? Theme.ember : Theme.edge

            Figure {
                id: figure
                anchors.left: parent.left
                anchors.leftMargin: Space.small
                anchors.right: unit.left
                anchors.rightMargin: unit.visible ? Space.gap : 0
                horizontalAlignment: Text.AlignRight
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Type.body
                anchors.verticalCenter: parent.verticalCenter
                text: root.text === "" ? "···" : root.text
                color: root.text === "" ? Theme.ash : Theme.ink
                size: Type.countdown
                Accessible.name: root.name + " " + root.text + " " + root.unitWord
            }
            Label {
                id: unit
                visible: text !== ""
                anchors.right: parent.right
                anchors.rightMargin: Space.margin
                anchors.baseline: figure.baseline
                text: root.hasUnitKey ? "" : root.unitWord
                size: Type.title
                isStrong: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
        PressPlate {
            id: one
            objectName: "unitKey"
            anchors.right: parent.right
            visible: root.hasUnitKey
            width: Space.touch
            height: display.height
            size: Type.title
            text: root.unitWord
            Accessible.name: qsTr("Unit: %1").arg(root.unitWord)
            onClicked: root.unitChosen((root.unit + 1) % root.units.length)
        }
    }
    Label {
        width: parent.width
        visible: root.problem !== ""
        text: root.problem
        isStrong: true
        color: Theme.ink
    }
    DigitKeys {
        width: parent.width
        keyHeight: root.keyHeight
        takesPoint: root.takesPoint
        onPressed: key => root.pressed(key)
        onErased: root.erased()
    }
}
