import QtQuick
import Cinderbell.Measure
import Cinderbell.Theme

/// One of our drawings, in one colour. Decoration: the words beside it say the same.
Drawing {
    id: root

    property int size: Space.icon

    color: Theme.ink
    implicitWidth: root.size
    implicitHeight: root.size
    width: root.size
    height: root.size
    Accessible.ignored: true
}
