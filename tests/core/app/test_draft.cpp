/// Writing an event on the device: every edit is in the journal before it shows, survives the
/// battery, and can be taken back.

#include <catch2/catch.hpp>

#include "demo_day.h"
#include "event/draft.h"
#include "event/edit.h"
#include "event/json.h"
#include "event/method_card.h"

using namespace cinder;
using namespace std::chrono_literals;
using app::Refusal;
using samples::Device;

namespace {

constexpr Instant kWinter{1'801'000'000'000ms};
const ZonedInstant kServe = parseRfc3339("2027-09-18T13:00:00-04:00").value();

std::string source(const std::string& path) {
    std::ifstream file(std::string(CINDER_SOURCE) + "/" + path);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

event::Dish card(const std::string& name) {
    return event::parseDish(source("assets/methods/" + name + ".json")).value();
}

app::NewEvent charcoalBuffet() {
    return {source("assets/templates/plain-charcoal-buffet.json"), LocalText("Harvest lunch"),
            kServe, "America/New_York"};
}

app::Edit guests(std::int32_t adults, std::int32_t children) {
    return
        [=](event::Event draft) { return event::withGuests(std::move(draft), adults, children); };
}
app::Edit dish(const std::string& name) {
    return [=](event::Event draft) { return event::withCard(std::move(draft), card(name)); };
}

/// A device with a new event begun on it.
struct Desk : Device {
    Desk() : Device(kWinter) {
        const auto begun = session->newDraft(charcoalBuffet());
        REQUIRE(begun);
        id = *begun;
    }
    void edit(const app::Edit& edit, const std::string& field) {
        const auto taken = session->edit(edit, field);
        if (!taken) UNSCOPED_INFO(app::describe(taken.error()));
        REQUIRE(taken);
    }
    /// The battery is pulled and put back.
    void lose() {
        restart();
        REQUIRE(session->open(id));
    }
    EventId id;
};

}  // namespace

TEST_CASE("a new event stands in the list before it has a plan") {
    Desk desk;
    const auto events = desk.session->events().value();
    REQUIRE(events.size() == 1);
    CHECK(events[0].isDraft);
    CHECK(events[0].name.in("en") == "Harvest lunch");
    CHECK(events[0].serve == kServe.at);
    CHECK(desk.session->draft()->timeZone == "America/New_York");
    CHECK_FALSE(desk.session->described());
    CHECK_FALSE(desk.session->look());
    CHECK(desk.id.text().starts_with("2027-09-18-"));

    const auto another = desk.session->newDraft(charcoalBuffet());
    REQUIRE(another);
    CHECK(*another != desk.id);
    CHECK(desk.session->events().value().size() == 2);
}

TEST_CASE("every edit is in the journal before it shows, and outlives the battery") {
    Desk desk;
    desk.edit(guests(88, 8), "/guests/adults");
    desk.edit(dish("lamb-leg"), "/menu");
    const event::Event shown = *desk.session->draft();

    const auto written = desk.store->read(desk.id).value();
    REQUIRE(written.size() == 3);
    const auto& last = std::get<journal::EventDrafted>(written.back().body);
    CHECK(last.field == "/menu");
    CHECK(event::parseDraft(last.document).value() == shown);

    desk.lose();
    REQUIRE(desk.session->draft());
    CHECK(*desk.session->draft() == shown);
    CHECK(shown.guests.adults == 88);
    CHECK(shown.menu.size() == 1);
}

TEST_CASE("edits are taken back one by one to the beginning, also after a restart") {
    Desk desk;
    CHECK_FALSE(desk.session->canUndoEdit());
    const event::Event blank = *desk.session->draft();
    desk.edit(guests(50, 0), "/guests/adults");
    const event::Event fifty = *desk.session->draft();
    desk.edit(dish("lamb-leg"), "/menu");
    desk.lose();
    desk.clock.advance(24h);

    REQUIRE(desk.session->undoEdit());
    CHECK(*desk.session->draft() == fifty);
    // A new edit after an undo is the one that is taken back next.
    desk.edit(dish("pork-loin"), "/menu");
    REQUIRE(desk.session->undoEdit());
    CHECK(*desk.session->draft() == fifty);
    REQUIRE(desk.session->undoEdit());
    CHECK(*desk.session->draft() == blank);
    CHECK_FALSE(desk.session->canUndoEdit());
    const auto no = desk.session->undoEdit();
    REQUIRE_FALSE(no);
    CHECK(no.error().why == Refusal::Why::NotNow);
}

TEST_CASE("the list calls a draft as its last edit that was not taken back says") {
    Desk desk;
    const auto rename = [](const char* name) {
        return [=](event::Event draft) -> event::Edited {
            draft.name = LocalText(name);
            return draft;
        };
    };
    const auto listed = [&] {
        const auto events = desk.session->events().value();
        return std::string(events.at(0).name.in("en"));
    };
    desk.edit(rename("Orchard supper"), "/name");
    desk.edit(rename("Orchard breakfast"), "/name");
    CHECK(listed() == "Orchard breakfast");
    REQUIRE(desk.session->undoEdit());
    CHECK(listed() == "Orchard supper");
    REQUIRE(desk.session->undoEdit());
    CHECK(listed() == "Harvest lunch");
}

TEST_CASE("a draft takes no more room in the journal than its words need") {
    Desk desk;
    desk.edit(guests(88, 8), "/guests/adults");
    const auto written = desk.store->read(desk.id).value();
    const auto& last = std::get<journal::EventDrafted>(written.back().body);
    CHECK(last.document.find('\n') == std::string::npos);
    CHECK(last.document.size() < event::write(*desk.session->draft()).size() * 3 / 4);
}

TEST_CASE("a stopped edit names its field and leaves no trace") {
    Desk desk;
    const auto before = desk.store->read(desk.id)->size();
    const auto no = desk.session->edit(guests(5001, 0), "/guests/adults");
    REQUIRE_FALSE(no);
    CHECK(no.error().why == Refusal::Why::BadEvent);
    REQUIRE(no.error().faults.size() == 1);
    CHECK(no.error().faults[0].path == "/guests/adults");
    CHECK(no.error().faults[0].allowed == "0..5000");
    CHECK(desk.store->read(desk.id)->size() == before);

    // What changes nothing is no entry.
    desk.edit(guests(100, 0), "/guests/adults");
    CHECK(desk.store->read(desk.id)->size() == before);
}

TEST_CASE("a draft becomes the event when it is planned, not before") {
    Desk desk;
    desk.edit(guests(88, 8), "/guests/adults");
    const auto tooSoon = desk.session->planDraft();
    REQUIRE_FALSE(tooSoon);
    CHECK(tooSoon.error().why == Refusal::Why::BadEvent);
    CHECK(tooSoon.error().faults.at(0).path == "/menu");
    CHECK(desk.session->draft()->guests.adults == 88);

    desk.edit(dish("lamb-leg"), "/menu");
    desk.edit(dish("potato-salad"), "/menu");
    const event::Event written = *desk.session->draft();
    REQUIRE(desk.session->planDraft());
    REQUIRE(desk.session->described());
    CHECK(*desk.session->described() == written);
    CHECK(desk.session->sheet());
    CHECK_FALSE(desk.session->events().value().at(0).isDraft);
    CHECK_FALSE(desk.session->canUndoEdit());
    REQUIRE(desk.session->look());
    CHECK_FALSE(desk.session->look()->undo);
}

TEST_CASE("a planned event is edited beside its plan, which stands until the next one") {
    Desk desk;
    desk.edit(dish("lamb-leg"), "/menu");
    REQUIRE(desk.session->planDraft());
    const auto tasks = desk.session->sheet()->problem.tasks.size();

    desk.edit(dish("potato-salad"), "/menu");
    CHECK(desk.session->described()->menu.size() == 1);
    CHECK(desk.session->draft()->menu.size() == 2);
    CHECK(desk.session->sheet()->problem.tasks.size() == tasks);
    desk.lose();
    CHECK(desk.session->draft()->menu.size() == 2);
    REQUIRE(desk.session->undoEdit());
    CHECK(desk.session->draft()->menu.size() == 1);
    CHECK_FALSE(desk.session->look()->undo);

    desk.edit(dish("potato-salad"), "/menu");
    REQUIRE(desk.session->planDraft());
    CHECK(desk.session->sheet()->problem.tasks.size() > tasks);

    const auto first = desk.session->sheet()->problem.tasks.front().id;
    REQUIRE(desk.session->start(first));
    const auto late = desk.session->edit(guests(90, 0), "/guests/adults");
    REQUIRE_FALSE(late);
    CHECK(late.error().why == Refusal::Why::HasBegun);
    CHECK(desk.session->planDraft().error().why == Refusal::Why::HasBegun);
    CHECK(desk.session->undoEdit().error().why == Refusal::Why::HasBegun);
    CHECK_FALSE(desk.session->canUndoEdit());
    REQUIRE(desk.session->objectionToEdit());
}

TEST_CASE("a rehearsal is played and not changed, and says that it is one") {
    Desk desk;
    desk.edit(dish("potato-salad"), "/menu");
    REQUIRE(desk.session->planDraft());
    CHECK_FALSE(desk.session->objectionToEdit());
    const std::string document = event::write(*desk.session->draft());
    REQUIRE(desk.session->rehearse(10, 5min));
    const auto edited = desk.session->edit(guests(90, 0), "/guests/adults");
    REQUIRE_FALSE(edited);
    CHECK(edited.error().why == Refusal::Why::IsRehearsal);
    CHECK(desk.session->planDraft().error().why == Refusal::Why::IsRehearsal);
    CHECK(desk.session->redescribe(document).error().why == Refusal::Why::IsRehearsal);
}

TEST_CASE("a past event begins a new one on another day") {
    Device device(kWinter);
    const auto past = device.session->importEvent(samples::orchard()).value();
    const auto document = device.session->documentOf(past);
    REQUIRE(document);
    const ZonedInstant serve = parseRfc3339("2028-05-01T18:00:00+02:00").value();
    const auto id = device.session->newDraft({*document, {}, serve, {}});
    REQUIRE(id);
    CHECK(*id != past);
    CHECK(device.session->draft()->serve == serve);
    CHECK(device.session->draft()->site.arrival->at == serve.at - 2h);
    CHECK(device.session->draft()->menu.size() == 9);
    REQUIRE(device.session->planDraft());

    const auto none = device.session->documentOf(EventId{"nobody"});
    REQUIRE_FALSE(none);
    CHECK(none.error().why == Refusal::Why::NoEvent);
}
