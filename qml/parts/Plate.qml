import QtQuick
import QtQuick.Shapes
import Cinderbell.Theme

/// The ground something stands on: near-white with a firm edge, a corner cut away while its task
/// runs. Decoration.
Item {
    id: root

    property color fill: Theme.plate
    property color edge: Theme.edge
    property int edgeWidth: Space.line
    property bool isNotched: false
    readonly property real cut: root.isNotched ? Space.notch : 0
    readonly property real inset: root.edgeWidth / 2

    Accessible.ignored: true

    Rectangle {
        anchors.fill: parent
        visible: !root.isNotched
        color: root.fill
        radius: Space.corner
        border.width: root.edgeWidth
        border.color: root.edge
    }
    Shape {
        anchors.fill: parent
        visible: root.isNotched

        ShapePath {
            fillColor: root.fill
            strokeColor: root.edge
            strokeWidth: root.edgeWidth
            joinStyle: ShapePath.RoundJoin
            startX: root.inset
            startY: root.inset

            PathLine { x: root.width - root.inset - root.cut; y: root.inset }
            PathLine { x: root.width - root.inset; y: root.inset + root.cut }
            PathLine { x: root.width - root.inset; y: root.height - root.inset }
            PathLine { x: root.inset; y: root.height - root.inset }
            PathLine { x: root.inset; y: root.inset }
        }
    }
}
