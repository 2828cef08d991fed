import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The core of a piece over time, and what its readings count by the published roast table.
Column {
    id: root

    required property pieceFace piece
    property real tall: Space.mm * 46

    spacing: Space.small

    TimeChart { width: parent.width; chart: root.piece.core; tall: root.tall }
    Label { width: parent.width; visible: text !== ""; text: root.piece.turning; maximumLineCount: 6 }
    Label { width: parent.width; visible: text !== ""; text: root.piece.roast; maximumLineCount: 6 }
    Remark { width: parent.width; text: root.piece.roastWarning; lines: 8 }
}
