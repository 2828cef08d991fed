pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Notices, said quietly.
Column {
    id: root

    required property Day day
    spacing: Space.small

    Repeater {
        model: root.day.notices

        Remark {
            id: notice
            required property string icon
            required text
            width: root.width
            glyph: notice.icon === "mute" ? Icons.mute : notice.icon === "clock" ? Icons.clock : Icons.caution
        }
    }
}
