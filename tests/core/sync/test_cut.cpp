/// Connections that break.

#include "crew.h"

using namespace samples;

namespace {

/// Of a later app; long, so that few of them fill a message.
Body picture(std::size_t bytes) {
    return Unknown{"picture", std::string(bytes, 'x')};
}

/// Two devices, each with what takes several messages, and with a touch while they talk.
struct Meeting {
    Crew crew;
    Tablet& nora = crew.add();
    Tablet& ben = crew.add();

    Meeting() {
        Crew::note(nora, kOrchard, std::vector<Body>(6, picture(100'000)));
        Crew::note(nora, kBarn, everyKind());
        Crew::note(ben, kOrchard, std::vector<Body>(3, picture(150'000)));
        Crew::note(ben, kLake, everyKind());
    }
    /// How many messages were heard; no more than `most`.
    int talk(int most) {
        int steps = 0;
        while (steps < most && crew.step()) {
            if (++steps == 9) Crew::touch(nora, kLake, 1);
            if (steps == 10) Crew::touch(ben, kOrchard, 2);
        }
        return steps;
    }
    /// The rest of those touches, when the connection was cut before them.
    void touchTheRest() {
        if (nora.touches == 6 + everyKind().size()) Crew::touch(nora, kLake, 1);
        if (ben.touches == 3 + everyKind().size()) Crew::touch(ben, kOrchard, 2);
    }
    void check() {
        checkSame(nora, ben);
        checkEachOnce(nora);
        checkEachOnce(ben);
        CHECK(nora.arrived.size() == 3 + everyKind().size() + 1);
        CHECK(ben.arrived.size() == 6 + everyKind().size() + 1);
    }
};

int messagesOfAWholeMeeting() {
    Meeting meeting;
    meeting.crew.connect(meeting.nora, meeting.ben);
    const int steps = meeting.talk(10'000);
    meeting.check();
    return steps;
}

}  // namespace

TEST_CASE("a connection that is cut at any message and taken up anew loses and doubles nothing") {
    const int whole = messagesOfAWholeMeeting();
    REQUIRE(whole > 20);
    for (int cutAfter = 0; cutAfter <= whole; ++cutAfter) {
        INFO("cut after " << cutAfter << " of " << whole);
        Meeting meeting;
        Link& first = meeting.crew.connect(meeting.nora, meeting.ben);
        meeting.talk(cutAfter);
        meeting.crew.cut(first);
        meeting.touchTheRest();

        meeting.crew.connect(meeting.nora, meeting.ben);
        meeting.crew.run();

        meeting.check();
    }
}

TEST_CASE("a connection that is cut again and again still comes to an end") {
    Meeting meeting;
    int heard = 0;
    // Each time a little more than greeting, clocks and heads.
    for (int times = 0; times < 40; ++times) {
        Link& link = meeting.crew.connect(meeting.nora, meeting.ben);
        for (int steps = 0; steps < 11 && meeting.crew.step(); ++steps)
            ++heard;
        meeting.crew.cut(link);
    }

    checkSame(meeting.nora, meeting.ben);
    checkEachOnce(meeting.nora);
    checkEachOnce(meeting.ben);
}

TEST_CASE("an app that is killed and opened anew goes on where its store is") {
    for (int killedAfter : {9, 10, 11, 12, 13, 14, 16, 18}) {
        Meeting meeting;
        Link& first = meeting.crew.connect(meeting.nora, meeting.ben);
        meeting.talk(killedAfter);
        meeting.crew.cut(first);
        meeting.touchTheRest();
        meeting.ben.open({});

        meeting.crew.connect(meeting.nora, meeting.ben);
        meeting.crew.run();

        meeting.check();
    }
}
