// Prints how random days of one pan are judged against a second opinion, how fast, and how long it
// takes to verify a record of 10,000 entries. Asserts nothing about time.
//
//     bench_safety [days]

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "../core/journal/samples.h"
#include "../core/safety/random_days.h"
#include "journal/sqlite/sqlite_store.h"
#include "safety/standing.h"

namespace {

using Clock = std::chrono::steady_clock;

double milliseconds(Clock::time_point since) {
    return std::chrono::duration<double, std::milli>(Clock::now() - since).count();
}

int judgeDays(std::uint64_t days) {
    std::uint64_t kept = 0, cooled = 0, discarded = 0, served = 0, disagreements = 0, unsafe = 0;
    double spent = 0;
    for (std::uint64_t seed = 1; seed <= days; ++seed) {
        samples::RandomSheet random(seed);
        const samples::Sheet sheet = random.make();
        const int now = random.later();
        const auto entries = samples::entriesOf(sheet);
        const auto begun = Clock::now();
        const auto standing =
            cinder::safety::standingOf(samples::kPan, samples::ruleOf(random.stew()), {}, entries,
                                       samples::kEleven + std::chrono::minutes{now});
        spent += milliseconds(begun);
        const samples::Oracle oracle(sheet, random.stew(), now);
        const bool stays = standing.leftover != cinder::safety::Leftover::Discard;
        kept += standing.leftover == cinder::safety::Leftover::Keep ? 1 : 0;
        cooled += standing.leftover == cinder::safety::Leftover::Cool ? 1 : 0;
        discarded += stays ? 0 : 1;
        served += standing.mayServe ? 1 : 0;
        disagreements += stays != oracle.mayStay() ? 1 : 0;
        unsafe += (stays && !oracle.mayStay()) || (standing.mayServe && oracle.mustNotBeServed());
    }
    std::printf("days judged              %llu\n", static_cast<unsigned long long>(days));
    std::printf("keep / cool / discard    %llu / %llu / %llu\n",
                static_cast<unsigned long long>(kept), static_cast<unsigned long long>(cooled),
                static_cast<unsigned long long>(discarded));
    std::printf("may be served            %llu\n", static_cast<unsigned long long>(served));
    std::printf("disagree with the oracle %llu\n", static_cast<unsigned long long>(disagreements));
    std::printf("safe where it says no    %llu\n", static_cast<unsigned long long>(unsafe));
    std::printf("per day                  %.4f ms\n", spent / static_cast<double>(days));
    return unsafe == 0 && disagreements == 0 ? 0 : 1;
}

int verifyRecord(int count) {
    using namespace samples;
    const Folder folder;
    auto store = journal::SqliteStore::open(folder.file("record.journal"));
    if (!store) return 1;
    std::vector<journal::Operation> operations;
    for (int i = 1; i <= count; ++i) {
        journal::Operation op;
        op.event = EventId{"orchard"};
        op.id = {(*store)->device(), static_cast<std::uint64_t>(i)};
        op.stamp = {kEleven + std::chrono::seconds{i}, 0};
        op.person = PersonId{"nora"};
        op.body = safety::Fact{FoodMeasured{kPan,
                                            Purpose::HoldHot,
                                            inCelsius(60),
                                            kProbe,
                                            {},
                                            {},
                                            {},
                                            kEleven + std::chrono::seconds{i}}};
        operations.push_back(std::move(op));
    }
    auto begun = Clock::now();
    if (!(*store)->append(operations)) return 1;
    std::printf("append %d entries     %.1f ms\n", count, milliseconds(begun));
    begun = Clock::now();
    const auto broken = (*store)->verify();
    std::printf("verify %d entries     %.1f ms, %s\n", count, milliseconds(begun),
                broken && !*broken ? "whole" : "BROKEN");
    return broken && !*broken ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
    const auto days = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 100'000ULL;
    const int judged = judgeDays(days);
    return verifyRecord(10'000) + judged;
}
