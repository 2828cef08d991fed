import Cinderbell.Theme

/// The state of a task as a shape, readable without colour:
/// waiting an open ring; ready a ring with a core; running a solid bar with a cut corner; over a
/// filled lozenge (now!); done a tick; skipped a cross; late a lozenge with a gap.
Glyph {
    id: root

    required property string mark
    property bool isLate: false

    size: Space.mark
    color: root.isLate || root.mark === "over" || root.mark === "late" ? Theme.ember
         : root.mark === "running" ? Theme.water
         : root.mark === "done" || root.mark === "skipped" || root.mark === "waiting" ? Theme.ash
         : Theme.ink
    path: root.mark === "waiting" ? Marks.waiting
        : root.mark === "ready" ? Marks.ready
        : root.mark === "running" ? Marks.running
        : root.mark === "over" ? Marks.over
        : root.mark === "late" ? Marks.late
        : root.mark === "skipped" ? Icons.cross : Icons.tick
}
