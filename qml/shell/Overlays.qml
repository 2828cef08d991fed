pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Boards
import Cinderbell.Pages
import Cinderbell.Models

/// What lies over every board: the sheets, and above them the lock. While any does, nothing behind
/// it is touched or tabbed to.
Item {
    id: root

    required property Day day
    required property FoodRecord record
    required property bool isNarrow
    required property bool isAtFire
    required property bool isLocked
    /// Of the boards: "bell", "speed" or none.
    required property string sheet
    readonly property string ofFire: root.isAtFire ? root.day.fire.sheet : ""
    readonly property bool asksRecord: root.record.entry.ask.step !== ""
    readonly property bool isCovering: root.isLocked || root.sheet !== "" || root.ofFire !== "" || root.asksRecord
    signal closed()
    signal unlocked()
    signal called(string board)

    Item {
        anchors.fill: parent
        enabled: !root.isLocked

        Repeater { model: root.ofFire === "piece" ? 1 : 0; PieceSheet { anchors.fill: parent; day: root.day } }
        Repeater { model: root.ofFire === "several" ? 1 : 0; SeveralSheet { anchors.fill: parent; day: root.day } }
        Repeater { model: root.ofFire !== "" && root.ofFire !== "piece" && root.ofFire !== "several" ? 1 : 0; FirePadSheet { anchors.fill: parent; day: root.day; onCalled: board => root.called(board) } }
        Repeater { model: root.sheet === "bell" ? 1 : 0; MoveBellSheet { anchors.fill: parent; day: root.day; onClosed: root.closed(); onCalled: board => { root.closed(); root.called(board) } } }
        Repeater { model: root.sheet === "speed" ? 1 : 0; SpeedSheet { anchors.fill: parent; day: root.day; onClosed: root.closed(); onCalled: board => { root.closed(); root.called(board) } } }
        Repeater { model: root.asksRecord ? 1 : 0; FoodSheet { anchors.fill: parent; entry: root.record.entry; day: root.day; isNarrow: root.isNarrow; onCalled: board => root.called(board) } }
    }
    Repeater { model: root.isLocked ? 1 : 0; PocketLock { anchors.fill: parent; day: root.day; isNarrow: root.isNarrow; onOpened: root.unlocked() } }
}
