import QtQuick
import Cinderbell.Theme

/// What is left: digits, and beside them small what they count when that is not seconds.
Row {
    id: root

    property alias figure: digits.text
    property alias unit: word.text
    property alias size: digits.size
    property alias color: digits.color

    spacing: Math.round(digits.size * 0.12)

    Figure { id: digits; Accessible.ignored: true }
    Figure {
        id: word
        visible: text !== ""
        anchors.baseline: digits.baseline
        size: Math.max(Type.small, Math.round(digits.size * 0.42))
        color: digits.color
        Accessible.ignored: true
    }
}
