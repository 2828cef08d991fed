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

        Column {
            id: notice
            required property string icon
            required property string text
            required property string verb
            width: root.width
            spacing: Space.small

            Remark {
                width: parent.width
                text: notice.text
                tint: notice.verb !== "" ? Theme.ember : Theme.ash
                glyph: notice.icon === "mute" ? Icons.mute : notice.icon === "devices" ? Icons.devices : notice.icon === "clock" ? Icons.clock : Icons.caution
            }
            PressPlate { visible: notice.verb !== ""; width: parent.width; size: Type.body; text: notice.verb; onClicked: root.day.followClock() }
        }
    }
}
