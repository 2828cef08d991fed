#include "sync/crew_code.h"

#include <sodium.h>

#include <algorithm>

#include "sync/check_digits.h"

namespace cinder::sync {

namespace {

constexpr std::size_t kCheckDigits = 2;

/// Both ends have nothing but the code, so the salt is the same everywhere. A salt keeps one table
/// of keys from serving against many secrets that people chose; this one is chosen by chance.
constexpr std::string_view kSalt = "cinderbell crew1";
static_assert(kSalt.size() == crypto_pwhash_argon2id_SALTBYTES);
constexpr unsigned long long kPasses = 4;
constexpr std::size_t kMemory = std::size_t{64} << 20U;

constexpr std::string_view kMarkOf = "cinderbell crew mark 1";
constexpr std::size_t kMarkBytes = 8;

const unsigned char* bytesOf(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace

std::string newCode() {
    if (sodium_init() < 0) return {};
    std::string code;
    code.reserve(kCodeDigits);
    while (code.size() < kCodeDigits - kCheckDigits)
        code.push_back(static_cast<char>('0' + randombytes_uniform(10)));
    return code + checkDigits(code);
}

bool isCode(std::string_view code) {
    if (code.size() != kCodeDigits || !std::all_of(code.begin(), code.end(), isDigit)) return false;
    const std::size_t chosen = kCodeDigits - kCheckDigits;
    // Compared as written: 97 more or less would be 1 modulo 97 as well.
    return code.substr(chosen) == checkDigits(code.substr(0, chosen));
}

std::optional<CrewKey> crewKey(std::string_view code) {
    if (!isCode(code) || sodium_init() < 0) return std::nullopt;
    CrewKey key{};
    if (crypto_pwhash_argon2id(key.data(), key.size(), code.data(), code.size(), bytesOf(kSalt),
                               kPasses, kMemory, crypto_pwhash_argon2id_ALG_ARGON2ID13) != 0)
        return std::nullopt;
    return key;
}

std::string crewMark(const CrewKey& key) {
    std::array<std::uint8_t, 32> hash{};
    crypto_generichash(hash.data(), hash.size(), bytesOf(kMarkOf), kMarkOf.size(), key.data(),
                       key.size());
    std::array<char, 2 * kMarkBytes + 1> mark{};
    sodium_bin2hex(mark.data(), mark.size(), hash.data(), kMarkBytes);
    return mark.data();
}

}  // namespace cinder::sync
