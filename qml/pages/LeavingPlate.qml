import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One thing that must be true before the van leaves, and the way to where it is done.
Item {
    id: root

    required property string key
    required property string title
    required property string standing
    required property string mark
    required property string place
    required property string verb
    property bool isNarrow: false
    signal go()
    readonly property bool isDone: root.mark === "done"
    readonly property bool hasWay: root.place !== ""

    implicitHeight: (root.isNarrow && root.hasWay ? words.height + Space.gap + way.height
                                                  : Math.max(words.height, root.hasWay ? way.height : 0)) + 2 * Space.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title + ", " + root.standing

    Plate { anchors.fill: parent; edge: root.isDone ? Theme.hairline : Theme.edge; fill: root.isDone ? Theme.ground : Theme.plate }
    StateMark { id: shape; x: Space.margin; y: words.y + Space.tight; mark: root.mark }
    Column {
        id: words
        anchors.left: shape.right
        anchors.leftMargin: Space.gap
        anchors.right: root.hasWay && !root.isNarrow ? way.left : parent.right
        anchors.rightMargin: Space.gap
        y: root.isNarrow ? Space.gap : Math.round((root.height - height) / 2)
        spacing: Space.tight

        Label { width: parent.width; text: root.title; size: Type.lead; isStrong: true }
        Label { width: parent.width; text: root.standing; color: root.isDone ? Theme.ash : Theme.ink; maximumLineCount: 8 }
    }
    PressPlate {
        id: way
        anchors.right: parent.right
        anchors.rightMargin: Space.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.isNarrow ? Space.gap : Math.round((root.height - height) / 2)
        visible: root.hasWay
        size: Type.body
        text: root.verb
        onClicked: root.go()
    }
}
