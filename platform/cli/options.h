#pragma once

/// The command line as a value.

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>

#include "cli/failure.h"

namespace cinder::cli {

enum class Command { Help, Version, Check, Plan, Lists, Play, Events, Verify, Backup, Restore };

struct Options {
    Command command = Command::Help;
    /// The event file, or the store for Events, Verify, Backup and Restore.
    std::filesystem::path file;
    std::string language = "en";
    bool isJson = false;
    std::uint64_t seed = 1;
    std::int64_t schedules = 5000;
    /// Lists: pounds, quarts and feet instead of the metric measures.
    bool isCustomary = false;
    /// Lists: the one to print as CSV.
    std::optional<std::string> csv;
    /// Play: simulated seconds per real second; absent runs as fast as the machine can.
    std::optional<int> speed;
    /// Play: where the day is kept; absent: thrown away afterwards.
    std::optional<std::filesystem::path> store;
    /// Backup: the file to write; Restore: the file to read.
    std::optional<std::filesystem::path> copy;
    /// Play: the store may not grow past this.
    std::optional<std::int64_t> storeKibibytes;
};

/// `words` without the program's name. Fails with Usage and a sentence that names the word.
[[nodiscard]] Outcome<Options> readCommandLine(std::span<const std::string> words);

/// What --help prints.
[[nodiscard]] std::string usage();

}  // namespace cinder::cli
