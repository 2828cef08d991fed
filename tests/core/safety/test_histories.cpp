#include <catch2/catch.hpp>

#include "random_days.h"

using namespace samples;

namespace {

constexpr std::uint64_t kHistories = 4000;

Standing judge(const std::vector<Entry>& entries, int minute, const Stew& stew = {},
               const Pan& pan = kPan) {
    return standingOf(pan, ruleOf(stew), {}, entries, kEleven + std::chrono::minutes{minute});
}

std::string text(const Sheet& sheet, int now) {
    std::string all = "now " + std::to_string(now) + ":";
    for (const Line& line : sheet)
        all += " [" + std::to_string(line.minute) + " k" +
               std::to_string(static_cast<int>(line.kind)) + " " + std::to_string(line.tenths) +
               (line.isFahrenheit ? "F" : "C") + " about " + std::to_string(line.about) + " act" +
               std::to_string(static_cast<int>(line.action)) + "]";
    return all;
}

}  // namespace

TEST_CASE("random days are judged as the rules' text judges them") {
    int stayed = 0;
    for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
        RandomSheet random(seed);
        const Sheet sheet = random.make();
        const int now = random.later();
        const Standing standing = judge(entriesOf(sheet), now, random.stew());
        const Oracle oracle(sheet, random.stew(), now);
        const bool stays = standing.leftover != Leftover::Discard;
        stayed += stays ? 1 : 0;
        if (stays == oracle.mayStay() && !(standing.mayServe && oracle.mustNotBeServed())) continue;
        CAPTURE(seed, text(sheet, now), stays, oracle.mayStay(), standing.mayServe,
                random.stew().isRaw, random.stew().since.value_or(0));
        FAIL("the two disagree");
    }
    CHECK(stayed > static_cast<int>(kHistories / 10));
    CHECK(stayed < static_cast<int>(kHistories * 9 / 10));
}

TEST_CASE("the order in which entries arrive changes nothing") {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        RandomSheet random(seed);
        const Sheet sheet = random.make();
        const int now = random.later();
        auto entries = entriesOf(sheet);
        const Standing standing = judge(entries, now, random.stew());
        std::mt19937_64 shuffler(seed);
        for (int i = 0; i < 3; ++i) {
            std::shuffle(entries.begin(), entries.end(), shuffler);
            REQUIRE(judge(entries, now, random.stew()) == standing);
        }
    }
}

TEST_CASE("food that is lost stays lost, whatever is written later") {
    int lost = 0;
    for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
        RandomSheet random(seed);
        const Sheet sheet = random.make();
        const int now = random.later();
        auto entries = entriesOf(sheet);
        if (!judge(entries, now, random.stew()).lost) continue;
        ++lost;
        RandomSheet more(seed + 1'000'000);
        const Sheet added = more.make();
        for (Entry entry : entriesOf(added)) {
            entry.id.device = DeviceId{"phone"};
            const auto move = [&](auto& fact) { fact.at += std::chrono::minutes{now + 1}; };
            std::visit(move, entry.fact);
            // It is about what was written with it.
            if (auto* again = std::get_if<FoodMeasured>(&entry.fact); again && again->corrects)
                again->corrects->device = entry.id.device;
            if (auto* action = std::get_if<ActionTaken>(&entry.fact))
                action->entry.device = entry.id.device;
            entries.push_back(entry);
        }
        const Standing later = judge(entries, now + 1 + more.later(), random.stew());
        CAPTURE(seed);
        REQUIRE(later.lost);
        REQUIRE(later.leftover == Leftover::Discard);
        REQUIRE_FALSE(later.mayServe);
    }
    CHECK(lost > static_cast<int>(kHistories / 10));
}

TEST_CASE("a discard or a clock that is heard late is never overlooked") {
    for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
        RandomSheet random(seed);
        const Sheet sheet = random.make();
        const int now = random.later();
        auto entries = entriesOf(sheet);
        const auto place = static_cast<std::size_t>(random.below(static_cast<int>(sheet.size())));
        Entry late = entries[place];
        const Instant at = instantOf(late.fact);
        late.id = {DeviceId{"phone"}, 1};
        late.fact = random.below(2) == 0
                        ? Fact{PanDiscarded{kPan, at}}
                        : Fact{ControlLeft{kPan, TimeRule::Hot, inCelsius(60), kProbe, at}};
        entries.push_back(late);
        CAPTURE(seed, text(sheet, now));
        REQUIRE(judge(entries, now, random.stew()).leftover == Leftover::Discard);
    }
}

TEST_CASE("a day that goes on in another pan ends as it would have in the first") {
    using Kind = Line::Kind;
    int moves = 0, sound = 0;
    for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
        RandomSheet random(seed);
        const Sheet sheet = random.make();
        const int now = random.later();
        const auto stays = judge(entriesOf(sheet), now, random.stew());
        const Pan second{kPan.dish, kPan.number + 1};
        for (std::size_t at = 1; at < sheet.size(); ++at) {
            // A pan thrown away is not filled into another one by anybody.
            if (sheet[at].kind == Kind::Thrown) break;
            const bool isFirst = isFood(sheet[at]) || sheet[at].kind == Kind::OnTheWay ||
                                 sheet[at].kind == Kind::TimeStarted;
            if (!isFirst) continue;
            CAPTURE(seed, at, text(sheet, now));
            REQUIRE(judge(entriesOf(sheet, at), now, random.stew(), second) == stays);
            ++moves;
            sound += stays.mayServe ? 1 : 0;
        }
    }
    CHECK(moves > static_cast<int>(kHistories));
    CHECK(sound > static_cast<int>(kHistories / 10));
}
