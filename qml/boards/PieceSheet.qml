import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// One piece: when to pull it, what is known of it, and everything that can be done with it.
Sheet {
    id: root

    required property Day day
    readonly property Fire fire: root.day.fire
    readonly property pieceFace piece: root.fire.piece
    readonly property bool isNarrow: root.width < root.height
    title: root.piece.title
    span: Space.column * 1.7
    hasWayOut: true
    onClosed: root.fire.close()

    Grid {
        id: parts
        width: parent.width
        columns: root.isNarrow ? 1 : 2
        spacing: Space.margin
        readonly property real share: root.isNarrow ? width : (width - spacing) / 2

        Column {
            width: parts.share
            spacing: Space.small

            Label { width: parent.width; text: root.piece.dish; color: Theme.ash; maximumLineCount: 4 }
            Row {
                width: parent.width
                spacing: Space.small

                StateMark { id: shape; mark: root.piece.mark; anchors.verticalCenter: said.verticalCenter }
                Studs { id: studs; count: root.piece.studs; anchors.verticalCenter: said.verticalCenter }
                Label { id: said; width: parent.width - x; text: root.piece.kind !== "" ? root.piece.state + " · " + root.piece.kind : root.piece.state; isStrong: true; maximumLineCount: 4 }
            }
            Label { width: parent.width; visible: text !== ""; text: root.piece.time; size: Type.title; isStrong: true; color: root.piece.isDue ? Theme.ember : Theme.ink }
            Label { width: parent.width; visible: text !== ""; text: root.piece.band; maximumLineCount: 4 }
            TargetLines { width: parent.width; target: root.piece.target; minimum: root.piece.minimum; source: root.piece.source; warning: root.piece.warning }
            Label { width: parent.width; visible: text !== ""; text: root.piece.peak; maximumLineCount: 4 }
            Label { width: parent.width; visible: text !== ""; text: root.piece.reading; isStrong: true; maximumLineCount: 4 }
            Remark { width: parent.width; text: root.piece.missing; glyph: Icons.flame }
            Remark { width: parent.width; text: root.day.refusal; tint: Theme.ember }
            PieceCurve { width: parent.width; visible: !root.isNarrow; piece: root.piece; tall: Space.mm * 30 }
        }
        PieceTouches { width: parts.share; day: root.day }
        // On a phone what is touched comes before what is looked at.
        PieceCurve { width: parts.share; visible: root.isNarrow; piece: root.piece }
    }
}
