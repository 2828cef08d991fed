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
    required property Lists lists
    required property string place
    required property bool isNarrow
    required property bool isAtFire
    required property bool isLocked
    /// Of the boards: "bell", "speed" or none.
    required property string sheet
    readonly property string ofFire: root.isAtFire ? root.day.fire.sheet : ""
    readonly property bool asksRecord: root.record.entry.ask.step !== ""
    readonly property Figures figures: root.lists.figures
    readonly property Load load: root.lists.load
    readonly property bool asksFigure: root.place === "quantities" && root.figures.asked !== ""
    readonly property bool asksCount: root.place === "load" && root.load.asked !== ""
    readonly property bool isCovering: root.isLocked || root.sheet !== "" || root.ofFire !== "" || root.asksRecord || root.asksFigure || root.asksCount
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
        Repeater { model: root.asksFigure ? 1 : 0; NumberSheet { anchors.fill: parent; day: root.day; title: root.figures.askedName; entry: root.figures.entry; onClosed: root.figures.dropAsked(); onKeep: root.figures.keep(); onCalled: board => root.called(board) } }
        Repeater { model: root.asksCount ? 1 : 0; NumberSheet { anchors.fill: parent; day: root.day; title: root.load.asked; entry: root.load.entry; onClosed: root.load.dropAsked(); onKeep: root.load.keep(); onCalled: board => root.called(board) } }
    }
    Repeater { model: root.isLocked ? 1 : 0; PocketLock { anchors.fill: parent; day: root.day; isNarrow: root.isNarrow; onOpened: root.unlocked() } }
}
