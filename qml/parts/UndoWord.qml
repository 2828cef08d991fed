import QtQuick
import Cinderbell.Theme

/// Words on the dark ground of the way back.
Label {
    color: Theme.ground
    Accessible.ignored: true
}
