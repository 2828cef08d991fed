pragma Singleton
import QtQml

/// Movement is short, answers a touch, and never runs by itself. With reduced motion there is none.
QtObject {
    property bool isReduced: false
    readonly property int quick: isReduced ? 0 : 90
    readonly property int calm: isReduced ? 0 : 180
    /// How long a destructive button is held.
    readonly property int hold: 700
}
