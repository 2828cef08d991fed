#include <catch2/catch.hpp>

#include "base/rng.h"
#include "small_day.h"

using namespace samples;

TEST_CASE("a run sheet survives its document") {
    const auto sheet = smallSheet();

    const auto read = live::readRunSheet(live::writeRunSheet(sheet));

    REQUIRE(read);
    CHECK(*read == sheet);
}

TEST_CASE("a run sheet cut short anywhere is refused, never followed") {
    const std::string whole = live::writeRunSheet(smallSheet());

    for (std::size_t length = 0; length < whole.size(); ++length)
        if (live::readRunSheet(whole.substr(0, length))) FAIL("followed a cut at " << length);
}

TEST_CASE("a run sheet with damaged bytes never leads outside itself") {
    const std::string whole = live::writeRunSheet(smallSheet());
    Rng rng(11);

    for (int i = 0; i < 3000; ++i) {
        std::string broken = whole;
        for (int k = 0; k < 3; ++k)
            broken[rng.below(static_cast<std::uint32_t>(broken.size()))] =
                static_cast<char>('0' + rng.below(10));
        const auto read = live::readRunSheet(broken);
        if (!read) continue;
        live::Day day;
        day.sheet = *read;
        const plan::Dispatch dispatch(day.sheet->problem, day.sheet->schedule);
        CHECK(live::lookAt(day, dispatch, fromBell(-1h)).tasks.size() == 4);
    }
}

TEST_CASE("a run sheet of a newer version says so") {
    std::string newer = live::writeRunSheet(smallSheet());
    newer.replace(newer.find("\"version\":1"), 11, "\"version\":2");

    const auto read = live::readRunSheet(newer);

    REQUIRE_FALSE(read);
    CHECK(read.error().what == live::SheetFault::What::Newer);
}
