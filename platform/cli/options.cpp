#include "cli/options.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <string_view>

namespace cinder::cli {

namespace {

struct Name {
    std::string_view word;
    Command command;
};
constexpr std::array kCommands = {
    Name{"help", Command::Help},     Name{"--help", Command::Help},
    Name{"-h", Command::Help},       Name{"--version", Command::Version},
    Name{"check", Command::Check},   Name{"plan", Command::Plan},
    Name{"lists", Command::Lists},   Name{"play", Command::Play},
    Name{"events", Command::Events}, Name{"verify", Command::Verify},
    Name{"backup", Command::Backup}, Name{"restore", Command::Restore}};

Failure wrong(std::string words) {
    return {ExitCode::Usage, std::move(words) + "; see bellman --help"};
}

Outcome<std::int64_t> number(const std::string& option, const std::string& text, std::int64_t least,
                             std::int64_t most) {
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || value < least || value > most)
        return fail(wrong(option + " takes a whole number from " + std::to_string(least) + " to " +
                          std::to_string(most) + ", not \"" + text + "\""));
    return value;
}

bool takesValue(const std::string& word) {
    constexpr std::array<std::string_view, 9> kWithValue = {
        "--csv",   "--language",    "--seed", "--schedules", "--speed",
        "--store", "--store-limit", "--to",   "--from"};
    return std::find(kWithValue.begin(), kWithValue.end(), word) != kWithValue.end();
}

/// Which options a command understands; a silent no-op would let a typing mistake pass.
bool belongsTo(Command command, const std::string& word) {
    if (word == "--to") return command == Command::Backup;
    if (word == "--from") return command == Command::Restore;
    if (command == Command::Backup || command == Command::Restore) return false;
    if (word == "--language") return command != Command::Verify && command != Command::Check;
    if (word == "--json")
        return command == Command::Check || command == Command::Plan || command == Command::Lists;
    if (word == "--csv" || word == "--customary") return command == Command::Lists;
    if (word == "--seed" || word == "--schedules")
        return command == Command::Plan || command == Command::Lists;
    return command == Command::Play;
}

Outcome<void> take(Options& options, const std::string& word, const std::string& value) {
    constexpr std::int64_t kMany = std::numeric_limits<std::int32_t>::max();
    if (word == "--json") {
        options.isJson = true;
    } else if (word == "--customary") {
        options.isCustomary = true;
    } else if (word == "--csv") {
        options.csv = value;
    } else if (word == "--language") {
        options.language = value;
    } else if (word == "--to" || word == "--from") {
        options.copy = value;
    } else if (word == "--store") {
        options.store = value;
    } else if (word == "--seed") {
        const auto seed = number(word, value, 0, std::numeric_limits<std::int64_t>::max());
        if (!seed) return fail(seed.error());
        options.seed = static_cast<std::uint64_t>(*seed);
    } else if (word == "--schedules") {
        const auto schedules = number(word, value, 1, kMany);
        if (!schedules) return fail(schedules.error());
        options.schedules = *schedules;
    } else if (word == "--speed") {
        const auto speed = number(word, value, 1, 3600);
        if (!speed) return fail(speed.error());
        options.speed = static_cast<int>(*speed);
    } else {
        const auto limit = number(word, value, 16, kMany);
        if (!limit) return fail(limit.error());
        options.storeKibibytes = *limit;
    }
    return {};
}

}  // namespace

Outcome<Options> readCommandLine(std::span<const std::string> words) {
    if (words.empty()) return fail(wrong("say what to do"));
    const auto* const named =
        std::find_if(kCommands.begin(), kCommands.end(),
                     [&words](const Name& name) { return name.word == words.front(); });
    if (named == kCommands.end())
        return fail(wrong("there is no command \"" + words.front() + "\""));

    Options options;
    options.command = named->command;
    if (options.command == Command::Help || options.command == Command::Version) return options;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (!word.starts_with("--")) {
            if (!options.file.empty())
                return fail(wrong("one file at a time, not also \"" + word + "\""));
            options.file = word;
            continue;
        }
        const bool isKnown = takesValue(word) || word == "--json" || word == "--customary";
        if (!isKnown || !belongsTo(options.command, word))
            return fail(wrong(words.front() + " has no option \"" + word + "\""));
        if (takesValue(word) && i + 1 == words.size()) return fail(wrong(word + " needs a value"));
        const auto taken = take(options, word, takesValue(word) ? words[++i] : std::string());
        if (!taken) return fail(taken.error());
    }
    if (options.file.empty()) return fail(wrong(words.front() + " needs a file"));
    if (options.command == Command::Backup && !options.copy)
        return fail(wrong("backup needs --to FILE"));
    if (options.command == Command::Restore && !options.copy)
        return fail(wrong("restore needs --from FILE"));
    return options;
}

std::string usage() {
    return R"(bellman: plan and check a booked event without a screen

  bellman check FILE            every fault of an event file, each with its place and remedy
  bellman plan FILE             the run sheet, the checker's verdict and the latest arrival
  bellman lists FILE            what to buy, cook ahead, set up and pack, and what is missing
  bellman play FILE             the whole day at once, by a punctual crew that is not there
  bellman events STORE          the events kept in a store
  bellman verify STORE          whether the record in a store is as it was written
  bellman backup STORE --to FILE     everything in a store as one file
  bellman restore STORE --from FILE  what such a file has and the store has not; loses nothing

  --json                        (check, plan, lists) one JSON object instead of text
  --csv LIST                    (lists) dishes, purchase, kitchen, line or pack as CSV
  --customary                   (lists) pounds, quarts and feet
  --language TAG                (plan, lists, play, events) names in this language if there
  --seed N                      (plan, lists) another search; the same seed gives the same plan
  --schedules N                 (plan, lists) how many schedules to try, 5000 unless said
  --speed N                     (play) N times as fast as life, instead of at once
  --store FILE                  (play) keep the day's journal in this store
  --store-limit KIB             (play) as if the disk were full at this size

Exit codes
  0  done                           5  the store cannot be opened, read or added to
  2  wrong command line             6  the event file cannot be read
  3  the event has faults           7  the record in the store was altered
  4  no plan keeps the promise      8  the checker rejects the plan (our fault)
  9  what was asked for could not be printed whole

A plan is a help to the crew, never a licence: local fire and health codes and the licensed food
protection manager decide.
)";
}

}  // namespace cinder::cli
