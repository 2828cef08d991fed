pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The food-safety record: what is to be measured, how the pans stand, and every entry.
Item {
    id: root

    required property FoodRecord record
    property bool isNarrow: false
    readonly property string shown: root.record.part
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin : Math.floor((root.width - 3 * Space.margin) / 2)
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Record")

    Choice {
        id: which
        x: Space.margin
        y: Space.small
        width: Math.min(parent.width - 2 * Space.margin, Space.column * 1.4)
        name: qsTr("Record")
        isHeaded: false
        keys: root.isNarrow ? ["checks", "pans", "entries"] : ["checks", "entries", "close"]
        words: root.isNarrow ? [qsTr("Checks"), qsTr("Pans"), qsTr("Entries")] : [qsTr("Checks and pans"), qsTr("Entries"), qsTr("Sign and limits")]
        chosen: root.shown
        onChoose: key => root.record.part = key
    }
    Flickable {
        anchors.top: which.bottom
        anchors.topMargin: Space.small
        anchors.bottom: parent.bottom
        width: parent.width
        visible: root.shown === "checks" || root.shown === "pans"
        contentHeight: Math.max(checks.visible ? checks.height : 0, pans.visible ? pans.height : 0) + 2 * Space.margin
        clip: true

        Column {
            id: checks
            x: Space.margin
            width: root.half
            spacing: Space.small
            visible: root.shown === "checks"

            OwedPlate { width: parent.width; visible: root.record.tally.owed !== ""; text: root.record.tally.owed; onClicked: root.record.entry.answer(root.record.tally.owedPan) }
            Heading { width: parent.width; text: qsTr("To measure") + " · " + root.record.tally.due; note: root.record.tally.done }
            Label { width: parent.width; visible: root.record.checks.count === 0; text: qsTr("Every check of the day is done."); color: Theme.ash }
            Repeater {
                model: root.record.checks

                CheckPlate { id: check; width: checks.width; isNarrow: root.isNarrow; onClicked: root.record.entry.measureCheck(check.key) }
            }
            Remark { width: parent.width; text: root.record.tally.whoDecides }
            PressPlate { visible: root.isNarrow; width: parent.width; size: Type.body; text: qsTr("Sign and limits"); onClicked: root.record.part = "close" }
        }
        Column {
            id: pans
            x: root.isNarrow ? Space.margin : root.half + 2 * Space.margin
            width: root.half
            spacing: Space.small
            visible: !root.isNarrow || root.shown === "pans"

            Heading { width: parent.width; visible: root.record.forecasts.count > 0; text: qsTr("Forecast, nobody has measured this") }
            Repeater {
                model: root.record.forecasts

                ForecastPlate { id: forecast; width: pans.width; onClicked: root.record.entry.openPan(forecast.key) }
            }
            Heading { width: parent.width; text: qsTr("Pans as they stand"); note: root.record.tally.authority }
            Repeater {
                model: root.record.pans

                PanPlate { id: pan; width: pans.width; onClicked: root.record.entry.openPan(pan.key) }
            }
            PressPlate { objectName: "icePoint"; width: parent.width; size: Type.body; text: qsTr("Test a thermometer in ice water"); onClicked: root.record.entry.testThermometer("") }
        }
    }
    // A fourth choice would be too narrow for a glove on a phone: the way to the end of the record
    // is where its entries are read, and at the end of what is to be done.
    PressPlate { id: way; x: Space.margin; y: which.y + which.height + Space.small; width: root.half; visible: root.isNarrow && root.shown === "entries"; size: Type.body; text: qsTr("Sign and limits"); onClicked: root.record.part = "close" }
    ListView {
        anchors.top: way.visible ? way.bottom : which.bottom
        anchors.topMargin: Space.small
        anchors.bottom: parent.bottom
        x: Space.margin
        width: root.width - 2 * Space.margin
        visible: root.shown === "entries"
        model: root.record.entries
        clip: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Entries")

        delegate: EntryLine { id: line; width: ListView.view.width; onCorrect: root.record.entry.correct(line.key) }
    }
    Repeater {
        model: root.shown === "close" ? 1 : 0

        ClosingColumn {
            width: root.width
            y: which.y + which.height + Space.small
            height: root.height - y
            record: root.record
            isNarrow: root.isNarrow
        }
    }
}
