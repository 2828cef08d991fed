#include "journal/seal.h"

#include <sodium.h>

#include <string_view>

namespace cinder::journal {

namespace {

class Hasher {
  public:
    Hasher() { crypto_generichash_init(&state_, nullptr, 0, Seal{}.size()); }

    void add(std::int64_t number) {
        std::array<unsigned char, 8> bytes{};
        auto rest = static_cast<std::uint64_t>(number);
        for (auto& byte : bytes) {
            byte = static_cast<unsigned char>(rest & 0xFFU);
            rest >>= 8U;
        }
        crypto_generichash_update(&state_, bytes.data(), bytes.size());
    }
    void add(std::string_view text) {
        add(static_cast<std::int64_t>(text.size()));
        crypto_generichash_update(&state_, reinterpret_cast<const unsigned char*>(text.data()),
                                  text.size());
    }
    void add(const Seal& previous) {
        crypto_generichash_update(&state_, previous.data(), previous.size());
    }
    Seal finish() {
        Seal out{};
        crypto_generichash_final(&state_, out.data(), out.size());
        return out;
    }

  private:
    crypto_generichash_state state_{};
};

}  // namespace

Seal seal(const Seal& previous, const Operation& operation, const BodyText& body) {
    Hasher hasher;
    hasher.add(previous);
    hasher.add(operation.event.text());
    hasher.add(operation.id.device.text());
    hasher.add(static_cast<std::int64_t>(operation.id.sequence));
    hasher.add(operation.stamp.wall.time_since_epoch().count());
    hasher.add(operation.stamp.counter);
    hasher.add(operation.person ? 1 : 0);
    hasher.add(operation.person ? operation.person->text() : std::string{});
    hasher.add(body.kind);
    hasher.add(operation.version);
    hasher.add(body.text);
    return hasher.finish();
}

}  // namespace cinder::journal
