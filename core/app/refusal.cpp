#include "app/refusal.h"

namespace cinder::app {

namespace {

const char* sentence(Refusal::Why why) {
    switch (why) {
        case Refusal::Why::NoEvent:
            return "no event is open: open one first";
        case Refusal::Why::UnknownTask:
            return "the run sheet has no such task";
        case Refusal::Why::NotNow:
            return "this cannot be done now";
        case Refusal::Why::ReadOnly:
            return "the journal is read-only: nothing can be added";
        case Refusal::Why::NotSaved:
            return "it could not be saved and does not count: make room on the device, then do it "
                   "again";
        case Refusal::Why::BadEvent:
            return "the event document has faults";
        case Refusal::Why::Overtaken:
            return "something else was noted while the plan was made: ask for it again";
        case Refusal::Why::NobodyCan:
            return "work that is still to be done needs a skill that nobody there would have: give "
                   "it to somebody who is there";
        case Refusal::Why::AskFirst:
            return "first answer what is asked before the fire, or skip it on record: "
                   "extinguisher, "
                   "clear ground, open air";
        case Refusal::Why::BadCopy:
            return "this file cannot be taken back: choose a copy that this app wrote, unchanged";
        case Refusal::Why::NoPlan:
            break;
    }
    return "no plan keeps this promise";
}

}  // namespace

std::string describe(const Refusal& refusal) {
    std::string text = sentence(refusal.why);
    if (!refusal.detail.empty()) text += " (" + refusal.detail + ")";
    for (const event::Fault& fault : refusal.faults)
        text += "\n" + event::describe(fault);
    return text;
}

}  // namespace cinder::app
