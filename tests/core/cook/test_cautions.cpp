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
    for (const char* wanted : {"carbon-monoxide", "starter-fluid", "hot-grease", "thermometer"})
        CHECK(ids.count(wanted) == 1);
}
