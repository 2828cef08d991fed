import QtQuick
import QtQuick.Shapes
import Cinderbell.Theme

/// One of our drawings, in one colour. Decoration: the words beside it say the same.
Item {
    id: root

    required property string path
    property color color: Theme.ink
    property int size: Space.icon

    implicitWidth: root.size
    implicitHeight: root.size
    Accessible.ignored: true

    Shape {
        width: 24
        height: 24
        scale: root.size / 24
        transformOrigin: Item.TopLeft

        ShapePath {
            strokeWidth: -1
            fillColor: root.color
            fillRule: ShapePath.OddEvenFill

            PathSvg { path: root.path }
        }
    }
}
