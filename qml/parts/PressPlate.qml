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
    readonly property bool isFilled: root.tone === "ember" || root.tone === "water"
    readonly property color ground: root.tone === "ember" ? Theme.ember
        : root.tone === "water" ? Theme.water
        : root.tone === "quiet" ? Theme.none : Theme.plate
    readonly property color ink: root.tone === "ember" ? Theme.emberInk
        : root.tone === "water" ? Theme.waterInk : Theme.ink

    implicitWidth: Math.max(Space.touch, Math.ceil(measure.advanceWidth) + 2 + 2 * Space.margin
                            + (drawing.visible && !root.isStacked ? Space.icon + Space.small : 0))
    implicitHeight: Space.touch
    focusPolicy: Qt.StrongFocus
    scale: root.down ? 0.97 : 1
    Accessible.role: Accessible.Button
    Accessible.name: root.text
    Accessible.onPressAction: root.click()

    background: Rectangle {
        color: root.ground
        radius: Space.corner
        border.width: root.tone === "quiet" ? 0 : Space.line
        border.color: root.isFilled ? root.ground : Theme.edge

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
    contentItem: Item {
        TextMetrics { id: measure; font: word.font; text: root.text }
        Grid {
            anchors.centerIn: parent
            columns: root.isStacked ? 1 : 2
            spacing: root.isStacked ? Space.tight : Space.small
            horizontalItemAlignment: Grid.AlignHCenter
            verticalItemAlignment: Grid.AlignVCenter

            Glyph {
                id: drawing
                visible: root.glyph !== ""
                path: root.glyph
                color: root.ink
            }
            Label {
                id: word
                visible: root.text !== ""
                width: Math.min(Math.ceil(measure.advanceWidth) + 2, root.width - 2 * Space.small
                    - (drawing.visible && !root.isStacked ? Space.icon + Space.small : 0))
                text: root.text
                size: root.size
                isStrong: true
                maximumLineCount: 2
                horizontalAlignment: Text.AlignHCenter
                color: root.ink
                Accessible.ignored: true
            }
        }
    }
    Behavior on scale { NumberAnimation { duration: Motion.quick } }
}
