import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// The keys of one reading: what it is for, which pan, which thermometer, the number, the scale.
/// Everything is there already but the number: three keys and "Write down".
Grid {
    id: root

    required property FoodEntry entry
    property bool isNarrow: false
    readonly property real half: root.isNarrow ? root.width : Math.floor((root.width - Space.wide) / 2)

    columns: root.isNarrow ? 1 : 2
    columnSpacing: Space.wide
    rowSpacing: Space.small

    Column {
        width: root.half
        spacing: Space.small

        Row {
            id: means
            width: parent.width
            spacing: Space.small
            readonly property int parts: Math.max(1, (root.entry.ask.hasThermometer ? 1 : 0) + (root.entry.ask.hasPan ? 1 : 0) + (means.hasScale ? 1 : 0))
            readonly property bool hasScale: root.isNarrow && root.entry.number.units.length > 1
            readonly property real share: (width - (means.parts - 1) * Space.small) / means.parts

            PressPlate { width: means.share; visible: root.entry.ask.hasPan; size: Type.body; text: root.entry.ask.pan; onClicked: root.entry.askPan() }
            PressPlate { width: means.share; visible: root.entry.ask.hasThermometer; size: Type.body; text: root.entry.ask.thermometer; onClicked: root.entry.askThermometer() }
            // On a phone the scale is one touch beside the others, so that all keys are in view.
            PressPlate { width: means.share; visible: means.hasScale; text: root.entry.number.unitWord; Accessible.name: qsTr("Scale: %1").arg(root.entry.number.unitWord); onClicked: root.entry.number.useUnit(1 - root.entry.number.unit) }
        }
        Remark { width: parent.width; visible: !root.isNarrow; text: qsTr("Thickest part, middle of the pan, away from bone; wait until the figure stands still.") }
        PressPlate {
            objectName: "foodSave"
            width: parent.width
            height: Space.hurried
            visible: !root.isNarrow
            tone: "ember"
            glyph: Icons.tick
            size: Type.title
            isOff: !root.entry.number.isReady
            text: qsTr("Write down")
            onClicked: root.entry.save()
        }
    }
    NumberPad { width: root.half; name: root.entry.ask.purpose; entry: root.entry.number; units: root.isNarrow ? [] : root.entry.number.units }
    PressPlate {
        objectName: "foodSave"
        width: root.half
        height: Space.touch * 1.2
        visible: root.isNarrow
        tone: "ember"
        glyph: Icons.tick
        size: Type.title
        isOff: !root.entry.number.isReady
        text: qsTr("Write down")
        onClicked: root.entry.save()
    }
}
