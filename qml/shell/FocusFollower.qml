import QtQuick
import QtQuick.Templates as T
import Cinderbell.Theme

/// Brings into view what the Tab key, or a switch, has come to: whatever scrolls around it scrolls.
Item {
    id: root

    readonly property Item focused: Window.activeFocusItem

    onFocusedChanged: {
        // A button has the focus of a finger too; nothing needs to scroll for that.
        const control = root.focused as T.Control
        if (!root.focused || !root.focused.activeFocusOnTab || control && !control.visualFocus) return
        for (let around = root.focused.parent; around; around = around.parent) {
            const scroller = around as Flickable
            if (scroller) root.reveal(scroller)
        }
    }

    function reveal(scroller: Flickable) {
        const place = root.focused.mapToItem(scroller.contentItem, 0, 0)
        scroller.contentY = root.kept(place.y, root.focused.height, scroller.contentY, scroller.height, scroller.contentHeight)
        scroller.contentX = root.kept(place.x, root.focused.width, scroller.contentX, scroller.width, scroller.contentWidth)
    }
    /// Where a scroller of this size stands so that what begins at `at` is seen, moved no further
    /// than needed.
    function kept(at: real, size: real, now: real, room: real, whole: real): real {
        const most = Math.max(0, whole - room)
        if (at - Space.gap < now) return Math.max(0, at - Space.gap)
        return Math.min(most, Math.max(now, at + size + Space.gap - room))
    }
}
