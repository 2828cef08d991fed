import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Pages
import Cinderbell.Models

/// The wick above, a board below, the ways to other boards at the thumb: a rail at the side of a
/// tablet, a row at the foot of a phone.
Item {
    id: root

    required property Settings settings
    required property Day day
    required property Events events
    /// "start", "holder", or a board or page by name.
    property string place: root.day.isOpen ? "holder" : "start"
    property string sheet: ""
    readonly property bool isNarrow: root.width < root.height
    readonly property bool hasRail: root.place !== "start" && root.place !== "holder"

    Connections {
        target: root.events
        function onOpened() { root.place = "holder" }
    }
    WickBand {
        id: wick
        z: 1
        width: parent.width
        visible: root.hasRail
        height: visible ? implicitHeight : 0
        day: root.day
    }
    Ways {
        id: ways
        // Above the stage: the software renderer does not clip drawn shapes to a list's edge.
        z: 1
        visible: root.hasRail
        isRow: root.isNarrow
        place: root.place
        x: root.isNarrow || root.settings.isLeftHanded ? 0 : root.width - width
        y: root.isNarrow ? root.height - height : wick.height
        width: root.isNarrow ? root.width : Space.rail + Space.small
        height: root.isNarrow ? Space.touch + Space.small : root.height - wick.height
        onGo: place => root.place = place
    }
    Item {
        id: stage
        x: root.hasRail && !root.isNarrow && root.settings.isLeftHanded ? ways.width : 0
        y: wick.height
        width: root.width - (root.hasRail && !root.isNarrow ? ways.width : 0)
        height: root.height - wick.height - (root.hasRail && root.isNarrow ? ways.height : 0)

        Loader {
            anchors.fill: parent
            anchors.bottomMargin: undo.visible ? undo.height + Space.small : 0
            sourceComponent: root.place === "start" ? start : root.place === "holder" ? holder
                : root.place === "fire" ? fire : root.place === "buffet" ? buffet
                : root.place === "sheet" ? runSheet : root.place === "settings" ? settingsPage : lead
        }
        PressPlate {
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.margins: Space.small
            visible: root.hasRail && root.day.line.isRehearsal && root.place === "lead" && !root.isNarrow
            glyph: Icons.play
            text: root.day.line.rehearsal
            size: Type.body
            onClicked: root.sheet = "speed"
        }
        AlarmFlash {
            anchors.fill: parent
            visible: root.hasRail && root.day.ringing.count > 0
            day: root.day
        }
        UndoBar {
            id: undo
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Space.small
            x: Space.small
            width: parent.width - 2 * Space.small
            visible: root.hasRail && root.day.line.undo !== "" && root.day.refusal === ""
            text: root.day.line.undo
            remaining: root.day.undoLeft
            onUndo: root.day.undo()
        }
        RefusalBar {
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Space.small
            x: Space.small
            width: parent.width - 2 * Space.small
            visible: root.day.refusal !== ""
            day: root.day
        }
    }
    MoveBellSheet { z: 2; anchors.fill: parent; visible: root.sheet === "bell"; day: root.day; onClosed: root.sheet = "" }
    SpeedSheet { z: 2; anchors.fill: parent; visible: root.sheet === "speed"; day: root.day; onClosed: root.sheet = "" }

    Component { id: start; StartPage { events: root.events } }
    Component { id: holder; HolderPage { day: root.day; onChoose: board => root.place = board } }
    Component { id: lead; LeadBoard { day: root.day; isNarrow: root.isNarrow; onMoveBell: root.sheet = "bell" } }
    Component { id: fire; FireBoard { day: root.day; isNarrow: root.isNarrow } }
    Component { id: buffet; BuffetBoard { day: root.day; isNarrow: root.isNarrow } }
    Component { id: runSheet; RunSheetPage { day: root.day } }
    Component {
        id: settingsPage
        SettingsPage {
            settings: root.settings
            day: root.day
            onRehearse: root.sheet = "speed"
            onLeave: { root.events.refresh(); root.place = "start" }
        }
    }
}
