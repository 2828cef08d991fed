import QtQuick
import QtQuick.Window
import Cinderbell.Measure
import Cinderbell.Theme
import Cinderbell.Models

/// The window: sets the theme, shows one frame.
Window {
    id: root

    required property Settings settings
    required property Day day
    required property Events events
    required property Promise promise
    required property Crew crew
    required property CrewDevicesView crewDevices
    required property FoodRecord record
    required property Editor editor
    required property Lists lists
    required property CautionList cautions
    required property Serve serve
    required property Strike strike
    required property Debrief debrief

    width: 1280
    height: 800
    visible: true
    title: root.day.isOpen ? root.day.line.name : qsTr("Cinderbell")
    color: Theme.ground

    Binding { target: Theme; property: "isDusk"; value: root.settings.isDusk }
    Binding { target: Motion; property: "isReduced"; value: root.settings.isCalm }
    Binding { target: Ruler; property: "textScale"; value: root.settings.textScale }

    Frame {
        anchors.fill: parent
        settings: root.settings
        day: root.day
        events: root.events
        promise: root.promise
        crew: root.crew
        crewDevices: root.crewDevices
        record: root.record
        editor: root.editor
        lists: root.lists
        cautions: root.cautions
        serve: root.serve
        strike: root.strike
        debrief: root.debrief
    }
}
