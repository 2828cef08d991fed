#include <catch2/catch.hpp>

#include "base/time.h"

using namespace cinder;
using namespace std::chrono_literals;

namespace {

/// Seconds since 1970 that an RFC 3339 text names, or nothing.
std::optional<long long> epochSeconds(const char* text) {
    const auto read = parseRfc3339(text);
    if (!read) return std::nullopt;
    return std::chrono::floor<std::chrono::seconds>(read->at).time_since_epoch().count();
}

}  // namespace

TEST_CASE("the examples of RFC 3339 are read as the standard says") {
    // Source: RFC 3339 section 5.8, "Examples".
    SECTION("20 minutes and 50.52 seconds after the 23rd hour of April 12th, 1985 in UTC") {
        const auto read = parseRfc3339("1985-04-12T23:20:50.52Z");

        REQUIRE(read);
        CHECK(read->at.time_since_epoch() == 482196050520ms);
    }
    SECTION("a local time with an offset equals the UTC time the standard gives beside it") {
        CHECK(epochSeconds("1996-12-19T16:39:57-08:00") == epochSeconds("1996-12-20T00:39:57Z"));
    }
    SECTION("a leap second, and the same leap second in Pacific time") {
        CHECK(epochSeconds("1990-12-31T23:59:60Z") == epochSeconds("1991-01-01T00:00:00Z"));
        CHECK(epochSeconds("1990-12-31T15:59:60-08:00") == epochSeconds("1990-12-31T23:59:60Z"));
    }
    SECTION("noon in the Netherlands of 1937, with an offset of 20 minutes") {
        const auto read = parseRfc3339("1937-01-01T12:00:27.87+00:20");

        REQUIRE(read);
        CHECK(read->offset == 20min);
        CHECK(formatRfc3339(*read) == "1937-01-01T12:00:27.870+00:20");
    }
}

TEST_CASE("text outside the grammar of RFC 3339 is not a time") {
    const auto text =
        GENERATE("", "2027-09-18", "2027-09-18 13:00:00Z", "2027-09-18T13:00Z",
                 "2027-09-18T13:00:00", "2027-02-29T13:00:00Z", "2027-13-01T13:00:00Z",
                 "2027-09-18T24:00:00Z", "2027-09-18T13:60:00Z", "2027-09-18T13:00:00.Z",
                 "2027-09-18T13:00:00+4:00", "2027-09-18T13:00:00+24:00", "2027-09-18T13:00:00Zz",
                 "-027-09-18T13:00:00Z", "2027-09-18T13:00:00-04:00 ");
    CAPTURE(text);

    CHECK_FALSE(parseRfc3339(text));
}

TEST_CASE("writing an instant and reading it again gives the same instant and offset") {
    const auto offset = GENERATE(0min, -240min, 345min, 840min);
    const auto millis = GENERATE(0, 1, 999);
    const ZonedInstant written{Instant{1821286800000ms + std::chrono::milliseconds{millis}},
                               offset};

    CHECK(parseRfc3339(formatRfc3339(written)) == written);
}

TEST_CASE("wall time follows the offset, across midnight too") {
    const auto bell = parseRfc3339("2027-09-18T23:40:00Z");
    REQUIRE(bell);

    CHECK(formatWallTime(bell->at, 0min) == "23:40");
    CHECK(formatWallTime(bell->at, 30min) == "00:10");
    CHECK(formatWallTime(bell->at, -240min) == "19:40");
}

TEST_CASE("the distance to the bell is said in hours and minutes") {
    CHECK(formatBellOffset(-65min) == "T-1:05");
    CHECK(formatBellOffset(-65min - 30s) == "T-1:05");
    CHECK(formatBellOffset(0ms) == "T-0:00");
    CHECK(formatBellOffset(10min) == "T+0:10");
}
