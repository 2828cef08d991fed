pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme

/// A thickness class as a shape: one stud for the thinnest, one more for each thicker.
Row {
    id: root

    required property int count
    property color tint: Theme.ink

    spacing: Space.tight
    visible: root.count > 0
    Accessible.ignored: true

    Repeater {
        model: root.count

        Rectangle { width: Space.small * 1.3; height: width; color: root.tint }
    }
}
