pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What the fire will do with one batch: its target with the published minimum beside it, its
/// classes, and what has to be told before there is a forecast.
Item {
    id: root

    required property string key
    required property string title
    required property string target
    required property string minimum
    required property string source
    required property string warning
    required property string spread
    required property string missing
    required property string start
    required property bool canTellStart
    required property bool canPull
    required property RowList classes
    required property int index
    required property Fire fire

    implicitHeight: words.height + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title

    Plate { anchors.fill: parent; edgeWidth: Space.hair }
    Column {
        id: words
        x: Space.margin
        y: Space.gap
        width: parent.width - 2 * Space.margin
        spacing: Space.small

        Label { width: parent.width; text: root.title; isStrong: true; maximumLineCount: 5 }
        TargetLines { width: parent.width; target: root.target; minimum: root.minimum; source: root.source; warning: root.warning }
        Repeater {
            model: root.classes

            Column {
                id: one
                required property int studs
                required property string name
                required property string onGrate
                required property string time
                width: words.width
                spacing: Space.tight

                Row {
                    width: parent.width
                    spacing: Space.small

                    Studs { id: shape; count: one.studs; anchors.verticalCenter: parent.verticalCenter }
                    Label { width: parent.width - (shape.visible ? shape.width + Space.small : 0); text: one.name !== "" ? one.name + " · " + one.onGrate : one.onGrate; maximumLineCount: 4 }
                }
                Label { width: parent.width; visible: one.time !== ""; text: one.time; size: Type.small; color: Theme.ash; maximumLineCount: 4 }
            }
        }
        Label { width: parent.width; visible: text !== ""; text: root.spread; size: Type.small; color: Theme.ash; maximumLineCount: 5 }
        Label { width: parent.width; visible: text !== ""; text: root.start; size: Type.small; color: Theme.ash }
        Remark { width: parent.width; text: root.missing; glyph: Icons.flame }
        PressPlate {
            width: parent.width
            visible: root.canTellStart
            size: Type.body
            text: qsTr("How warm was it inside?")
            onClicked: root.fire.askStart(root.key)
        }
        PressPlate {
            width: parent.width
            visible: root.canPull
            glyph: Icons.pull
            size: Type.body
            text: qsTr("Pull several")
            onClicked: root.fire.openSeveral(root.key)
        }
    }
}
