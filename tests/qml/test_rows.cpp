/// What the rows of a board say, and which timers call.

#include <catch2/catch.hpp>

#include "caution_list.h"
#include "day.h"
#include "fixed_day.h"
#include "row_maker.h"
#include "settings.h"
#include "strike.h"

using namespace cinder;
using namespace cinder::face;
using namespace cinder::face::fixed;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

/// Words for the orchard's day.
struct Speaker {
    explicit Speaker(const app::Snapshot& day) : settings(QString()), words(settings), rows(words) {
        words.setPlace(day.offset, day.serve);
    }
    Settings settings;
    Words words;
    RowMaker rows;
};

app::TaskCard& cardIn(app::Snapshot& day, const char* id) {
    const auto at = std::find_if(day.tasks.begin(), day.tasks.end(),
                                 [&](const auto& card) { return card.id == TaskId(id); });
    REQUIRE(at != day.tasks.end());
    return *at;
}

live::Timer restOver(const app::Snapshot& day) {
    live::Timer timer;
    timer.name = "rest:rest/0";
    timer.kind = live::TimerKind::RestOver;
    timer.task = TaskId("rest/0");
    timer.due = day.now - seconds(20);
    return timer;
}

QString said(Strike& strike, const char* key, const char* role) {
    RowList& rows = *strike.lines();
    const auto names = rows.roleNames();
    for (int i = 0; i < rows.rowCount(); ++i) {
        const auto index = rows.index(i);
        if (rows.data(index, names.key("key")).toString() == QLatin1String(key))
            return rows.data(index, names.key(role)).toString();
    }
    return {};
}

}  // namespace

TEST_CASE("a countdown is to the second when it is near and never looks like a time of day") {
    CHECK(Words::timeLeft(seconds(599)).text() == QStringLiteral("9:59"));
    CHECK(Words::timeLeft(seconds(600)).text() == QStringLiteral("10\u00a0min"));
    CHECK(Words::timeLeft(seconds(659)).text() == QStringLiteral("10\u00a0min"));
    CHECK(Words::timeLeft(hours(1) + minutes(8)).text() == QStringLiteral("1:08\u00a0h"));
    CHECK(Words::timeLeft(seconds(0)).text() == QStringLiteral("0:00"));
    CHECK(Words::timeLeft(-seconds(90)).text() == QStringLiteral("+1:30"));
    CHECK(Words::timeLeft(-minutes(12)).text() == QStringLiteral("+12\u00a0min"));
}

TEST_CASE("time to spare is never said to be more than it is") {
    CHECK(Words::span(minutes(4) + seconds(30)) == QStringLiteral("5\u00a0min"));
    CHECK(Words::spareSpan(minutes(4) + seconds(30)) == QStringLiteral("4\u00a0min"));
    CHECK(Words::spareSpan(seconds(59)) == QStringLiteral("59\u00a0s"));
    CHECK(Words::spareSpan(minutes(119) + seconds(59)) ==
          QStringLiteral("1\u00a0h\u00a059\u00a0min"));
    CHECK(Words::spareSpan(-minutes(3)) == QStringLiteral("0\u00a0s"));
    CHECK(Words::slack(minutes(9) + seconds(45)).startsWith(QStringLiteral("9\u00a0min")));
    CHECK(Words::spare(-minutes(4) - seconds(45)).startsWith(QStringLiteral("4\u00a0min")));
    CHECK(Words::spare(minutes(4) + seconds(45)).startsWith(QStringLiteral("5\u00a0min")));
}

TEST_CASE("a rest that ended by itself calls until somebody goes on with it") {
    app::Snapshot day = orchardLunch(false);
    cardIn(day, "rest/0").state = app::TaskState::Done;
    day.timers = {restOver(day)};
    REQUIRE(isCalling(day.timers.front(), day));
    const auto calls = Speaker(day).rows.ringing(day);
    REQUIRE(calls.size() == 1);
    CHECK(calls.front().icon == QLatin1String("rest"));
    CHECK(calls.front().actVerb.isEmpty());

    day.timers.front().kind = live::TimerKind::Pull;
    CHECK_FALSE(isCalling(day.timers.front(), day));
}

TEST_CASE("a time of day on a plate says whether something starts or ends then") {
    app::Snapshot day = orchardLunch(false);
    Speaker speaker(day);
    for (const auto& row : speaker.rows.all(day)) {
        const bool isGoing =
            row.mark == QLatin1String("running") || row.mark == QLatin1String("over");
        INFO(row.key.toStdString());
        CHECK(row.whenText == (isGoing ? QStringLiteral("ends ") + row.finishText
                                       : QStringLiteral("starts ") + row.startText));
    }
}

