pragma Singleton
import QtQml

/// The shapes of a task's state, on a grid of 24.
QtObject {
    readonly property string waiting: "M12 3 C17 3 21 7 21 12 C21 17 17 21 12 21 C7 21 3 17 3 12 C3 7 7 3 12 3 Z M12 6 C8.7 6 6 8.7 6 12 C6 15.3 8.7 18 12 18 C15.3 18 18 15.3 18 12 C18 8.7 15.3 6 12 6 Z"
    readonly property string ready: waiting + " M12 8.6 C13.9 8.6 15.4 10.1 15.4 12 C15.4 13.9 13.9 15.4 12 15.4 C10.1 15.4 8.6 13.9 8.6 12 C8.6 10.1 10.1 8.6 12 8.6 Z"
    readonly property string running: "M3 4 L15 4 L21 10 L21 20 L3 20 Z"
    readonly property string over: "M12 1.5 L22.5 12 L12 22.5 L1.5 12 Z"
    readonly property string late: "M12 1.5 L22.5 12 L12 22.5 L1.5 12 Z M10.8 6 L11.2 13.4 L12.8 13.4 L13.2 6 Z M10.8 15.2 L10.8 17.6 L13.2 17.6 L13.2 15.2 Z"
}
