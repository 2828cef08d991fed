import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// Temperature over time, with what it shows written above.
Column {
    id: root

    required property chartFace chart
    property real tall: Space.column / 2

    spacing: Space.tight
    visible: !root.chart.isEmpty

    Label { width: parent.width; text: root.chart.name; size: Type.small; color: Theme.ash; maximumLineCount: 3; Accessible.ignored: true }
    ChartPicture {
        width: parent.width
        height: root.tall
        chart: root.chart
        ink: Theme.ink
        ash: Theme.ash
        hairline: Theme.hairline
        plate: Theme.plate
        ember: Theme.ember
        water: Theme.water
        waterWash: Theme.waterWash
        line: Space.line
        font.family: Type.strongFamily
        font.weight: Type.strong
        font.pixelSize: Type.least
        Accessible.role: Accessible.Graphic
        Accessible.name: root.chart.name
    }
}
