#pragma once

/// The commands; each returns what it prints on standard output, or how it failed.

#include <ostream>
#include <string>

#include "base/clock.h"
#include "cli/failure.h"
#include "cli/options.h"

namespace cinder::cli {

[[nodiscard]] Outcome<std::string> checkEvent(const Options& options);
[[nodiscard]] Outcome<std::string> planEvent(const Options& options, const Clock& clock);
/// What an event comes to: quantities, purchases, the line, the kitchen, the van. `clock` measures
/// the search for the plan they hang on.
[[nodiscard]] Outcome<std::string> listQuantities(const Options& options, const Clock& clock);
[[nodiscard]] Outcome<std::string> listEvents(const Options& options);
[[nodiscard]] Outcome<std::string> verifyStore(const Options& options);
[[nodiscard]] Outcome<std::string> backUpStore(const Options& options);
[[nodiscard]] Outcome<std::string> restoreStore(const Options& options, const Clock& clock);
/// Prints as the day goes; what it returns is the last line. `clock` dates what goes into the
/// store.
[[nodiscard]] Outcome<std::string> playEvent(const Options& options, const Clock& clock,
                                             std::ostream& out);

/// Everything between the command line and the exit code.
[[nodiscard]] ExitCode run(std::span<const std::string> words, const Clock& clock,
                           std::ostream& out, std::ostream& errors);

}  // namespace cinder::cli
