#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "cook/cautions.h"

using namespace cinder::cook;

TEST_CASE("every moment at the fire has its cautions, each with a source") {
    std::set<FireMoment> moments;
    std::set<std::string_view> ids;
    for (const FireCaution& caution : fireCautions()) {
        INFO(caution.id);
        moments.insert(caution.moment);
        CHECK(ids.insert(caution.id).second);
        CHECK(caution.text.size() > 20);
        CHECK(caution.spanish.size() > 20);
        CHECK(caution.source.size() > 5);
    }
    CHECK(moments.size() == 5);
    // Those that are told where the work is done, in both languages.
    for (const char* wanted : {"carbon-monoxide", "starter-fluid", "hot-grease", "thermometer"}) {
        INFO(wanted);
        const auto all = fireCautions();
        const auto found =
            std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == wanted; });
        REQUIRE(found != all.end());
        CHECK(found->brief.size() > 20);
        CHECK(found->briefSpanish.size() > 20);
    }
}
