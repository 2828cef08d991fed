pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// What a new event begins with: a template or a past event.
Flickable {
    id: root

    required property Editor editor
    property bool isNarrow: false
    signal back()
    contentHeight: all.height + 2 * Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("New event")

    Column {
        id: all
        x: Math.max(Space.margin, (root.width - Space.column * 1.6) / 2)
        y: Space.wide
        width: root.width - 2 * x
        spacing: Space.gap

        Row {
            width: parent.width
            spacing: Space.margin

            PressPlate { id: way; glyph: Icons.back; Accessible.name: qsTr("Back to all events"); onClicked: root.back() }
            Label { anchors.verticalCenter: way.verticalCenter; width: parent.width - way.width - Space.margin; text: qsTr("New event"); size: Type.title; isStrong: true }
        }
        Label { width: parent.width; text: qsTr("What is it like? Everything can be changed afterwards."); color: Theme.ash }
        Remark { width: parent.width; text: root.editor.refusal; tint: Theme.ember }
        Repeater {
            model: root.editor.beginnings

            PartPlate {
                id: one
                required property string key
                width: all.width
                onClicked: root.editor.begin(one.key)
            }
        }
    }
}
