#pragma once

/// A touch that waits for a plan, from the view model's side.

#include <functional>

#include "door.h"
#include "search_thread.h"

namespace cinder::face {

/// What is to be planned as the day now stands; called anew when the day has moved on.
using Ask = std::function<Result<app::Planning, app::Refusal>()>;

/// Stops what `thread` searches, asks, searches while the face goes on, and publishes. A crew that
/// is busy overtakes a slow search: it is then asked and searched again, a few times, before the
/// touch is refused. `whenDone` hears what became of it, at once when the asking is refused:
/// NoEvent when another event was opened meanwhile, whose boards need no word of it. The door must
/// outlive the thread.
void carryOut(SearchThread& thread, Door& door, Ask ask,
              std::function<void(const Taken&)> whenDone);

/// Whether the person had gone on to another event by then.
[[nodiscard]] bool isLeft(const Taken& taken);

}  // namespace cinder::face
