pragma Singleton
import QtQml

/// Our own drawings, on a grid of 24, as outlines to be filled with one colour. SVG path syntax.
QtObject {
    /// A tongue of flame with a smaller one cut out.
    readonly property string flame: "M12.6 1.8 C13.4 5.6 18.8 8.6 18.8 14.6 C18.8 19 15.8 22.2 12 22.2 C8.2 22.2 5.2 19.2 5.2 15 C5.2 12.2 6.6 10.2 8 8.6 C8.3 10.4 9 11.6 10.2 12.2 C9.8 8.2 10.6 4.4 12.6 1.8 Z M12 20.2 C14 20.2 15.3 18.7 15.3 16.9 C15.3 15 13.8 13.9 13.1 12.6 C12.8 14.2 11.6 14.7 10.4 14.7 C9.4 15.3 8.7 16 8.7 17.2 C8.7 18.9 10.1 20.2 12 20.2 Z"
    /// A hand bell: handle, shoulder, lip, clapper.
    readonly property string bell: "M10.6 1.6 L13.4 1.6 L13.4 5.4 C16.8 6 18.4 8.6 18.6 12.2 L19 16.6 L21.4 19.2 L21.4 20 L2.6 20 L2.6 19.2 L5 16.6 L5.4 12.2 C5.6 8.6 7.2 6 10.6 5.4 Z M9.4 21.2 L14.6 21.2 C14.4 22.4 13.4 23.2 12 23.2 C10.6 23.2 9.6 22.4 9.4 21.2 Z"
    /// A slab turned over its long edge.
    readonly property string turn: "M3 13 L21 13 L21 17.6 L3 17.6 Z M4.4 11 C5 6.4 8.2 3.6 12.2 3.6 C15 3.6 17.2 4.8 18.6 7 L20.8 5.2 L20.8 11.4 L14.6 11.4 L16.8 9.2 C15.8 7.6 14.2 6.6 12.2 6.6 C9.6 6.6 7.8 8.2 7.4 11 Z M3 19.6 L21 19.6 L21 21 L3 21 Z"
    /// Lifted off the bars.
    readonly property string pull: "M12 1.8 L18.6 8.4 L14 8.4 L14 13.4 L10 13.4 L10 8.4 L5.4 8.4 Z M2.6 16 L5 16 L5 22 L2.6 22 Z M8 16 L10.4 16 L10.4 22 L8 22 Z M13.6 16 L16 16 L16 22 L13.6 22 Z M19 16 L21.4 16 L21.4 22 L19 22 Z"
    /// Laid on the bars.
    readonly property string putOn: "M10 1.8 L14 1.8 L14 7 L18.6 7 L12 13.6 L5.4 7 L10 7 Z M2.6 16 L5 16 L5 22 L2.6 22 Z M8 16 L10.4 16 L10.4 22 L8 22 Z M13.6 16 L16 16 L16 22 L13.6 22 Z M19 16 L21.4 16 L21.4 22 L19 22 Z"
    /// A joint on a board under two calm waves.
    readonly property string rest: "M2.4 19 L21.6 19 L21.6 21.6 L2.4 21.6 Z M4 17.4 C4 13.4 7.6 11 12 11 C16.4 11 20 13.4 20 17.4 Z M8 9 C6.6 7.4 9.4 5.8 8 3.6 L9.8 2.6 C12 5.4 8.8 7 10 8.4 Z M14 9 C12.6 7.4 15.4 5.8 14 3.6 L15.8 2.6 C18 5.4 14.8 7 16 8.4 Z"
    /// A table with its cloth.
    readonly property string table: "M1.6 6 L22.4 6 L22.4 9 L21 9 L21 14 L18 11.6 L15 14 L12 11.6 L9 14 L6 11.6 L3 14 L3 9 L1.6 9 Z M4 15.6 L6.4 15.6 L6.4 21 L4 21 Z M17.6 15.6 L20 15.6 L20 21 L17.6 21 Z"
    /// Head and shoulders.
    readonly property string lead: "M12 2 C14.6 2 16.4 4 16.4 6.6 C16.4 9.4 14.6 11.6 12 11.6 C9.4 11.6 7.6 9.4 7.6 6.6 C7.6 4 9.4 2 12 2 Z M3 21.6 C3 16.4 6.8 13.4 12 13.4 C17.2 13.4 21 16.4 21 21.6 Z"
    /// Head and shoulders on a device in the hand.
    readonly property string holder: "M4.6 1.4 L19.4 1.4 L19.4 22.6 L4.6 22.6 Z M7 4 L7 20 L17 20 L17 4 Z M12 5.6 C13.7 5.6 15 6.9 15 8.6 C15 10.4 13.7 11.8 12 11.8 C10.3 11.8 9 10.4 9 8.6 C9 6.9 10.3 5.6 12 5.6 Z M7.9 18.6 C7.9 15.2 9.6 13.2 12 13.2 C14.4 13.2 16.1 15.2 16.1 18.6 Z"
    /// Bars of work, one after the other.
    readonly property string sheet: "M2 3.6 L12 3.6 L12 7.2 L2 7.2 Z M6.6 10.2 L18 10.2 L18 13.8 L6.6 13.8 Z M11 16.8 L22 16.8 L22 20.4 L11 20.4 Z"
    /// A dial on a stem, its needle up.
    readonly property string probe: "M12 1.4 C15.6 1.4 18.4 4.2 18.4 7.8 C18.4 11 16.2 13.6 13.2 14.1 L12.6 22.6 L11.4 22.6 L10.8 14.1 C7.8 13.6 5.6 11 5.6 7.8 C5.6 4.2 8.4 1.4 12 1.4 Z M12 3.8 C9.8 3.8 8 5.6 8 7.8 C8 10 9.8 11.8 12 11.8 C14.2 11.8 16 10 16 7.8 C16 5.6 14.2 3.8 12 3.8 Z M11.2 8.6 L14.2 5 L12.8 9.2 Z"
    /// Four plates.
    readonly property string more: "M3 3 L10.6 3 L10.6 10.6 L3 10.6 Z M13.4 3 L21 3 L21 10.6 L13.4 10.6 Z M3 13.4 L10.6 13.4 L10.6 21 L3 21 Z M13.4 13.4 L21 13.4 L21 21 L13.4 21 Z"
    /// Two sliders.
    readonly property string settings: "M2 6 L13 6 L13 3.6 L17 3.6 L17 6 L22 6 L22 8.6 L17 8.6 L17 11 L13 11 L13 8.6 L2 8.6 Z M2 15.4 L7 15.4 L7 13 L11 13 L11 15.4 L22 15.4 L22 18 L11 18 L11 20.4 L7 20.4 L7 18 L2 18 Z"
    /// A hasp over a block.
    readonly property string lock: "M4 10.4 L6.4 10.4 L6.4 7.4 C6.4 4.2 8.8 1.8 12 1.8 C15.2 1.8 17.6 4.2 17.6 7.4 L17.6 10.4 L20 10.4 L20 21.8 L4 21.8 Z M9.4 10.4 L14.6 10.4 L14.6 7.4 C14.6 5.8 13.5 4.8 12 4.8 C10.5 4.8 9.4 5.8 9.4 7.4 Z M10.6 14 L10.6 18.4 L13.4 18.4 L13.4 14 Z"
    readonly property string tick: "M3 12.6 L6.2 9.6 L10 13.6 L18.6 4.4 L21.6 7.2 L10.2 19.4 Z"
    readonly property string cross: "M5.8 3.4 L12 9.6 L18.2 3.4 L20.6 5.8 L14.4 12 L20.6 18.2 L18.2 20.6 L12 14.4 L5.8 20.6 L3.4 18.2 L9.6 12 L3.4 5.8 Z"
    readonly property string plus: "M10.2 3.4 L13.8 3.4 L13.8 10.2 L20.6 10.2 L20.6 13.8 L13.8 13.8 L13.8 20.6 L10.2 20.6 L10.2 13.8 L3.4 13.8 L3.4 10.2 L10.2 10.2 Z"
    readonly property string minus: "M3.4 10.2 L20.6 10.2 L20.6 13.8 L3.4 13.8 Z"
    /// A tag with a cross cut out: take the last one away.
    readonly property string erase: "M8.4 4 L22 4 L22 20 L8.4 20 L1.4 12 Z M10.6 9.4 L13.2 12 L10.6 14.6 L12.2 16.2 L14.8 13.6 L17.4 16.2 L19 14.6 L16.4 12 L19 9.4 L17.4 7.8 L14.8 10.4 L12.2 7.8 Z"
    /// A pencil on its point.
    readonly property string pencil: "M2.6 21.4 L4 15.8 L8.2 20 Z M5.2 14.6 L14.6 5.2 L18.8 9.4 L9.4 18.8 Z M15.8 4 L17.4 2.4 C18 1.8 19 1.8 19.6 2.4 L21.6 4.4 C22.2 5 22.2 6 21.6 6.6 L20 8.2 Z"
    /// An arrow that goes back.
    readonly property string undo: "M9.6 3 L9.6 7 L14 7 C18.6 7 21.6 10 21.6 14.2 C21.6 18.4 18.6 21.2 14 21.2 L7 21.2 L7 17.8 L14 17.8 C16.6 17.8 18.2 16.4 18.2 14.2 C18.2 12 16.6 10.4 14 10.4 L9.6 10.4 L9.6 14.4 L2.4 8.7 Z"
    readonly property string back: "M16 3 L6.6 12 L16 21 L18.6 18.4 L12 12 L18.6 5.6 Z"
    readonly property string forward: "M8 3 L17.4 12 L8 21 L5.4 18.4 L12 12 L5.4 5.6 Z"
    readonly property string play: "M6 3 L21 12 L6 21 Z"
    /// A signboard on a post: read this.
    readonly property string caution: "M12 1.6 L23 21.4 L1 21.4 Z M10.8 8.4 L11.3 15.4 L12.7 15.4 L13.2 8.4 Z M10.8 17 L10.8 19.4 L13.2 19.4 L13.2 17 Z"
    /// A speaker crossed out.
    readonly property string mute: "M2 8.6 L6.4 8.6 L12.4 3.6 L12.4 20.4 L6.4 15.4 L2 15.4 Z M15 9.4 L16.6 7.8 L18.8 10 L21 7.8 L22.6 9.4 L20.4 11.6 L22.6 13.8 L21 15.4 L18.8 13.2 L16.6 15.4 L15 13.8 L17.2 11.6 Z"
    readonly property string clock: "M12 1.6 C17.8 1.6 22.4 6.2 22.4 12 C22.4 17.8 17.8 22.4 12 22.4 C6.2 22.4 1.6 17.8 1.6 12 C1.6 6.2 6.2 1.6 12 1.6 Z M12 4.4 C7.8 4.4 4.4 7.8 4.4 12 C4.4 16.2 7.8 19.6 12 19.6 C16.2 19.6 19.6 16.2 19.6 12 C19.6 7.8 16.2 4.4 12 4.4 Z M10.8 6.4 L13.2 6.4 L13.2 11.4 L16.8 13.6 L15.6 15.6 L10.8 12.8 Z"
    /// Boxes and their lines.
    readonly property string lists: "M3 4 L6 4 L6 7 L3 7 Z M8.5 4.4 L21 4.4 L21 6.6 L8.5 6.6 Z M3 10.5 L6 10.5 L6 13.5 L3 13.5 Z M8.5 10.9 L21 10.9 L21 13.1 L8.5 13.1 Z M3 17 L6 17 L6 20 L3 20 Z M8.5 17.4 L21 17.4 L21 19.6 L8.5 19.6 Z"
    /// A lid over a plate.
    readonly property string serve: "M11 3.8 L13 3.8 L13 6 C17.6 6.5 20.4 10 20.6 15 L3.4 15 C3.6 10 6.4 6.5 11 6 Z M2 16.8 L22 16.8 L22 19.2 L2 19.2 Z"
    /// A beam with two pans.
    readonly property string scales: "M10.9 3 L13.1 3 L13.1 6 L21 6 L21 8 L19.8 8 L19.8 13 L22.6 13 C22.6 15.4 21.1 16.6 19.2 16.6 C17.3 16.6 15.8 15.4 15.8 13 L18.6 13 L18.6 8 L13.1 8 L13.1 18.8 L17 18.8 L17 21 L7 21 L7 18.8 L10.9 18.8 L10.9 8 L5.4 8 L5.4 13 L8.2 13 C8.2 15.4 6.7 16.6 4.8 16.6 C2.9 16.6 1.4 15.4 1.4 13 L4.2 13 L4.2 8 L3 8 L3 6 L10.9 6 Z"
    /// A box on wheels, its cab to the right.
    readonly property string van: "M1.6 5.2 L14.2 5.2 L14.2 8.4 L18.6 8.4 L22.4 12.6 L22.4 17 L1.6 17 Z M6.6 17.8 C7.815 17.8 8.8 18.785 8.8 20 C8.8 21.215 7.815 22.2 6.6 22.2 C5.385 22.2 4.4 21.215 4.4 20 C4.4 18.785 5.385 17.8 6.6 17.8 Z M17.4 17.8 C18.615 17.8 19.6 18.785 19.6 20 C19.6 21.215 18.615 22.2 17.4 22.2 C16.185 22.2 15.2 21.215 15.2 20 C15.2 18.785 16.185 17.8 17.4 17.8 Z"
    /// A leaf with a corner off and three lines cut out.
    readonly property string paper: "M5 2 L14.6 2 L19.4 6.8 L19.4 22 L5 22 Z M8 9.4 L8 11 L16.4 11 L16.4 9.4 Z M8 13.2 L8 14.8 L16.4 14.8 L16.4 13.2 Z M8 17 L8 18.6 L13.4 18.6 L13.4 17 Z"
    /// Two devices with the same tick.
    readonly property string devices: "M1 4 L11 4 L11 20 L1 20 Z M3 6.4 L3 17.6 L9 17.6 L9 6.4 Z M3.6 12.6 L4.4 11.8 L5.4 12.8 L7.6 10.4 L8.4 11.2 L5.5 14.3 Z M13 4 L23 4 L23 20 L13 20 Z M15 6.4 L15 17.6 L21 17.6 L21 6.4 Z M15.6 12.6 L16.4 11.8 L17.4 12.8 L19.6 10.4 L20.4 11.2 L17.5 14.3 Z"
    /// A screen with four groups of digits.
    readonly property string code: "M1.4 4 L22.6 4 L22.6 20 L1.4 20 Z M3.8 6.4 L3.8 17.6 L20.2 17.6 L20.2 6.4 Z M5.1 10 L7.5 10 L7.5 14 L5.1 14 Z M8.9 10 L11.3 10 L11.3 14 L8.9 14 Z M12.7 10 L15.1 10 L15.1 14 L12.7 14 Z M16.5 10 L18.9 10 L18.9 14 L16.5 14 Z"
    /// Nine keys.
    readonly property string keys: "M2.4 2.4 L7.2 2.4 L7.2 7.2 L2.4 7.2 Z M9.6 2.4 L14.4 2.4 L14.4 7.2 L9.6 7.2 Z M16.8 2.4 L21.6 2.4 L21.6 7.2 L16.8 7.2 Z M2.4 9.6 L7.2 9.6 L7.2 14.4 L2.4 14.4 Z M9.6 9.6 L14.4 9.6 L14.4 14.4 L9.6 14.4 Z M16.8 9.6 L21.6 9.6 L21.6 14.4 L16.8 14.4 Z M2.4 16.8 L7.2 16.8 L7.2 21.6 L2.4 21.6 Z M9.6 16.8 L14.4 16.8 L14.4 21.6 L9.6 21.6 Z M16.8 16.8 L21.6 16.8 L21.6 21.6 L16.8 21.6 Z"
    /// Three pans side by side on a table.
    readonly property string pans: "M1.8 8 L7.8 8 L7.2 14 L2.4 14 Z M9 8 L15 8 L14.4 14 L9.6 14 Z M16.2 8 L22.2 8 L21.6 14 L16.8 14 Z M1.2 16 L22.8 16 L22.8 18.2 L1.2 18.2 Z"
}
