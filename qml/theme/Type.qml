pragma Singleton
import QtQuick
import Cinderbell.Measure

/// A small scale of type, in millimetres of font height so that it reads alike on every screen.
/// Lato in two weights; its digits are all of one width by default (Qt 6.4 cannot switch that on).
QtObject {
    id: root

    readonly property string family: medium.name
    readonly property string strongFamily: heavy.name
    readonly property int plain: Font.Medium
    readonly property int strong: Font.ExtraBold
    readonly property real mm: Ruler.pixelsPerMm
    readonly property real words: Ruler.pixelsPerMm * Ruler.textScale

    /// Where there is no room to grow: the size of `small` whatever size is chosen.
    readonly property int least: Math.round(2.55 * mm)
    readonly property int small: Math.round(2.55 * words)
    readonly property int body: Math.round(3.1 * words)
    readonly property int lead: Math.round(3.9 * words)
    readonly property int title: Math.round(5.0 * words)

    // Figures, by font height; a digit is 0.72 of it.
    readonly property int figure: Math.round(6.4 * mm)
    readonly property int countdown: Math.round(11 * mm)
    /// The bell on a narrow screen: digits 17.7 mm high, 20 minutes of arc at 3 m
    /// (3000 mm x tan(20/60 deg) = 17.5 mm).
    readonly property int bell: Math.round(24.6 * mm)
    /// The bell where there is room: digits 26 mm high.
    readonly property int bellWide: Math.round(36.5 * mm)

    readonly property FontLoader medium: FontLoader { source: "qrc:/fonts/Lato-Medium.ttf" }
    readonly property FontLoader heavy: FontLoader { source: "qrc:/fonts/Lato-Heavy.ttf" }
}
