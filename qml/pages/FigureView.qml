pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// How one figure came about: its formula, what went into it, where that comes from, and the way to
/// an own value and back.
Flickable {
    id: root

    required property Figures figures
    property bool isNarrow: false
    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: root.figures.name

    Column {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * x
        spacing: Space.gap

        PageHead { width: parent.width; title: root.figures.name; note: root.figures.formula; onBack: root.figures.goBack() }
        Label { width: parent.width; text: root.figures.amount; size: Type.figure; isStrong: true }
        Column {
            width: parent.width
            spacing: Space.tight
            visible: root.figures.worked.length > 0

            Repeater {
                model: root.figures.worked

                Label { required property string modelData; width: parent.width; text: modelData; maximumLineCount: 12 }
            }
        }
        Label { width: parent.width; visible: text !== ""; text: root.figures.own; size: Type.lead; isStrong: true }
        Label { width: parent.width; visible: text !== ""; text: root.figures.source; color: Theme.ash; maximumLineCount: 8 }
        Flow {
            width: parent.width
            spacing: Space.apart
            visible: root.figures.canBeOwn

            PressPlate { text: qsTr("Use your own figure"); size: Type.body; onClicked: root.figures.ask("value") }
            PressPlate { visible: root.figures.isOwn; tone: "water"; size: Type.body; text: qsTr("Back to reckoned"); onClicked: root.figures.restore() }
        }
        FigureGroup {
            width: parent.width
            visible: root.figures.inputs.count > 0
            heading: qsTr("What went into it")
            figures: root.figures.inputs
            columns: root.isNarrow ? 1 : 3
            onOpen: key => root.figures.openInput(key)
        }
    }
}
