import QtQuick
import Cinderbell.Parts
import Cinderbell.Models

/// A keypad on the number that is being typed.
Keypad {
    id: root

    required property NumberEntry entry

    text: root.entry.text
    unitWord: root.entry.unitWord
    units: root.entry.units
    unit: root.entry.unit
    problem: root.entry.problem
    takesPoint: root.entry.takesPoint
    takesSign: root.entry.takesSign
    onPressed: key => root.entry.press(key)
    onErased: root.entry.erase()
    onUnitChosen: unit => root.entry.useUnit(unit)
}
