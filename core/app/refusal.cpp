#include "app/refusal.h"

namespace cinder::app {

namespace {

const char* sentenceOfStore(std::optional<journal::StoreError::Why> why) {
    using Store = journal::StoreError::Why;
    switch (why.value_or(Store::Failed)) {
        case Store::Damaged:
        case Store::NotAJournal:
            return "part of the journal is damaged and cannot be read: go on with the latest copy "
                   "of it";
        case Store::Locked:
            return "another program holds the journal: close that, then do it again";
        case Store::CannotOpen:
            return "the file cannot be made or opened: check its folder, and that you may write "
                   "there";
        case Store::Occupied:
            return "what stands there is no copy of this journal and is left as it is: name "
                   "another file";
        case Store::ReadOnly:
        case Store::DiskFull:
        case Store::OutOfOrder:
        case Store::BadSeal:
        case Store::Failed:
            break;
    }
    return "it could not be saved and does not count: make room on the device, then do it again";
}

const char* sentence(const Refusal& refusal) {
    switch (refusal.why) {
        case Refusal::Why::NoEvent:
            return "no event is open: open one first";
        case Refusal::Why::UnknownTask:
            return "the run sheet has no such task";
        case Refusal::Why::NotNow:
            return "this cannot be done now";
        case Refusal::Why::ReadOnly:
            return "the journal is read-only: nothing can be added";
        case Refusal::Why::NotSaved:
            return sentenceOfStore(refusal.storage);
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
        case Refusal::Why::HasBegun:
            return "the day has begun and the event stays as it is: move the bell, change the crew "
                   "or the guests, or leave out a dish";
        case Refusal::Why::IsRehearsal:
            return "this is a rehearsal: open the event itself and change that";
        case Refusal::Why::NoPlan:
            break;
    }
    return "no plan keeps this promise";
}

}  // namespace

std::string describe(const Refusal& refusal) {
    std::string text = sentence(refusal);
    if (!refusal.detail.empty()) text += " (" + refusal.detail + ")";
    for (const event::Fault& fault : refusal.faults)
        text += "\n" + event::describe(fault);
    return text;
}

}  // namespace cinder::app
