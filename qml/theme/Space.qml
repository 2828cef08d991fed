pragma Singleton
import QtQml
import Cinderbell.Measure

/// Distances and touch sizes, in millimetres of the real screen.
QtObject {
    readonly property real mm: Ruler.pixelsPerMm

    /// Least side of any control: 15 mm, a gloved thumb.
    readonly property int touch: Math.ceil(15 * mm)
    /// Least height of what is hit in a hurry: turn, pull, tick.
    readonly property int hurried: Math.ceil(25 * mm)
    /// Between neighbours that must not be mistaken for each other.
    readonly property int apart: Math.ceil(8 * mm)

    readonly property int hair: Math.max(1, Math.round(0.18 * mm))
    readonly property int line: Math.max(2, Math.round(0.36 * mm))
    readonly property int tight: Math.round(0.8 * mm)
    readonly property int small: Math.round(1.5 * mm)
    readonly property int gap: Math.round(2.4 * mm)
    readonly property int margin: Math.round(3.4 * mm)
    readonly property int wide: Math.round(5.5 * mm)

    /// Corner of a plate, and the larger notch cut from one that runs.
    readonly property int corner: Math.round(1.2 * mm)
    readonly property int notch: Math.round(4.2 * mm)
    readonly property int mark: Math.round(4.4 * mm)
    readonly property int icon: Math.round(6 * mm)

    readonly property int wick: Math.round(15 * mm)
    readonly property int rail: Math.round(18 * mm)
    /// A plate is not wider than a glance.
    readonly property int column: Math.round(92 * mm)
    /// The run-sheet chart: one minute across, one row down.
    readonly property real minute: 1.55 * mm
    readonly property int lane: Math.round(8.4 * mm)
}
