pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The van: what rides where, ticked in, and ticked in again on the way home.
Item {
    id: root

    required property Load load
    property bool isNarrow: false
    signal back()

    Flickable {
        anchors.fill: parent
        contentHeight: all.height + 2 * Space.gap
        clip: true
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("Load")

        Column {
            id: all
            x: Space.margin
            y: Space.gap
            width: root.width - 2 * x
            spacing: Space.gap

            PageHead { width: parent.width; title: root.load.leaveBy; note: root.load.progress; onBack: root.back() }
            Choice {
                width: parent.width
                isHeaded: false
                name: qsTr("Which way")
                keys: ["out", "home"]
                words: [qsTr("Into the van"), qsTr("On the way home")]
                chosen: root.load.way
                onChoose: key => root.load.way = key
            }
            Cord { width: parent.width; progress: root.load.done; burning: Theme.water }
            Label { width: parent.width; visible: text !== ""; text: root.load.missing; isStrong: true; maximumLineCount: 99 }
            Repeater {
                model: root.load.groups

                LoadGroup {
                    width: all.width
                    columns: root.isNarrow ? 1 : 2
                    onTick: key => root.load.tick(key)
                    onCount: key => root.load.ask(key)
                }
            }
            Remark { width: parent.width; text: qsTr("Raw food rides apart from ready food, fuel and charcoal apart from all food. Never load warm coals.") }
        }
    }
}
