pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// The keys of a keypad, wide enough for a glove. Says what was touched and keeps nothing.
Grid {
    id: root

    property bool takesPoint: false
    property int keyHeight: Space.touch
    signal pressed(string key)
    signal erased()

    columns: 3
    spacing: Space.small

    Repeater {
        model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", root.takesPoint ? "." : "", "0", "<"]

        KeyPlate {
            required property string modelData

            symbol: modelData
            width: (root.width - (root.columns - 1) * Space.small) / root.columns
            height: root.keyHeight
            onClicked: symbol === "<" ? root.erased() : root.pressed(symbol)
        }
    }
}