TEST_CASE("a call of the record goes to where its food is, by what it is about and not its name") {
    app::Snapshot day = orchardLunch(false);
    live::Timer timer;
    timer.name = "any name";
    timer.kind = live::TimerKind::Check;
    timer.dish = day.food.pans.front().pan.dish;
    timer.due = day.now - seconds(20);
    const auto call = [&](live::TimerOccasion occasion) {
        timer.occasion = occasion;
        day.timers = {timer};
        return Speaker(day).rows.ringing(day).at(0);
    };
    CHECK(call(live::TimerOccasion::CheckAtFire).board == QLatin1String("fire"));
    CHECK(call(live::TimerOccasion::Check).board == QLatin1String("buffet"));
    CHECK(call(live::TimerOccasion::Check).actVerb == QLatin1String("Measure"));
    CHECK(call(live::TimerOccasion::Discard).call == QLatin1String("Discard it now"));
    CHECK(call(live::TimerOccasion::NextPan).call == QLatin1String("Start the next pan"));
}

TEST_CASE("who is needed now is told apart from who has time, with what is awaited") {
    app::Snapshot day = orchardLunch(false);
    auto rows = Speaker(day).rows.people(day);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].isDue);
    CHECK(rows[0].awaited == QLatin1String("pull"));
    CHECK_FALSE(rows[1].isDue);
    day.now += minutes(2);
    rows = Speaker(day).rows.people(day);
    CHECK(rows[0].countdown == QLatin1String("+2:00"));
    // Whoever has gone is told apart as long as the plan counts on them, and then not at all.
    day.people[0].isHere = false;
    rows = Speaker(day).rows.people(day);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].name.endsWith(QLatin1String(", gone")));
    day.people[0].now.reset();
    day.people[0].next.reset();
    CHECK(Speaker(day).rows.people(day).size() == 1);
}

TEST_CASE("a fire of which no step says that it is out is not called safe") {
    FixedDoor door(orchardLunch(false));
    Settings settings{QString()};
    Strike strike(door, settings);
    auto& card = cardIn(door.day, "strike");
    card.state = app::TaskState::Done;
    strike.show(door.look());
    CHECK(said(strike, "fire", "mark") == QLatin1String("done"));
    card.station = StationId("prep");
    strike.show(door.look());
    CHECK(said(strike, "fire", "mark") == QLatin1String("waiting"));
    CHECK(said(strike, "fire", "standing").contains(QLatin1String("look at the coals")));
    // Nothing can be noted of it here, so it is not called undone for good.
    CHECK_FALSE(strike.verdict().contains(QLatin1String("fire")));
    CHECK_FALSE(strike.mayLeave());
    // The rest of what the verdict waits for.
    for (auto& pan : door.day.food.pans)
        pan.standing.leftover = safety::Leftover::Keep;
    door.day.food.signature.emplace();
    strike.show(door.look());
    CHECK_FALSE(strike.mayLeave());
    card.station = StationId("fire");
    card.state = app::TaskState::Skipped;
    strike.show(door.look());
    CHECK(strike.verdict().contains(QLatin1String("fire")));
}

TEST_CASE("a clock that was set can be said to be right, by touch of the notice") {
    app::Snapshot snapshot = orchardLunch(false);
    snapshot.notices = {{app::Notice::What::ClockJumped, {}, hours(1)}};
    FixedDoor door(std::move(snapshot));
    Settings settings{QString()};
    Day day(door, settings);
    day.beat();
    REQUIRE(day.notices()->rowCount() == 1);
    const auto names = day.notices()->roleNames();
    CHECK_FALSE(
        day.notices()->data(day.notices()->index(0), names.key("verb")).toString().isEmpty());
    day.followClock();
    CHECK(door.touches.back() == "clock");
}

TEST_CASE("beside the source of a caution our own words are Spanish on a Spanish device") {
    Settings settings{QString()};
    settings.setLanguage(QStringLiteral("es"));
    CautionList cautions(settings);
    RowList& rows = *cautions.rows();
    const auto names = rows.roleNames();
    REQUIRE(rows.rowCount() > 20);
    // In the brackets, and where two sources are joined; a title may well be English.
    for (int i = 0; i < rows.rowCount(); ++i) {
        const QString source = rows.data(rows.index(i), names.key("source"))
                                   .toString()
                                   .section(QStringLiteral(" \u00b7 "), 0, 0);
        INFO(source.toStdString());
        for (const char* english : {" and ", "the ", " from ", " is ours", " by ", "guidance",
                                    "practice", " page", " rules", " notes"})
            CHECK_FALSE(source.contains(QLatin1String(english)));
    }
}
