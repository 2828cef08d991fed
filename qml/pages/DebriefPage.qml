pragma ComponentBehavior: Bound

import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts
import Cinderbell.Models

/// The day looked back upon: planned against actual, and what goes into the next event.
Flickable {
    id: root

    required property Debrief debrief
    required property Day day
    property bool isNarrow: false
    readonly property real half: root.isNarrow ? root.width - 2 * Space.margin : Math.floor((root.width - 3 * Space.margin) / 2)

    contentHeight: Math.max(lessons.y + lessons.height, past.y + past.height) + Space.wide
    clip: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Debrief")
    Component.onCompleted: root.debrief.look()
    // What is taken back elsewhere was taken back here too.
    Connections {
        target: root.day
        function onTouched() { root.debrief.look() }
    }

    Column {
        id: past
        x: Space.margin
        // On a phone what can be answered comes before the long picture.
        y: root.isNarrow ? lessons.y + lessons.height + Space.wide : Space.margin
        width: root.half
        spacing: Space.small

        Heading { width: parent.width; text: qsTr("Planned and actual") }
        Label { width: parent.width; text: root.debrief.summary; color: Theme.ash; maximumLineCount: 4 }
        ReviewKey { width: parent.width; visible: root.debrief.tasks.count > 0 }
        Repeater {
            model: root.debrief.tasks

            ReviewPlate {
                id: task
                width: past.width
                axis: root.debrief.axis
                canMark: root.debrief.canAnswer
                onMarked: root.debrief.mark(task.key)
            }
        }
        Label { width: parent.width; visible: text !== ""; text: root.debrief.pans; maximumLineCount: 12 }
    }
    Column {
        id: lessons
        x: root.isNarrow ? Space.margin : root.half + 2 * Space.margin
        y: Space.margin
        width: root.half
        spacing: Space.gap

        Heading { width: parent.width; text: qsTr("For the next event made from this one") }
        Label { width: parent.width; text: root.debrief.basis; color: Theme.ash; maximumLineCount: 8 }
        Remark { width: parent.width; text: root.debrief.refusal; tint: Theme.ember }
        Repeater {
            model: root.debrief.lessons

            LessonPlate {
                id: lesson
                width: lessons.width
                canAnswer: root.debrief.canAnswer
                onAccept: root.debrief.accept(lesson.key)
                onIgnore: root.debrief.ignore(lesson.key)
            }
        }
    }
}
