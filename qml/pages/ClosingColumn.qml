pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The end of the record: who signs, whether it is as it was written, and the limits it was held to.
Flickable {
    id: root

    required property FoodRecord record
    readonly property FoodClosing closing: root.record.closing
    property bool isNarrow: false
    contentHeight: all.height + 2 * Space.margin
    clip: true

    Column {
        id: all
        x: Space.margin
        width: root.width - 2 * Space.margin
        spacing: Space.small

        Heading { width: parent.width; text: qsTr("Signature of the person in charge") }
        Label { width: parent.width; text: root.closing.standing; isStrong: true; maximumLineCount: 6 }
        Flow {
            width: parent.width
            spacing: Space.apart
            visible: root.closing.maySign

            Repeater {
                model: root.closing.people

                HoldPlate {
                    id: person
                    required property string modelData
                    text: qsTr("Hold: sign as %1").arg(person.modelData)
                    onHeld: root.closing.sign(person.modelData)
                }
            }
        }
        Remark { width: parent.width; text: root.closing.refusal; tint: Theme.ember }
        PressPlate { width: parent.width; size: Type.body; text: qsTr("Verify that no entry was changed"); onClicked: root.closing.verify() }
        Remark { width: parent.width; text: root.closing.verdict; glyph: root.closing.isBroken ? Icons.caution : Icons.tick; tint: root.closing.isBroken ? Theme.ember : Theme.ink }
        Heading { width: parent.width; text: qsTr("Limits in force; touch one that is stricter here"); note: root.closing.authority }
        Repeater {
            model: root.closing.limits

            LimitPlate { id: limit; width: all.width; onClicked: root.record.entry.makeStricter(limit.key) }
        }
        Remark { width: parent.width; text: root.record.tally.whoDecides }
    }
}
