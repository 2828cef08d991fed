#include "event/heading.h"

#include <map>
#include <nlohmann/json.hpp>

namespace cinder::event {

namespace {

using AnyOrder = nlohmann::json;

/// Takes what stands in the outermost object and stops the reader as soon as it may.
class HeadingReader final : public nlohmann::json_sax<AnyOrder> {
  public:
    bool start_object(std::size_t) override { return enter(); }
    bool end_object() override { return leave(); }
    bool start_array(std::size_t) override { return enter(); }
    bool end_array() override { return leave(); }
    bool key(std::string& name) override {
        if (depth_ == 1) member_ = name;
        if (depth_ == 2) language_ = name;
        return true;
    }
    bool string(std::string& text) override {
        if (depth_ == 1 && member_ == "serve") serve_ = parseRfc3339(text);
        if (depth_ == 1 && member_ == "name") name_ = LocalText(text);
        if (depth_ == 2 && member_ == "name") byLanguage_[language_] = text;
        return isWanting();
    }
    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(std::int64_t) override { return true; }
    bool number_unsigned(std::uint64_t) override { return true; }
    bool number_float(double, const std::string&) override { return true; }
    bool binary(AnyOrder::binary_t&) override { return true; }
    bool parse_error(std::size_t, const std::string&, const AnyOrder::exception&) override {
        return false;
    }

    [[nodiscard]] std::optional<Heading> found() const {
        if (isWanting()) return std::nullopt;
        return Heading{*name_, *serve_};
    }

  private:
    bool enter() {
        ++depth_;
        return true;
    }
    bool leave() {
        --depth_;
        if (depth_ == 1 && member_ == "name" && !byLanguage_.empty())
            name_ = LocalText(std::move(byLanguage_));
        return isWanting();
    }
    [[nodiscard]] bool isWanting() const { return !name_ || !serve_; }

    int depth_ = 0;
    std::string member_, language_;
    std::map<std::string, std::string> byLanguage_;
    std::optional<LocalText> name_;
    std::optional<ZonedInstant> serve_;
};

}  // namespace

std::optional<Heading> readHeading(std::string_view document) {
    HeadingReader reader;
    AnyOrder::sax_parse(document, &reader);
    return reader.found();
}

}  // namespace cinder::event
