pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// A sheet to print: which, on what paper, in which language; and where the file went.
Item {
    id: root

    required property Papers papers
    property bool isNarrow: false
    signal back()

    Flickable {
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        contentHeight: all.height + 2 * Space.gap
        clip: true
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("Paper")

        Column {
            id: all
            x: Space.margin
            y: Space.gap
            width: root.width - 2 * x
            spacing: Space.gap

            PageHead { width: parent.width; title: qsTr("Paper"); note: qsTr("Written as a file to print or to send."); onBack: root.back() }
            Grid {
                id: sheets
                width: parent.width
                columns: root.isNarrow ? 2 : 4
                spacing: Space.small

                Repeater {
                    model: root.papers.sheets.length

                    ChoicePlate {
                        id: one
                        required property int index
                        width: Math.floor((sheets.width - (sheets.columns - 1) * Space.small) / sheets.columns)
                        text: root.papers.names[one.index]
                        isChosen: root.papers.sheets[one.index] === root.papers.sheet
                        onClicked: root.papers.sheet = root.papers.sheets[one.index]
                    }
                }
            }
            Choice {
                width: parent.width
                name: qsTr("Paper size")
                keys: ["letter", "a4"]
                words: [qsTr("Letter"), "A4"]
                chosen: root.papers.size
                onChoose: key => root.papers.size = key
            }
            Choice {
                width: parent.width
                name: qsTr("Language")
                keys: ["en", "es"]
                words: ["English", "Español"]
                chosen: root.papers.language
                onChoose: key => root.papers.language = key
            }
        }
    }
    // Always in view: the touch that writes, and what became of it.
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: acts.height + 2 * Space.small
        color: Theme.ground

        Column {
            id: acts
            x: Space.margin
            y: Space.small
            width: parent.width - 2 * x
            spacing: Space.small

            Remark { width: parent.width; text: root.papers.said; glyph: root.papers.isWritten ? Icons.tick : Icons.caution; tint: root.papers.isWritten ? Theme.ink : Theme.ember; lines: 8 }
            Row {
                id: keys
                spacing: Space.gap
                readonly property real share: root.isNarrow && root.papers.hasTable ? (acts.width - spacing) / 2 : 0

                PressPlate { width: keys.share > 0 ? keys.share : implicitWidth; tone: "ember"; text: qsTr("Write PDF"); onClicked: root.papers.writePdf() }
                PressPlate { width: keys.share > 0 ? keys.share : implicitWidth; visible: root.papers.hasTable; text: qsTr("Write CSV"); onClicked: root.papers.writeCsv() }
            }
        }
    }
}
