#include "live/read_documents.h"

#include "event/draft.h"
#include "event/heading.h"
#include "event/json.h"

namespace cinder::live {

namespace {

std::unique_ptr<const event::Event> onlyHeading(const std::string& document) {
    const auto heading = event::readHeading(document);
    if (!heading) return nullptr;
    auto light = std::make_unique<event::Event>();
    light->name = heading->name;
    light->serve = heading->serve;
    return light;
}

}  // namespace

const event::Event* ReadDocuments::event(const std::string& document) {
    if (depth_ == Depth::Heading) return (light_ = onlyHeading(document)).get();
    const auto [known, isNew] = events_.try_emplace(document);
    if (isNew)
        if (auto event = event::parse(document))
            known->second = std::make_unique<const event::Event>(std::move(*event));
    return known->second.get();
}

const event::Event* ReadDocuments::draft(const std::string& document) {
    if (depth_ == Depth::Heading) return (light_ = onlyHeading(document)).get();
    if (draft_ && draftText_ == document) return draft_.get();
    auto draft = event::parseDraft(document);
    if (!draft) return nullptr;
    draftText_ = document;
    draft_ = std::make_unique<const event::Event>(std::move(*draft));
    return draft_.get();
}

const RunSheet* ReadDocuments::sheet(const std::string& document) {
    const auto [known, isNew] = sheets_.try_emplace(document);
    if (isNew)
        if (auto sheet = readRunSheet(document))
            known->second = std::make_unique<const RunSheet>(std::move(*sheet));
    return known->second.get();
}

}  // namespace cinder::live
