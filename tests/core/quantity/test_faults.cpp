/// What an event lacks or contradicts is answered beside its field, never by a silent default.

#include <algorithm>

#include "demo.h"
#include "quantity/build/reckon.h"

using namespace cinder;
using quantity::reckon;
using What = event::Fault::What;

namespace {

constexpr std::size_t kSlaw = 0, kHalloumi = 4, kLamb = 6;

event::Serving& serving(event::Event& event, std::size_t dish) {
    return *event.menu.at(dish).serving;
}

/// The only fault of the changed orchard lunch.
template <class Change>
event::Fault faultAfter(Change change) {
    auto event = test::orchard();
    change(event);
    const auto all = reckon(event);
    for (const auto& fault : all.faults)
        UNSCOPED_INFO(event::describe(fault));
    REQUIRE(all.faults.size() == 1);
    return all.faults.front();
}

}  // namespace

TEST_CASE("A missing yield is named where it belongs and nothing is bought on a guess") {
    auto event = test::orchard();
    serving(event, kLamb).ingredients[0].yields.clear();
    const auto all = reckon(event);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].what == What::Missing);
    CHECK(all.faults[0].path == "/menu/6/serving/ingredients/0/yields");
    CHECK(std::none_of(all.purchase.begin(), all.purchase.end(),
                       [](const auto& buy) { return buy.id.text() == "lamb-leg"; }));
    CHECK(all.dishes[kLamb].portions);
}

TEST_CASE("A yield nobody published is a reference that leads nowhere") {
    const auto fault =
        faultAfter([](auto& event) { serving(event, kSlaw).ingredients[0].yields[0] = "cy_0"; });
    CHECK(fault.what == What::Dangling);
    CHECK(fault.path == "/menu/0/serving/ingredients/0/yields/0");
}

TEST_CASE("Each thing a dish does not say is missing at its own place") {
    const auto path = [](auto change) {
        const auto fault = faultAfter(change);
        CHECK(fault.what == What::Missing);
        return fault.path;
    };
    CHECK(path([](auto& e) { serving(e, kSlaw).takePercent.reset(); }) ==
          "/menu/0/serving/takePercent");
    CHECK(path([](auto& e) { serving(e, kSlaw).portion.reset(); }) ==
          "/menu/0/serving/portionGrams");
    CHECK(path([](auto& e) { serving(e, kSlaw).gramsPerLitre.reset(); }) ==
          "/menu/0/serving/gramsPerLitre");
    CHECK(path([](auto& e) { serving(e, kSlaw).vessel.reset(); }) == "/menu/0/serving/vessel");
    CHECK(path([](auto& e) { serving(e, kSlaw).vesselVolume.reset(); }) ==
          "/menu/0/serving/vesselLitres");
    CHECK(path([](auto& e) { serving(e, kSlaw).vesselWidth.reset(); }) ==
          "/menu/0/serving/vesselWidthMm");
    CHECK(path([](auto& e) { serving(e, kSlaw).ingredients.clear(); }) ==
          "/menu/0/serving/ingredients");
    CHECK(path([](auto& e) { serving(e, kLamb).panDepth.reset(); }) == "/menu/6/serving/panDepth");
    CHECK(path([](auto& e) { e.menu[kHalloumi].pieces->mass.reset(); }) ==
          "/menu/4/pieces/massGrams");
    CHECK(path([](auto& e) { e.menu[kSlaw].serving.reset(); }) == "/menu/0/serving");
    CHECK(path([](auto& e) { e.quantities->service.reset(); }) == "/quantities/serviceMinutes");
    CHECK(path([](auto& e) { e.quantities->buffer.reset(); }) == "/quantities/bufferMinutes");
    CHECK(path([](auto& e) { e.site.travel.reset(); }) == "/site/travelMinutes");
    CHECK(path([](auto& e) { e.site.arrival.reset(); }) == "/site/arrival");
}

TEST_CASE("Allergens nobody has stated are missing, which is not the same as none") {
    auto text = event::write(test::orchard());
    const std::string stated = "\"contains\": [\n        \"mustard\"\n      ],";
    const auto at = text.find(stated);
    REQUIRE(at != std::string::npos);
    const auto read = event::parse(text.erase(at, stated.size()));
    REQUIRE_FALSE(read.has_value());
    REQUIRE(read.error().size() == 1);
    CHECK(read.error()[0].what == What::Missing);
    CHECK(read.error()[0].path == "/menu/0/contains");
}

