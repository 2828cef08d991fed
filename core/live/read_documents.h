#pragma once

/// The documents of a journal, each read once. An event and a run sheet are long, and a day is
/// folded anew at every touch; what a document says does not change from one touch to the next.

#include <map>
#include <memory>
#include <string>

#include "event/event.h"
#include "live/run_sheet.h"

namespace cinder::live {

/// Keyed by the text itself, not by the operation that carries it: a fold that reads through this
/// comes to the same day as one that does not. Not for use by two threads at once.
class ReadDocuments {
  public:
    enum class Depth : std::uint8_t {
        Whole,
        /// Events have nothing but their name and serve time, and are not kept: for a list of many.
        Heading,
    };
    explicit ReadDocuments(Depth depth = Depth::Whole) : depth_(depth) {}

    /// The event as described; null when the document is not one.
    [[nodiscard]] const event::Event* event(const std::string& document);
    /// The event while it is being written (event/draft.h); null when it is not even that. Only
    /// the last one asked for is kept: there is a new one with every edit.
    [[nodiscard]] const event::Event* draft(const std::string& document);
    /// The run sheet; null when the document is not one that can be followed.
    [[nodiscard]] const RunSheet* sheet(const std::string& document);

  private:
    Depth depth_;
    std::map<std::string, std::unique_ptr<const event::Event>> events_;
    std::map<std::string, std::unique_ptr<const RunSheet>> sheets_;
    /// The last one asked for, when only headings are read.
    std::unique_ptr<const event::Event> light_;
    std::string draftText_;
    std::unique_ptr<const event::Event> draft_;
};

}  // namespace cinder::live
