#include "cli/event_file.h"

#include <fstream>

#include "event/json.h"

namespace cinder::cli {

Outcome<std::string> readText(const std::filesystem::path& file) {
    std::error_code ignored;
    if (std::filesystem::is_directory(file, ignored))
        return fail(Failure{ExitCode::NoFile, file.string() + " is a folder; name the event file"});
    std::ifstream in(file, std::ios::binary);
    if (!in)
        return fail(Failure{ExitCode::NoFile, "cannot read " + file.string() +
                                                  "; check the name and that you may read it"});
    // One byte more than allowed is enough for the reader to say that it is too large.
    std::string text(event::kMostBytes + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(in.gcount()));
    return text;
}

Outcome<event::Event> readEvent(const std::filesystem::path& file) {
    const auto text = readText(file);
    if (!text) return fail(text.error());
    auto event = event::parse(*text);
    if (event) return *std::move(event);
    std::string words;
    for (const event::Fault& fault : event.error())
        words += event::describe(fault) + "\n";
    words += std::to_string(event.error().size()) +
             (event.error().size() == 1 ? " fault" : " faults") + " in " + file.string();
    return fail(Failure{ExitCode::BadEvent, words});
}

}  // namespace cinder::cli
