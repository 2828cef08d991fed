import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// A button: a plate with a drawing and a word. `tone` is "plain", "ember" (do it now), "water"
/// (settles something) or "quiet" (no plate of its own).
T.AbstractButton {
    id: root

    property string tone: "plain"
    property string glyph: ""
    property int size: Type.lead
    property bool isStacked: false
    property bool isLeading: false
    /// Nothing to be done with it now: an outline, its word as readable as ever.
    property bool isOff: false
    readonly property TextMetrics extent: TextMetrics {
        font.family: Type.strongFamily
        font.weight: Type.strong
        font.pixelSize: root.size
        text: root.text
    }
    readonly property bool isFilled: !root.isOff && (root.tone === "ember" || root.tone === "water")
    readonly property color ground: root.isOff || root.tone === "quiet" ? Theme.none
        : root.tone === "ember" ? Theme.ember
        : root.tone === "water" ? Theme.water : Theme.plate
    readonly property color ink: root.isOff ? Theme.ash
        : root.tone === "ember" ? Theme.emberInk
        : root.tone === "water" ? Theme.waterInk : Theme.ink

    enabled: !root.isOff

    implicitWidth: Math.max(Space.touch, Math.ceil(root.extent.advanceWidth) + 2 + 2 * Space.margin
                            + (root.glyph !== "" && !root.isStacked ? Space.icon * 1.25 + Space.gap : 0))
    implicitHeight: Space.touch
    scale: root.down ? 0.97 : 1
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.clicked()

    background: Rectangle {
        color: root.ground
        radius: Space.corner
        border.width: root.tone === "quiet" ? 0 : Space.line
        border.color: root.isOff ? Theme.hairline : root.isFilled ? root.ground : Theme.edge

        Rectangle {
            anchors.fill: parent
            anchors.margins: -Space.tight
            visible: root.visualFocus
            color: Theme.none
            radius: Space.corner
            border.width: Space.line
            border.color: Theme.water
        }
    }
    contentItem: PressFace {
        text: root.text
        glyph: root.glyph
        ink: root.ink
        size: root.size
        extent: root.extent.advanceWidth
        isStacked: root.isStacked
        isLeading: root.isLeading
    }
    Behavior on scale { NumberAnimation { duration: Motion.quick } }
}
