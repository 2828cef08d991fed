pragma ComponentBehavior: Bound

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
    required property Promise promise
    required property Crew crew
    required property CrewDevicesView crewDevices
    required property FoodRecord record
    required property Editor editor
    required property Lists lists
    required property CautionList cautions
    required property Serve serve
    required property Strike strike
    required property Debrief debrief
    /// "start", "holder", or a board or page by name.
    property string place: root.day.isOpen ? "holder" : "start"
    property string sheet: ""
    property bool isLocked: false
    /// Where the page of the devices was opened from.
    property string beforeDevices: root.day.isOpen ? "more" : "start"
    property alias idleAfter: shade.after
    readonly property bool isNarrow: root.width < root.height
    /// A call fills the board where it is answered, and any board in the hands of who answers it.
    /// On a page without the ways to the boards it is a band, and can be silenced there.
    readonly property bool isCalled: root.hasRail && root.day.line.callBoard !== ""
        && (root.day.line.callBoard === root.place || root.day.line.isCallMine)
    readonly property bool isCalledElsewhere: root.day.isOpen && root.day.line.callBoard !== "" && !root.isCalled
    readonly property bool offersUndo: root.hasRail && root.day.line.undo !== ""
    /// A call goes before a sheet of the fire, which is still open behind it.
    readonly property bool isAtFire: root.place === "fire" && !root.isCalled
    readonly property bool hasRail: root.place !== "start" && root.place !== "holder" && root.place !== "new" && root.place !== "make" && (root.place !== "devices" || root.beforeDevices !== "start")

    FocusFollower {}
    // Sees every touch and takes none.
    PointHandler { onActiveChanged: shade.touched() }
    Connections {
        target: root.events
        function onOpened() { root.place = "holder" }
        function onDraftOpened() { root.editor.open(); root.place = "make" }
    }
    Connections {
        target: root.editor
        function onBegun() { root.place = "make" }
        function onPlanned() { root.events.refresh(); root.place = "promise" }
    }
    Connections {
        target: root.promise.waysOut
        function onPersonAsked() { root.place = "crew" }
    }
    Connections {
        target: root.crew
        function onAccepted() { if (root.place === "crew") root.place = "lead" }
    }
    Connections {
        target: root.day
        function onRecordAsked() { root.place = "record" }
        function onServeAsked() { root.place = "serve" }
    }
    WickBand {
        id: wick
        z: 1
        width: parent.width
        visible: root.hasRail
        enabled: !over.isCovering
        height: visible ? implicitHeight : 0
        day: root.day
    }
    Ways {
        id: ways
        // Above the stage: the software renderer does not clip drawn shapes to a list's edge.
        z: 1
        visible: root.hasRail
        enabled: !over.isCovering
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
        enabled: !over.isCovering
        x: root.hasRail && !root.isNarrow && root.settings.isLeftHanded ? ways.width : 0
        y: wick.height
        width: root.width - (root.hasRail && !root.isNarrow ? ways.width : 0)
        height: root.height - wick.height - (root.hasRail && root.isNarrow ? ways.height : 0)

        // One page at a time. (A Loader cannot make bound components in Qt 6.4; a Repeater can.)
        Item {
            anchors.fill: parent
            anchors.bottomMargin: foot.height
            enabled: !root.isCalled

            Repeater { model: root.place === "start" ? 1 : 0; StartPage { anchors.fill: parent; events: root.events; settings: root.settings; isNarrow: root.isNarrow; hasDevices: root.crewDevices.isThere; onJoin: { root.beforeDevices = "start"; root.place = "devices" } onMake: { root.events.dropDemo(); root.editor.prepare(); root.place = "new" } } }
            Repeater { model: root.place === "new" ? 1 : 0; NewPage { anchors.fill: parent; editor: root.editor; isNarrow: root.isNarrow; onBack: root.place = "start" } }
            Repeater { model: root.place === "make" ? 1 : 0; MakePage { anchors.fill: parent; editor: root.editor; isNarrow: root.isNarrow; onLeave: { root.events.refresh(); root.place = root.day.isOpen ? "more" : "start" } } }
            Repeater { model: root.place === "holder" ? 1 : 0; HolderPage { anchors.fill: parent; day: root.day; isNarrow: root.isNarrow; onChoose: board => { root.crewDevices.takeUp(board); root.place = board } } }
            Repeater { model: root.place === "lead" ? 1 : 0; LeadBoard { anchors.fill: parent; day: root.day; isNarrow: root.isNarrow; onMoveBell: root.sheet = "bell"; onAskPromise: root.place = "promise"; onGo: place => root.place = place } }
            Repeater { model: root.place === "promise" ? 1 : 0; PromisePage { anchors.fill: parent; promise: root.promise; day: root.day; isNarrow: root.isNarrow; onBack: root.place = "lead" } }
            Repeater { model: root.place === "crew" ? 1 : 0; CrewPage { anchors.fill: parent; crew: root.crew; isNarrow: root.isNarrow; isReadOnly: root.day.line.isReadOnly; onBack: root.place = "more" } }
            Repeater { model: root.place === "fire" ? 1 : 0; FireBoard { anchors.fill: parent; day: root.day; record: root.record; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "buffet" ? 1 : 0; BuffetBoard { anchors.fill: parent; day: root.day; record: root.record; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "sheet" ? 1 : 0; RunSheetPage { anchors.fill: parent; day: root.day; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "serve" ? 1 : 0; ServePage { anchors.fill: parent; serve: root.serve; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "strike" ? 1 : 0; StrikePage { anchors.fill: parent; day: root.day; strike: root.strike; isNarrow: root.isNarrow; onGo: place => { if (place === "load") root.lists.load.way = "home"; root.place = place } } }
            Repeater { model: root.place === "debrief" ? 1 : 0; DebriefPage { anchors.fill: parent; debrief: root.debrief; day: root.day; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "record" ? 1 : 0; RecordPage { anchors.fill: parent; record: root.record; isNarrow: root.isNarrow } }
            Repeater { model: root.place === "more" ? 1 : 0; MorePage { anchors.fill: parent; isNarrow: root.isNarrow; hasDevices: root.crewDevices.isThere; onLock: root.isLocked = true; onGo: place => { if (place === "make") root.editor.open(); root.beforeDevices = "more"; root.place = place } } }
            Repeater { model: root.place === "devices" ? 1 : 0; CrewDevicesPage { anchors.fill: parent; devices: root.crewDevices; isNarrow: root.isNarrow; onBack: root.place = root.beforeDevices } }
            Repeater { model: root.place === "lists" ? 1 : 0; ListsPage { anchors.fill: parent; isNarrow: root.isNarrow; onGo: place => root.place = place } }
            Repeater { model: root.place === "quantities" ? 1 : 0; QuantitiesPage { anchors.fill: parent; figures: root.lists.figures; isNarrow: root.isNarrow; onBack: root.place = "lists" } }
            Repeater { model: root.place === "load" ? 1 : 0; LoadPage { anchors.fill: parent; load: root.lists.load; isNarrow: root.isNarrow; onBack: root.place = "lists" } }
            Repeater { model: root.place === "kitchen" ? 1 : 0; KitchenPage { anchors.fill: parent; load: root.lists.load; isNarrow: root.isNarrow; onBack: root.place = "lists" } }
            Repeater { model: root.place === "line" ? 1 : 0; LinePage { anchors.fill: parent; line: root.lists.line; isNarrow: root.isNarrow; onBack: root.place = "lists" } }
            Repeater { model: root.place === "paper" ? 1 : 0; PaperPage { anchors.fill: parent; papers: root.lists.papers; isNarrow: root.isNarrow; onBack: root.place = "lists" } }
            Repeater { model: root.place === "cautions" ? 1 : 0; CautionPage { anchors.fill: parent; cautions: root.cautions } }
            Repeater { model: root.place === "parts" ? 1 : 0; PatternPage { anchors.fill: parent; settings: root.settings; isNarrow: root.isNarrow; onBack: root.place = "settings" } }
            Repeater { model: root.place === "settings" ? 1 : 0; SettingsPage { anchors.fill: parent; settings: root.settings; day: root.day; isNarrow: root.isNarrow; onRehearse: root.sheet = "speed"; onLookAtParts: root.place = "parts"; onLeave: { root.events.refresh(); root.place = "start" } } }
        }
        AlarmFlash {
            anchors.fill: parent
            anchors.bottomMargin: foot.height
            visible: root.isCalled
            day: root.day
            isNarrow: root.isNarrow
        }
        Foot {
            id: foot
            anchors.bottom: parent.bottom
            width: parent.width
            day: root.day
            isCalledElsewhere: root.isCalledElsewhere
            hasHeard: !root.hasRail
            hasUndo: root.isNarrow && root.offersUndo
            onAnswer: root.place = root.day.line.callBoard
        }
    }
    UndoBar {
        objectName: "undo"
        z: 1
        x: ways.x + Space.tight
        width: ways.width - 2 * Space.tight
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Space.tight
        visible: !root.isNarrow && root.offersUndo
        enabled: !over.isCovering
        isUpright: true
        noted: root.day.line.undo
        remaining: root.day.undoLeft
        onTakeBack: root.day.undo()
    }
    Overlays {
        id: over
        z: 2
        anchors.fill: parent
        day: root.day
        record: root.record
        lists: root.lists
        place: root.place
        isNarrow: root.isNarrow
        isAtFire: root.isAtFire
        isLocked: root.isLocked && root.hasRail
        sheet: root.sheet
        onClosed: root.sheet = ""
        onUnlocked: root.isLocked = false
        onCalled: board => root.place = board
    }
    IdleShade {
        id: shade
        z: 3
        anchors.fill: parent
        isWanted: root.hasRail && root.settings.dims
        isCalling: root.day.line.callBoard !== ""
    }
}
