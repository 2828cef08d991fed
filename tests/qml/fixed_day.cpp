#include "fixed_day.h"

#include <fstream>
#include <iterator>

#include "event/draft.h"

namespace cinder::face::fixed {

namespace {

using app::TaskState;
using plan::TaskKind;
using std::chrono::minutes;
using std::chrono::seconds;

const Instant kBell = parseRfc3339("2027-09-18T13:00:00-04:00").value().at;

LocalText both(const char* english, const char* spanish) {
    return LocalText(std::map<std::string, std::string>{{"en", english}, {"es", spanish}});
}

/// A task from `from` for `length` minutes, `from` counted from the bell.
app::TaskCard card(const char* id, LocalText name, TaskKind kind, const char* station, int from,
                   int length, TaskState state, const char* person) {
    app::TaskCard c;
    c.id = TaskId(id);
    c.name = std::move(name);
    c.kind = kind;
    c.station = StationId(station);
    c.stationName = std::string(station) == "fire"    ? both("Fire", "Fuego")
                    : std::string(station) == "table" ? both("Buffet table", "Mesa del bufé")
                                                      : both("Prep", "Preparación");
    c.plannedStart = c.start = kBell + minutes(from);
    c.plannedFinish = c.finish = c.start + minutes(length);
    c.latestStart = c.start + minutes(9);
    c.slack = minutes(9);
    c.state = state;
    if (person != nullptr) {
        c.people = {PersonId(person)};
        c.work = {{c.start, c.finish, c.people, plan::HandsOn::Act::Work}};
    }
    return c;
}

void addFire(std::vector<app::TaskCard>& tasks) {
    auto lamb = card("lamb/1", both("Lamb legs on the grate", "Piernas de cordero a la parrilla"),
                     TaskKind::Cook, "fire", -85, 32, TaskState::Running, "ines");
    lamb.batch = 1;
    lamb.batchCount = 2;
    lamb.turnsDone = 1;
    lamb.turnCount = 4;
    lamb.nextTurn = kBell - minutes(78) + seconds(95);
    auto chicken = card("thighs/1", both("Chicken thighs, finish", "Muslos, terminar"),
                        TaskKind::Cook, "fire", -92, 14, TaskState::Over, "ines");
    tasks.push_back(card("light", both("Light the charcoal", "Encender el carbón"), TaskKind::Fire,
                         "fire", -118, 25, TaskState::Done, "ines"));
    tasks.push_back(chicken);
    tasks.push_back(lamb);
    tasks.push_back(card("rest/0", both("Rest the first legs", "Reposo de las primeras piernas"),
                         TaskKind::Rest, "prep", -84, 18, TaskState::Running, nullptr));
    auto second = lamb;
    second.id = TaskId("lamb/2");
    second.batch = 2;
    second.turnsDone = 0;
    second.nextTurn.reset();
    second.state = TaskState::Ready;
    second.plannedStart = second.start = kBell - minutes(52);
    second.plannedFinish = second.finish = second.start + minutes(32);
    second.work = {{second.start, second.finish, second.people, plan::HandsOn::Act::PutOn}};
    second.slack = minutes(4);
    second.latestStart = second.start + second.slack;
    second.isCritical = true;
    tasks.push_back(second);
    tasks.push_back(card("slice", both("Slice the lamb", "Cortar el cordero"), TaskKind::Slice,
                         "prep", -18, 10, TaskState::Waiting, "ines"));
    tasks.push_back(card("bread", both("Warm the flatbreads", "Calentar los panes"), TaskKind::Warm,
                         "fire", -12, 8, TaskState::Waiting, "ines"));
}

void addTable(std::vector<app::TaskCard>& tasks) {
    auto linen = card("linen", both("Tables and linen", "Mesas y manteles"), TaskKind::SetUp,
                      "table", -110, 36, TaskState::Running, "tomas");
    linen.isLate = true;
    linen.checklist = {
        {both("Two long tables under the trees", "Dos mesas largas bajo los árboles"), true},
        {both("Linen, clipped against wind", "Manteles, con pinzas por el viento"), false},
        {both("Plates at the guests' end", "Platos al lado de los invitados"), false}};
    auto chafers = card("chafers", both("Chafers and fuel", "Calientaplatos y combustible"),
                        TaskKind::SetUp, "table", -70, 12, TaskState::Ready, "tomas");
    chafers.checklist = {
        {both("Four chafers, water in", "Cuatro calientaplatos con agua"), false},
        {both("Fuel lit, lids on", "Combustible encendido, tapas puestas"), false}};
    tasks.push_back(linen);
    tasks.push_back(chafers);
    tasks.push_back(card("hands", both("Hand-wash station", "Lavamanos"), TaskKind::SetUp, "table",
                         -119, 8, TaskState::Done, "tomas"));
    tasks.push_back(card("salad", both("Dress the potato salad", "Aliñar la ensalada de papa"),
                         TaskKind::Prep, "prep", -40, 9, TaskState::Waiting, "tomas"));
    tasks.push_back(card("load", both("Load the line", "Montar la línea"), TaskKind::Load, "table",
                         -8, 8, TaskState::Waiting, "tomas"));
    tasks.push_back(card("serve", both("Serve", "Servir"), TaskKind::Serve, "table", 0, 45,
                         TaskState::Waiting, "tomas"));
    tasks.push_back(card("strike", both("Strike, ash in metal", "Recoger, ceniza en metal"),
                         TaskKind::Strike, "fire", 45, 30, TaskState::Waiting, "ines"));
}

}  // namespace

namespace {

/// A line of which nobody has seen a guest, with a pan that must be followed and one that is short.
app::ServiceCards orchardLine() {
    app::ServiceCards line;
    line.guests = 96;
    line.waiting = 88;
    line.opened = kBell;
    line.each = Duration{8900};
    line.end = {kBell + minutes(12), kBell + minutes(15), kBell + minutes(18)};
    line.planned = minutes(15);
    line.bottleneck = {both("Lamb legs", "Piernas de cordero")};
    app::LinePanCard slaw{
        DishId("slaw"), both("Apple and fennel slaw", "Ensalada de manzana"), 2, {}, true};
    slaw.outlook.left = 0.3;
    slaw.outlook.isTapped = true;
    slaw.outlook.empty = kBell + minutes(9);
    slaw.outlook.startNextBy = kBell + minutes(4);
    app::LinePanCard bread{DishId("bread"), both("Flatbread", "Pan plano"), 1, {}, false};
    bread.outlook.left = 0.55;
    bread.outlook.empty = kBell + minutes(11);
    bread.outlook.needed = 62.4;
    bread.outlook.portionsLeft = 48;
    bread.outlook.portionPercent = 75;
    app::LinePanCard stew{DishId("stew"), both("Bean stew", "Guiso de frijol"), 1, {}, false};
    stew.outlook.seconds = 14;
    line.pans = {slaw, bread, stew};
    return line;
}

}  // namespace

std::optional<event::Event> orchardDraft() {
    std::ifstream file(CINDER_SOURCE "/demo-data/orchard-harvest-lunch.json");
    const std::string document{std::istreambuf_iterator<char>(file), {}};
    auto draft = event::parseDraft(document);
    if (!draft) return std::nullopt;
    for (auto& dish : draft->menu)
        if (dish.id.text() == "chicken" && dish.pieces)
            std::swap(dish.pieces->width, dish.pieces->length);
    return *std::move(draft);
}

std::vector<app::CrewMember> FixedDoor::crew() const {
    std::vector<app::CrewMember> crew;
    for (const event::Person& person : written->crew)
        crew.push_back({person.id, person.name, person.skills});
    return crew;
}

Taken FixedDoor::edit(const app::Edit& edit, const std::string& field) {
    auto changed = edit(*written);
    if (!changed)
        return fail(app::Refusal{app::Refusal::Why::BadEvent, {}, changed.error(), {}, {}});
    written = *std::move(changed);
    return note("edit " + field);
}

Taken FixedDoor::tick(const TaskId& t, std::int32_t line) {
    for (auto& c : day.tasks)
        if (c.id == t) c.checklist.at(static_cast<std::size_t>(line)).isTicked = true;
    return note("tick " + t.text() + " " + std::to_string(line));
}

app::Snapshot orchardLunch(bool isRinging) {
    app::Snapshot day;
    day.event = EventId("orchard-lunch");
    day.name = both("Harvest lunch in the orchard", "Almuerzo de cosecha en el huerto");
    day.offset = UtcOffset(-240);
    day.serve = day.promisedServe = kBell;
    day.now = kBell - minutes(78);
    day.arrival = kBell - minutes(120);
    day.ready = kBell - minutes(4);
    day.lateness = -minutes(4);
    day.stations = {StationId("fire"), StationId("table"), StationId("prep")};
    day.stationNames = {both("Fire", "Fuego"), both("Buffet table", "Mesa del bufé"),
                        both("Prep", "Preparación")};
    addFire(day.tasks);
    addTable(day.tasks);
    day.weakest = TaskId("lamb/2");
    day.people = {
        {PersonId("ines"), "Inés", TaskId("thighs/1"), TaskId("lamb/2"), kBell - minutes(52)},
        {PersonId("tomas"), "Tomás", TaskId("linen"), TaskId("chafers"), kBell - minutes(70)}};
    day.fire = orchardFire(day.now);
    day.undo =
        app::UndoOffer{app::UndoOffer::What::Turn, TaskId("lamb/1"), 1, day.now + seconds(12)};
    day.food = orchardFood(day.now);
    day.service = orchardLine();
    if (isRinging)
        day.timers = {{"turn:lamb/1:2",
                       live::TimerKind::Turn,
                       live::TimerOccasion::Work,
                       TaskId("lamb/1"),
                       2,
                       4,
                       {},
                       {},
                       day.now - seconds(8),
                       std::nullopt}};
    return day;
}

app::Snapshot beforeTheFire() {
    app::Snapshot day = orchardLunch();
    for (auto& card : day.tasks)
        if (card.kind == TaskKind::Fire) card.state = TaskState::Ready;
    return day;
}

}  // namespace cinder::face::fixed
