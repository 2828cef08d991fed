#include "event/text_guard.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "event/json.h"

namespace cinder::event {

namespace {

/// No object of an event has a tenth of this; finding a member takes time by their number.
constexpr std::size_t kMostMembers = 1000;
constexpr std::size_t kLongestWord = 20;

Fault::Place placeOf(std::string_view document, std::size_t offset) {
    const auto before = document.substr(0, std::min(offset, document.size()));
    const auto lines = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    const auto lineStart = before.rfind('\n');
    const auto column =
        lineStart == std::string_view::npos ? before.size() + 1 : before.size() - lineStart;
    return {lines + 1, column};
}

/// What a person sees at a place in the text: up to the next blank, nothing at the end.
std::string wordAt(std::string_view document, std::size_t offset) {
    if (offset >= document.size()) return {};
    const auto rest = document.substr(offset, kLongestWord);
    std::string word;
    for (const char c : rest) {
        // Text cut from a document may end in the middle of a letter; keep to what is safe to show.
        if (c <= ' ' || c > '~') break;
        word += c;
    }
    return word.empty() ? " " : word;
}

/// How many bytes the well-formed UTF-8 sequence at the front has; 0 when it is not well-formed.
/// Source: Unicode Standard, table 3-7.
std::size_t sequenceLength(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
    };
    const auto isWithin = [&](std::size_t i, unsigned low, unsigned high) {
        return byte(i) >= low && byte(i) <= high;
    };
    const unsigned lead = byte(0);
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return isWithin(1, 0x80, 0xBF) ? 2 : 0;
    if (lead >= 0xE0 && lead <= 0xEF) {
        const unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = lead == 0xED ? 0x9F : 0xBF;
        return isWithin(1, low, high) && isWithin(2, 0x80, 0xBF) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const unsigned low = lead == 0xF0 ? 0x90 : 0x80;
        const unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
        const bool isWhole =
            isWithin(1, low, high) && isWithin(2, 0x80, 0xBF) && isWithin(3, 0x80, 0xBF);
        return isWhole ? 4 : 0;
    }
    return 0;
}

std::size_t firstBadByte(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t length = sequenceLength(text.substr(at));
        if (length == 0) return at;
        at += length;
    }
    return std::string_view::npos;
}

/// Follows the parser through the document; builds nothing.
class Watch : public nlohmann::json_sax<nlohmann::json> {
  public:
    explicit Watch(std::string_view document) : document_(document) {}

    bool null() override { return stepOn(); }
    bool boolean(bool) override { return stepOn(); }
    bool number_integer(number_integer_t) override { return stepOn(); }
    bool number_unsigned(number_unsigned_t) override { return stepOn(); }
    bool number_float(number_float_t, const string_t&) override { return stepOn(); }
    bool string(string_t&) override { return stepOn(); }
    bool binary(binary_t&) override { return stepOn(); }
    bool start_object(std::size_t) override { return enter(false); }
    bool start_array(std::size_t) override { return enter(true); }
    bool end_object() override { return leave(); }
    bool end_array() override { return leave(); }
    bool key(string_t& name) override {
        auto& level = levels_.back();
        level.key = name;
        if (!level.keys.insert(name).second && faults_.size() < kMostFaults)
            faults_.push_back({Fault::What::DuplicateKey, path(), {}, {}, {}});
        if (level.keys.size() <= kMostMembers) return true;
        faults_.push_back({Fault::What::TooLarge,
                           path(),
                           std::to_string(level.keys.size()),
                           "0.." + std::to_string(kMostMembers),
                           {}});
        return false;
    }
    bool parse_error(std::size_t position, const std::string& lastToken,
                     const nlohmann::json::exception& error) override {
        constexpr int kNumberOverflow = 406;  // nlohmann-json, "json.exception.out_of_range.406"
        const std::size_t at = position == 0 ? 0 : position - 1;
        if (error.id == kNumberOverflow) {
            faults_.push_back({Fault::What::OutOfRange, path(), lastToken.substr(0, kLongestWord),
                               "-1e308..1e308", placeOf(document_, at)});
        } else {
            faults_.push_back({Fault::What::NotJson,
                               {},
                               wordAt(document_, at),
                               "RFC 8259",
                               placeOf(document_, at)});
        }
        return false;
    }
    [[nodiscard]] Faults takeFaults() { return std::move(faults_); }

  private:
    struct Level {
        bool isArray = false;
        std::size_t index = 0;
        std::string key;
        std::set<std::string> keys;
    };

    bool stepOn() {
        if (!levels_.empty() && levels_.back().isArray) ++levels_.back().index;
        return true;
    }
    bool enter(bool isArray) {
        if (levels_.size() >= kDeepest) {
            faults_.push_back({Fault::What::TooDeep,
                               path(),
                               std::to_string(kDeepest + 1),
                               "0.." + std::to_string(kDeepest),
                               {}});
            return false;
        }
        levels_.push_back({isArray, 0, {}, {}});
        return true;
    }
    bool leave() {
        levels_.pop_back();
        return stepOn();
    }
    [[nodiscard]] std::string path() const {
        std::string path;
        for (const auto& level : levels_)
            path = level.isArray ? joinPath(path, level.index) : joinPath(path, level.key);
        return path;
    }

    std::string_view document_;
    std::vector<Level> levels_;
    Faults faults_;
};

}  // namespace

std::string joinPath(std::string_view path, std::string_view member) {
    std::string joined(path);
    joined += '/';
    for (const char c : member) {
        if (c == '~')
            joined += "~0";
        else if (c == '/')
            joined += "~1";
        else
            joined += c;
    }
    return joined;
}

std::string joinPath(std::string_view path, std::size_t index) {
    return joinPath(path, std::to_string(index));
}

GuardedText guardText(std::string_view document) {
    if (document.size() > kMostBytes) {
        return {{{Fault::What::TooLarge,
                  {},
                  std::to_string(document.size()),
                  "0.." + std::to_string(kMostBytes),
                  {}}},
                false};
    }
    if (const auto bad = firstBadByte(document); bad != std::string_view::npos) {
        return {{{Fault::What::NotUtf8, {}, {}, "RFC 3629", placeOf(document, bad)}}, false};
    }
    Watch watch(document);
    const bool isReadable = nlohmann::json::sax_parse(document, &watch);
    return {watch.takeFaults(), isReadable};
}

}  // namespace cinder::event
