import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// Which bar is which.
Row {
    spacing: Space.gap

    Rectangle { anchors.verticalCenter: framed.verticalCenter; width: Space.icon * 2; height: Space.gap * 2; color: "transparent"; border.width: Space.line; border.color: Theme.ash }
    Label { id: framed; width: implicitWidth; text: qsTr("planned"); size: Type.small }
    Rectangle { anchors.verticalCenter: framed.verticalCenter; width: Space.icon * 2; height: Space.gap; color: Theme.water }
    Label { width: implicitWidth; text: qsTr("actual"); size: Type.small }
}
