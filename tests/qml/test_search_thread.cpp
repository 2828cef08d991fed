/// A search that runs elsewhere: who hears its answer, and who does not.

#include <catch2/catch.hpp>

#include <atomic>
#include <memory>
#include <optional>
#include <thread>

#include <QCoreApplication>

#include "search_thread.h"

using cinder::face::SearchThread;

namespace {

using Stop = std::atomic<bool>;

int seven(const Stop&) {
    return 7;
}

/// Searches until it is told to end.
int untilStopped(const Stop& stop) {
    while (!stop)
        std::this_thread::yield();
    return 1;
}

}  // namespace

TEST_CASE("an answer comes out of the event loop of the thread that asked") {
    SearchThread search;
    std::optional<int> heard;
    std::thread::id searched, told;
    search.start(
        [&searched](const Stop&) {
            searched = std::this_thread::get_id();
            return 7;
        },
        [&](int answer) {
            told = std::this_thread::get_id();
            heard = answer;
        });
    CHECK(search.isBusy());
    CHECK_FALSE(heard);
    while (!heard)
        QCoreApplication::processEvents();
    CHECK(heard == 7);
    CHECK(told == std::this_thread::get_id());
    CHECK(searched != told);
    CHECK_FALSE(search.isBusy());
}

TEST_CASE("the late answer of a search that was stopped is not heard") {
    SearchThread search;
    bool isHeard = false;
    // It never looks at the flag, so that its answer comes although it has been stopped.
    search.start(seven, [&](int) { isHeard = true; });
    search.stop();
    CHECK_FALSE(search.isBusy());
    search.settle();
    CHECK_FALSE(isHeard);
}

TEST_CASE("a search that is deep in something is stopped without waiting for it") {
    SearchThread search;
    std::atomic<bool> mayEnd{false};
    int heard = 0;
    search.start([&mayEnd](const Stop&) { return untilStopped(mayEnd); },
                 [&](int answer) { heard += answer; });
    search.stop();
    search.start(seven, [&](int answer) { heard += answer; });
    while (heard == 0)
        QCoreApplication::processEvents();
    CHECK(heard == 7);
    mayEnd = true;
    search.settle();
    CHECK(heard == 7);
}

TEST_CASE("a search that is stopped ends, and the next one is heard alone") {
    SearchThread search;
    int heard = 0;
    search.start(untilStopped, [&](int answer) { heard += answer; });
    search.start(seven, [&](int answer) { heard += answer; });
    search.settle();
    CHECK(heard == 7);
}

TEST_CASE("an answer may begin the next search, and both are waited for") {
    SearchThread search;
    int heard = 0;
    search.start(seven, [&](int first) {
        CHECK_FALSE(search.isBusy());
        search.start(seven, [&heard, first](int second) { heard = first + second; });
    });
    search.settle();
    CHECK(heard == 14);
    CHECK_FALSE(search.isBusy());
}

TEST_CASE("who goes away while a search runs hears nothing and waits for its end") {
    bool isHeard = false;
    std::atomic<bool> hasEnded{false};
    {
        SearchThread search;
        search.start(
            [&hasEnded](const Stop& stop) {
                const int found = untilStopped(stop);
                hasEnded = true;
                return found;
            },
            [&](int) { isHeard = true; });
    }
    CHECK(hasEnded);
    QCoreApplication::processEvents();
    CHECK_FALSE(isHeard);
}
