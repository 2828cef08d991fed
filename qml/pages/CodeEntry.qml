import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The code of another device, typed: its groups as they fill, what is wrong with them, the keys.
Item {
    id: root

    required property CrewDevicesView devices
    property bool isNarrow: false

    implicitHeight: Math.max(words.height, keys.y + keys.height)

    Column {
        id: words
        width: root.isNarrow ? parent.width : keys.x - Space.wide
        spacing: Space.gap

        CodeGroups { width: parent.width; name: qsTr("Code"); groups: root.devices.typed; current: root.devices.group; isWrong: root.devices.problem !== "" }
        // A phone says it at the head of the page.
        Label { width: parent.width; visible: text !== "" && !root.isNarrow; text: root.devices.problem; isStrong: true; maximumLineCount: 6 }
    }
    DigitKeys {
        id: keys
        x: root.isNarrow ? 0 : parent.width - width
        y: root.isNarrow ? words.height + Space.small : 0
        width: root.isNarrow ? parent.width : Space.column
        onPressed: key => root.devices.press(key)
        onErased: root.devices.erase()
    }
}
