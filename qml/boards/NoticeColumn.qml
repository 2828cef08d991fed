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
            required property string icon
            required text
            width: root.width
            glyph: icon === "mute" ? Icons.mute : icon === "clock" ? Icons.clock : Icons.caution
        }
    }
}