TEST_CASE("Nobody is no event") {
    auto event = test::orchard();
    event.guests.adults = 0;
    event.guests.children = 0;
    const auto all = reckon(event);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].path == "/guests/adults");
    CHECK(all.faults[0].found == "0");
    CHECK(all.faults[0].allowed == "1..5000");
    CHECK(all.purchase.empty());
}

TEST_CASE("Five thousand guests are reckoned, and told what does not go together") {
    auto event = test::orchard();
    event.guests.adults = 5000;
    event.guests.children = 0;
    const auto all = reckon(event);
    const auto at = [&](const std::string& path) {
        return std::any_of(all.faults.begin(), all.faults.end(),
                           [&](const auto& fault) { return fault.path == path; });
    };
    CHECK(at("/guests/adults"));        // they never pass the line while it is open
    CHECK(at("/menu/6/pieces/total"));  // eight legs of lamb
    REQUIRE(all.dishes[kSlaw].portions);
    CHECK(all.dishes[kSlaw].portions->amount.value == 4675);
}

TEST_CASE("More than the app is for is out of range") {
    auto event = test::orchard();
    event.guests.adults = 5001;
    event.guests.children = 0;
    const auto all = reckon(event);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].what == What::OutOfRange);
    CHECK(all.faults[0].allowed == "1..5000");
}

TEST_CASE("Fewer pieces than the portions need is a contradiction, with the least that would do") {
    const auto total = faultAfter([](auto& event) { event.menu[kLamb].pieces->total = 7; });
    CHECK(total.path == "/menu/6/pieces/total");
    CHECK(total.found == "7");
    CHECK(total.allowed == "8..20000");

    const auto rate =
        faultAfter([](auto& event) { event.menu[kHalloumi].pieces->perHundredGuests = 15; });
    CHECK(rate.path == "/menu/4/pieces/perHundredGuests");
    CHECK(rate.allowed == "20..20000");
}

TEST_CASE("A choice that leaves somebody without is told what it takes") {
    const auto fault = faultAfter([](auto& event) {
        serving(event, 3).choice.reset();
        event.guests.diets.clear();
        serving(event, kLamb).takePercent = 20;
    });
    CHECK(fault.what == What::OutOfRange);
    CHECK(fault.path == "/menu/6/serving/takePercent");
    CHECK(fault.found == "20");
    CHECK(fault.allowed == "30..100");
}

TEST_CASE("A diet the mains do not cover is a contradiction") {
    const auto fault = faultAfter([](auto& event) { serving(event, 3).choice.reset(); });
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/guests/diets/1/count");  // three vegans, no vegan main
    CHECK(fault.allowed == "/menu");
}

TEST_CASE("A bowl wider than the table is a contradiction") {
    const auto fault = faultAfter(
        [](auto& event) { serving(event, kSlaw).vesselWidth = Length::fromMillimetres(700); });
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/0/serving/vesselWidthMm");
    CHECK(fault.allowed == "/kit/tables");
}

TEST_CASE("Two packs for one ingredient is a contradiction") {
    const auto fault = faultAfter([](auto& event) {
        auto& onion = serving(event, 8).ingredients[1];
        REQUIRE(onion.id.text() == "onion");
        onion.pack->mass = Mass::fromGrams(1000);
    });
    CHECK(fault.what == What::Contradiction);
    CHECK(fault.path == "/menu/8/serving/ingredients/1/pack");
}

TEST_CASE("Too few chafers says how many it takes") {
    const auto fault = faultAfter([](auto& event) {
        event.kit.tables[0].count = 3;
        serving(event, 1).vessel = event::Vessel::Chafer;
        serving(event, 1).panSize = event::PanSize::Full;
        serving(event, 1).panDepth = event::PanDepth::Medium;
    });
    CHECK(fault.path == "/kit/equipment/2/count");
    CHECK(fault.found == "4");
    CHECK(fault.allowed == "5..1000");
}

TEST_CASE("Food that cannot be cold before the van leaves is told when it must be done") {
    const auto fault = faultAfter(
        [](auto& event) { event.menu[3].ahead[0].beforeServe = std::chrono::minutes{300}; });
    CHECK(fault.path == "/menu/3/ahead/0/minutesBefore");
    CHECK(fault.found == "300");
    // Two hours at the site, 35 on the road, 20 kept, six to cool (FDA Food Code 3-501.14).
    CHECK(fault.allowed == "535..4320");
}
