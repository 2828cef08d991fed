pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Every caution, with where it was published; over all of them who decides.
Item {
    id: root

    required property CautionList cautions
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Cautions")

    Rectangle {
        id: head
        z: 1
        width: parent.width
        height: said.height + 2 * Space.gap
        color: Theme.ground

        Label { id: said; x: Space.margin; y: Space.gap; width: parent.width - 2 * Space.margin; text: root.cautions.deference; size: Type.lead; isStrong: true; maximumLineCount: 8 }
    }
    ListView {
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        x: Space.margin
        width: parent.width - 2 * Space.margin
        bottomMargin: Space.wide
        model: root.cautions.rows
        clip: true
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Cautions")

        delegate: CautionLine { width: ListView.view.width }
    }
}
