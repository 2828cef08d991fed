import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// One line of words, typed on the keyboard of the device.
T.TextField {
    implicitHeight: Space.touch
    leftPadding: Space.margin
    rightPadding: Space.margin
    verticalAlignment: Text.AlignVCenter
    font.family: Type.family
    font.pixelSize: Type.lead
    color: Theme.ink
    selectionColor: Theme.water
    selectedTextColor: Theme.waterInk
    maximumLength: 200
    background: Plate { edge: Theme.water }
}
