pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The hotel pans as they fill, piece by piece.
Column {
    id: root

    required property RowList pans

    spacing: Space.small
    visible: root.pans.count > 0

    Heading { width: parent.width; text: qsTr("Pans") }
    Repeater {
        model: root.pans

        Column {
            id: pan
            required property string title
            required property string note
            required property double share
            width: root.width
            spacing: Space.tight
            Accessible.role: Accessible.ListItem
            Accessible.name: pan.title + ", " + pan.note

            Label { width: parent.width; text: pan.title; isStrong: true; Accessible.ignored: true }
            // A pan from the side: its rim, and how far it is full.
            Item {
                width: parent.width
                height: Space.icon

                Rectangle { width: parent.width; height: Space.line; color: Theme.edge }
                Rectangle {
                    x: Space.small
                    width: parent.width - 2 * Space.small
                    height: parent.height
                    color: Theme.plate
                    border.width: Space.line
                    border.color: Theme.edge

                    Rectangle {
                        x: Space.line
                        y: Space.line
                        width: (parent.width - 2 * Space.line) * pan.share
                        height: parent.height - 2 * Space.line
                        color: Theme.water
                    }
                }
            }
            Label { width: parent.width; text: pan.note; Accessible.ignored: true }
        }
    }
}
