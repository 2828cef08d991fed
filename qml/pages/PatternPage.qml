pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Boards
import Cinderbell.Models

/// Every part in every state, in the light and at the size of this device: whoever changes a part
/// looks here, and whoever tries the app in the sun can see whether it holds.
Flickable {
    id: root

    required property Settings settings
    property bool isNarrow: false
    signal back()
    contentHeight: all.y + all.height + Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Pattern book")

    NumberEntry {
        id: sample
        Component.onCompleted: begin(NumberEntry.Temperature, -30, 300, root.settings.isFahrenheit)
    }
    Flow {
        id: all
        x: Space.margin
        y: Space.gap
        width: root.width - 2 * Space.margin
        spacing: Space.wide
        readonly property real share: root.isNarrow ? width : Math.floor((width - Space.wide) / 2)

        Flow {
            width: all.width
            spacing: Space.gap

            PressPlate { id: out; glyph: Icons.back; text: qsTr("Settings"); onClicked: root.back() }
            Label {
                width: root.isNarrow ? all.width : all.width - out.width - Space.gap
                height: root.isNarrow ? Space.touch : out.height
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Pattern book")
                size: Type.title
                isStrong: true
            }
        }
        Column {
            width: all.share
            spacing: Space.gap

            Heading { width: parent.width; text: qsTr("Keypad"); note: qsTr("try it") }
            NumberPad { width: parent.width; name: qsTr("Temperature"); entry: sample }
        }
        PatternType { width: all.share }
        PatternColours { width: all.share }
        PatternTouches { width: all.share }
    }
}
