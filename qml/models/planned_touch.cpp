#include "planned_touch.h"

namespace cinder::face {

namespace {

using Why = app::Refusal::Why;

/// Our choice: two more tries are time enough to find a moment without a touch, or to see that
/// there is none.
constexpr int kTries = 3;

struct Touch {
    SearchThread& thread;
    Door& door;
    Ask ask;
    std::function<void(const Taken&)> whenDone;
};

void attempt(const Touch& touch, int triesLeft) {
    auto planning = touch.ask();
    if (!planning) return touch.whenDone(fail(std::move(planning.error())));
    touch.thread.start(
        [planning = *planning](const std::atomic<bool>& stop) {
            return app::searchPlan(planning, &stop);
        },
        [touch, triesLeft, planning = *planning](const app::Found& found) {
            const Taken taken = touch.door.publish(planning, found);
            const bool isOvertaken = !taken && taken.error().why == Why::Overtaken;
            if (isOvertaken && triesLeft > 1) return attempt(touch, triesLeft - 1);
            touch.whenDone(taken);
        });
}

}  // namespace

void carryOut(SearchThread& thread, Door& door, Ask ask,
              std::function<void(const Taken&)> whenDone) {
    thread.stop();
    attempt({thread, door, std::move(ask), std::move(whenDone)}, kTries);
}

bool isLeft(const Taken& taken) {
    return !taken && taken.error().why == Why::NoEvent;
}

}  // namespace cinder::face
