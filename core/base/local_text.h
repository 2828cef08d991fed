#pragma once

/// A name in the languages the crew reads. What people call a dish or a task belongs to the event,
/// not to the app, so it travels with the event in as many languages as somebody wrote it in.

#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace cinder {

class LocalText {
  public:
    LocalText() = default;
    /// One text for every language.
    explicit LocalText(std::string text) { byLanguage_.emplace("", std::move(text)); }
    /// Keys are BCP 47 language tags ("en", "es"); "" is the text for any language.
    explicit LocalText(std::map<std::string, std::string> byLanguage)
        : byLanguage_(std::move(byLanguage)) {}

    /// The text in `language`; else the one for any language; else the first by tag; else "".
    [[nodiscard]] std::string_view in(std::string_view language) const {
        if (const auto exact = byLanguage_.find(std::string(language)); exact != byLanguage_.end())
            return exact->second;
        return byLanguage_.empty() ? std::string_view{} : byLanguage_.begin()->second;
    }
    [[nodiscard]] const std::map<std::string, std::string>& byLanguage() const {
        return byLanguage_;
    }
    [[nodiscard]] bool empty() const { return byLanguage_.empty(); }

    friend bool operator==(const LocalText& a, const LocalText& b) {
        return a.byLanguage_ == b.byLanguage_;
    }

  private:
    std::map<std::string, std::string> byLanguage_;
};

}  // namespace cinder
