import QtQuick

/// The colours a theme must name. Semantic names only: `ember` is "fire, now, hurry", `water` is
/// "settled, resting, safe to leave", `ash` is "past or beside the point". State is never told by
/// these alone: shape, word and place say it too.
QtObject {
    required property string name
    /// The least contrast of any text on any ground, WCAG 2.1 ratio; a test computes it.
    required property real leastContrast

    required property color ground
    required property color plate
    required property color edge
    required property color hairline
    required property color ink
    required property color ash
    required property color ember
    required property color emberInk
    required property color emberWash
    required property color water
    required property color waterInk
    required property color waterWash
    required property color scrim
    /// Over everything when nobody touches the device.
    required property color shade
}
