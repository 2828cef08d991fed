import QtQuick
import Cinderbell.Theme
import Cinderbell.Parts

/// One field of the editor, whatever its kind, and beside it what is wrong with it.
Column {
    id: root

    required property string key
    required property string kind
    required property string name
    required property string value
    required property string note
    required property string problem
    required property string verb
    required property list<string> keys
    required property list<string> words
    required property list<string> chosen
    required property int numberKind
    required property real number
    required property real least
    required property real most
    required property bool canLess
    required property bool canMore
    required property bool isRemoval
    property bool isNarrow: false
    /// Nothing of it can be changed now; what only leads to another page still does.
    property bool isOff: false
    signal step(int by)
    signal askNumber()
    signal askText()
    signal choose(string key)
    signal act()

    spacing: Space.tight
    topPadding: root.isRemoval ? Space.apart : 0
    Accessible.role: Accessible.ListItem
    Accessible.name: root.name

    Heading { width: parent.width; visible: root.kind === "heading"; text: root.name }
    Remark { width: parent.width; visible: root.kind === "note" && root.name !== ""; text: root.name }
    MakeNumber {
        width: parent.width
        visible: root.kind === "number"
        isNarrow: root.isNarrow
        isOff: root.isOff
        name: root.name
        value: root.value
        canLess: root.canLess
        canMore: root.canMore
        isFaulty: root.problem !== ""
        onStep: by => root.step(by)
        onAsk: root.askNumber()
    }
    MakeLine {
        width: parent.width
        visible: root.kind === "text" || root.kind === "act"
        isNarrow: root.isNarrow
        isOff: root.isOff
        kind: root.kind
        name: root.name
        value: root.value
        note: root.kind === "act" ? root.note : ""
        verb: root.verb
        isRemoval: root.isRemoval
        isFaulty: root.problem !== ""
        onTouched: root.kind === "text" ? root.askText() : root.act()
    }
    MakeOptions {
        width: parent.width
        visible: root.kind === "choice" || root.kind === "many"
        isNarrow: root.isNarrow
        enabled: !root.isOff
        isMany: root.kind === "many"
        name: root.name
        keys: root.keys
        words: root.words
        chosen: root.chosen
        onChoose: key => root.choose(key)
    }
    PartPlate {
        width: parent.width
        visible: root.kind === "go"
        name: root.name
        note: root.value
        isFaulty: root.problem !== ""
        onClicked: root.act()
    }
    Label { width: parent.width; visible: (root.kind === "number" || root.kind === "choice") && text !== ""; text: root.note; size: Type.small; color: Theme.ash; maximumLineCount: 4 }
    Remark { width: parent.width; text: root.problem; tint: Theme.ember }
}
