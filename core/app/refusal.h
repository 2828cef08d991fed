#pragma once

/// Why a touch was not taken.

#include <optional>
#include <string>

#include "event/fault.h"
#include "journal/store.h"
#include "plan/planner.h"

namespace cinder::app {

/// What the person sees when a touch could not be taken.
struct Refusal {
    enum class Why {
        NoEvent,      ///< no event is open, or another one than was asked about
        UnknownTask,  ///< the plan has no such task
        NotNow,       ///< already done, already undone, not running
        ReadOnly,     ///< the store, or the event, cannot be written
        NotSaved,     ///< the store could not do it, see `storage`; nothing was shown as done
        BadEvent,     ///< the document did not validate
        NoPlan,       ///< the planner found none
        Overtaken,    ///< something was noted while the plan was made that it does not know of
        NobodyCan,    ///< what is still to be done; `faults` names each skill as what was found
        AskFirst,     ///< the fire is not lit before its three questions are answered or skipped
        BadCopy,      ///< the file is no copy of a store, or was changed since it was written
        HasBegun,     ///< the event is changed only before the first touch of its day
        IsRehearsal,  ///< a rehearsal is played; the event it was made of is changed
    };
    Why why = Why::NotNow;
    std::string detail;                  ///< for the log and the command line
    event::Faults faults;                ///< for BadEvent: every fault, field by field
    std::optional<plan::NoPlan> noPlan;  ///< for NoPlan, when a search was made
    /// For NotSaved and ReadOnly, when known; ReadOnly without it: a newer app's.
    std::optional<journal::StoreError::Why> storage;
};

/// One plain English sentence for logs and the command line.
[[nodiscard]] std::string describe(const Refusal& refusal);

}  // namespace cinder::app
