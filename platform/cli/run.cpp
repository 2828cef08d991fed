#include "cli/commands.h"

namespace cinder::cli {

namespace {

Outcome<std::string> obey(const Options& options, const Clock& clock, std::ostream& out) {
    switch (options.command) {
        case Command::Help:
            return usage();
        case Command::Version:
            return std::string("bellman " CINDER_VERSION "\n");
        case Command::Check:
            return checkEvent(options);
        case Command::Plan:
            return planEvent(options, clock);
        case Command::Lists:
            return listQuantities(options, clock);
        case Command::Play:
            return playEvent(options, clock, out);
        case Command::Events:
            return listEvents(options);
        case Command::Verify:
            return verifyStore(options);
        case Command::Backup:
            return backUpStore(options);
        case Command::Restore:
            return restoreStore(options, clock);
    }
    return usage();
}

/// A list that ends in the middle of a full disk must not pass for the whole one.
ExitCode printed(ExitCode code, std::ostream& out, std::ostream& errors) {
    out.flush();
    if (out) return code;
    errors << "bellman: what was asked for could not be printed whole; make room where it goes\n";
    return ExitCode::NotWritten;
}

}  // namespace

ExitCode run(std::span<const std::string> words, const Clock& clock, std::ostream& out,
             std::ostream& errors) {
    const auto options = readCommandLine(words);
    if (!options) {
        errors << "bellman: " << options.error().words << "\n";
        return options.error().code;
    }
    const auto done = obey(*options, clock, out);
    if (!done) {
        // Asked for JSON, a script reads standard output whatever the verdict.
        const bool isAnswer = options->isJson && options->command == Command::Check &&
                              done.error().code == ExitCode::BadEvent;
        (isAnswer ? out : errors) << (isAnswer ? "" : "bellman: ") << done.error().words << "\n";
        return isAnswer ? printed(done.error().code, out, errors) : done.error().code;
    }
    out << *done;
    return printed(ExitCode::Done, out, errors);
}

}  // namespace cinder::cli
