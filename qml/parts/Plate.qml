import QtQuick
import Cinderbell.Measure
import Cinderbell.Theme

/// The ground something stands on: near-white with a firm edge, a corner cut away while its task
/// runs. Decoration.
Rectangle {
    id: root

    property color fill: Theme.plate
    property color edge: Theme.edge
    property int edgeWidth: Space.line
    property bool isNotched: false
    /// What shows through the cut.
    property color behind: Theme.ground

    color: root.fill
    radius: Space.corner
    border.width: root.edgeWidth
    border.color: root.edge
    Accessible.ignored: true

    Rectangle {
        visible: root.isNotched
        anchors.right: parent.right
        width: Space.notch
        height: Space.notch
        color: root.fill
    }
    Drawing {
        visible: root.isNotched
        anchors.right: parent.right
        width: Space.notch
        height: Space.notch
        color: root.behind
        path: "M0 0 L24 0 L24 24 Z"
    }
    Drawing {
        visible: root.isNotched
        anchors.right: parent.right
        width: Space.notch
        height: Space.notch
        color: root.edge
        path: "M0 0 L2.6 0 L24 21.4 L24 24 L22.2 24 L0 1.8 Z"
    }
}
