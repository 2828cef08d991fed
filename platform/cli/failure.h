#pragma once

/// How the command line ends: a code for scripts and a sentence for people.

#include <string>

#include "base/result.h"

namespace cinder::cli {

/// Promised in --help and README; never renumbered.
enum class ExitCode {
    Done = 0,
    Usage = 2,       ///< the command line itself is wrong
    BadEvent = 3,    ///< the event has faults, each named on standard error
    NoPlan = 4,      ///< no plan keeps the promise, and why
    Store = 5,       ///< the store cannot be opened, read or added to
    NoFile = 6,      ///< the event file cannot be read
    Altered = 7,     ///< the record in the store is not what was written
    BrokenPlan = 8,  ///< our own fault: the checker rejects the plan that was found
    NotWritten = 9,  ///< what was asked for could not be printed whole
};

struct Failure {
    ExitCode code = ExitCode::Usage;
    std::string words;
};

template <class T>
using Outcome = Result<T, Failure>;

}  // namespace cinder::cli
