#include "sync/cbor_guard.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace cinder::sync {

namespace {

/// A message is a map with a list of maps; room for what a later version adds.
constexpr std::size_t kDeepest = 8;
/// Tens of thousands of entries, of ten members each.
constexpr std::size_t kMostItems = std::size_t{1} << 20U;

/// RFC 8949, section 3.1.
enum Major : unsigned { kBytes = 2, kText = 3, kArray = 4, kMap = 5, kTag = 6 };

struct Head {
    unsigned major = 0;
    std::uint64_t argument = 0;
};

/// RFC 8949, section 3: the initial byte and the argument that follows it.
class Heads {
  public:
    explicit Heads(std::string_view bytes) : bytes_(bytes) {}

    std::optional<Head> next() {
        constexpr unsigned kFollows = 24;
        constexpr unsigned kReserved = 28;
        if (bytes_.empty()) return std::nullopt;
        const unsigned initial = take();
        Head head{initial >> 5U, initial & 31U};
        if (head.argument < kFollows) return head;
        // Beyond are the values nobody has given a meaning and the lengths that are not known.
        if (head.argument >= kReserved) return std::nullopt;
        const std::size_t width = std::size_t{1} << (head.argument - kFollows);
        if (bytes_.size() < width) return std::nullopt;
        head.argument = 0;
        for (std::size_t i = 0; i < width; ++i)
            head.argument = head.argument << 8U | take();
        return head;
    }
    /// False when there are not so many.
    bool skip(std::uint64_t bytes) {
        if (bytes > bytes_.size()) return false;
        bytes_.remove_prefix(static_cast<std::size_t>(bytes));
        return true;
    }
    [[nodiscard]] std::size_t left() const { return bytes_.size(); }

  private:
    unsigned take() {
        const auto byte = static_cast<unsigned char>(bytes_.front());
        bytes_.remove_prefix(1);
        return byte;
    }
    std::string_view bytes_;
};

}  // namespace

bool isPlainCbor(std::string_view bytes) {
    Heads heads(bytes);
    std::array<std::uint64_t, kDeepest> toCome{};  // items, at each level that is open
    std::size_t depth = 0;
    std::size_t items = 0;
    do {
        const auto head = heads.next();
        if (!head || head->major == kTag || ++items > kMostItems) return false;
        if (depth > 0) --toCome[depth - 1];
        if (head->major == kBytes || head->major == kText) {
            if (!heads.skip(head->argument)) return false;
        } else if (head->major == kArray || head->major == kMap) {
            // Every item has a byte at least.
            if (head->argument > heads.left() || depth == kDeepest) return false;
            toCome[depth++] = head->major == kMap ? 2 * head->argument : head->argument;
        }
        while (depth > 0 && toCome[depth - 1] == 0)
            --depth;
    } while (depth > 0);
    return heads.left() == 0;
}

}  // namespace cinder::sync
