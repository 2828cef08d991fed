#include <algorithm>
#include <catch2/catch.hpp>

#include "service/what_helps.h"

using namespace cinder;
using namespace cinder::service;
using std::chrono::seconds;

namespace {

Stop stopOf(Spread time, std::uint32_t draw, std::int32_t servers = 0) {
    Stop stop;
    stop.everybody = time;
    stop.draw = draw;
    stop.servers = servers;
    return stop;
}

Spread around(int middle) {
    return Spread::between(seconds{middle / 2}, seconds{middle}, seconds{2 * middle});
}

Buffet somePlaces() {
    Buffet buffet{
        {stopOf(around(3), 1), stopOf(around(8), 2, 1), stopOf(around(5), 3), stopOf(around(4), 4)},
        1};
    for (std::size_t i = 1; i < buffet.stops.size(); ++i)
        buffet.stops[i].room = 1;
    return buffet;
}

Crowd crowdOf(std::int32_t guests) {
    Crowd crowd;
    crowd.guests = guests;
    return crowd;
}

}  // namespace

TEST_CASE("Everybody passes, nobody before he came, and in the order of the line") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Service service = playService(somePlaces(), crowdOf(60), seed);
        REQUIRE(service.guests.size() == 60);
        Duration before{0};
        for (const Pass& pass : service.guests) {
            CHECK(pass.joined <= pass.started);
            CHECK(pass.started < pass.passed);
            CHECK(pass.passed > before);
            before = pass.passed;
        }
        CHECK(service.length == before);
    }
}

TEST_CASE("The same seed gives the same service, another seed another one") {
    const Service one = playService(somePlaces(), crowdOf(60), 5);
    CHECK(one == playService(somePlaces(), crowdOf(60), 5));
    CHECK_FALSE(one == playService(somePlaces(), crowdOf(60), 6));
}

TEST_CASE("No guests and no stops are an empty service") {
    CHECK(playService(somePlaces(), crowdOf(0), 1) == Service{});
    CHECK(playService({}, crowdOf(10), 1) == Service{});
    CHECK(flowOf({}, crowdOf(10)) == Flow{});
    CHECK(whatHelps(somePlaces(), crowdOf(0), {}).empty());
}

TEST_CASE("Who takes one dish of a choice leaves the others, and shares hold") {
    const Option lamb{DishId{"lamb"}, 0, 0.6, Spread::exactly(seconds{8}), 9};
    const Option peppers{DishId{"peppers"}, 0.6, 0.3, Spread::exactly(seconds{8}), 9};
    int lambs = 0, pepperss = 0;
    const int guests = 20'000;
    for (std::int32_t guest = 0; guest < guests; ++guest) {
        const bool takesLamb = takes(lamb, 3, guest);
        const bool takesPeppers = takes(peppers, 3, guest);
        CHECK_FALSE((takesLamb && takesPeppers));
        lambs += takesLamb ? 1 : 0;
        pepperss += takesPeppers ? 1 : 0;
    }
    CHECK(lambs / static_cast<double>(guests) == Approx(0.6).margin(0.01));
    CHECK(pepperss / static_cast<double>(guests) == Approx(0.3).margin(0.01));
}

TEST_CASE("A table is sent when the queue is short, and never more than one at once") {
    Crowd crowd = crowdOf(40);
    crowd.release = {Release::How::WhenShort, 8, {}, 2, seconds{20}};
    const Service service = playService(somePlaces(), crowd, 4);
    const Flow flow = flowOf(somePlaces(), crowd);
    CHECK(*std::max_element(flow.queue.begin(), flow.queue.end()) <= 10);
    for (std::size_t i = 0; i < 40; ++i)
        CHECK(service.guests[i].joined == service.guests[i - i % 8].joined);
    const Flow atOnce = flowOf(somePlaces(), crowdOf(40));
    CHECK(flow.longestWait < atOnce.longestWait / 2);
    // The price of a short queue is the walk of the first table, not a longer service.
    CHECK(flow.usual < atOnce.usual + seconds{90});
}

TEST_CASE("Tables sent by the clock come by the clock") {
    Crowd crowd = crowdOf(20);
    crowd.release = {Release::How::EachTable, 8, seconds{90}, 0, seconds{10}};
    const Service service = playService(somePlaces(), crowd, 4);
    CHECK(service.guests[0].joined == seconds{10});
    CHECK(service.guests[7].joined == seconds{10});
    CHECK(service.guests[8].joined == seconds{100});
    CHECK(service.guests[19].joined == seconds{190});
}

TEST_CASE("The bottleneck is the stop that works most, and the queue begins full and ends empty") {
    const Flow flow = flowOf(somePlaces(), crowdOf(80));
    REQUIRE(flow.bottleneck);
    CHECK(*flow.bottleneck == 1);
    CHECK(flow.load[1] > 0.9);
    CHECK(flow.load[0] < 0.6);
    CHECK(flow.queue.front() > 78);
    CHECK(flow.queue.back() == 0);
    CHECK(std::is_sorted(flow.queue.rbegin(), flow.queue.rend()));
    CHECK(flow.early <= flow.usual);
    CHECK(flow.usual <= flow.late);
    CHECK(flow.meanWait < flow.longestWait);
    CHECK(flow.longestWait < flow.usual);
}

TEST_CASE("A second server at the bottleneck helps most, a second side without one hardly") {
    const Flow now = flowOf(somePlaces(), crowdOf(80));
    const auto gains = whatHelps(somePlaces(), crowdOf(80), now);
    REQUIRE(gains.size() == 5);
    const auto saved = [&](Change::What what) {
        const auto found = std::find_if(gains.begin(), gains.end(),
                                        [&](const Gain& g) { return g.change.what == what; });
        REQUIRE(found != gains.end());
        return found->saved;
    };
    CHECK(gains.front().change.what == Change::What::SideAndServer);
    CHECK(saved(Change::What::SecondServer) > std::chrono::minutes{2});
    CHECK(saved(Change::What::SecondSide) < std::chrono::minutes{1});
    CHECK(saved(Change::What::SideAndServer) > saved(Change::What::SecondServer));
    // A stop that stands apart stands in nobody's way, but works no quicker.
    CHECK(saved(Change::What::TableOfItsOwn) >= seconds{0});
    CHECK(saved(Change::What::TableOfItsOwn) < std::chrono::minutes{1});
}

TEST_CASE("Moving a stop to the end leaves the cutlery last") {
    const Buffet moved = withChange(somePlaces(), {Change::What::MoveToTheEnd, 1});
    CHECK(moved.stops[2].servers == 1);
    CHECK(moved.stops[3] == somePlaces().stops[3]);
    CHECK(moved.stops[1] == somePlaces().stops[2]);
}

TEST_CASE("Who takes two dishes from one pair of hands takes the time of both") {
    Stop mains = stopOf({}, 1, 1);
    mains.past = seconds{1};
    mains.further = Spread::exactly(seconds{3});
    mains.options = {{DishId{"lamb"}, 0, 1, Spread::exactly(seconds{8}), 2},
                     {DishId{"corn"}, 0, 1, Spread::exactly(seconds{9}), 3}};
    CHECK(playService({{mains}, 1}, crowdOf(10), 1).length == seconds{110});
    mains.options[1].share = 0;
    CHECK(playService({{mains}, 1}, crowdOf(10), 1).length == seconds{80});
    mains.options[0].share = 0;
    CHECK(playService({{mains}, 1}, crowdOf(10), 1).length == seconds{10});
}
