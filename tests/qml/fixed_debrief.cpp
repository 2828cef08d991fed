// A day looked back upon, of the same invention as fixed_day.cpp.

#include "fixed_day.h"

namespace cinder::face::fixed {

namespace {

using std::chrono::minutes;

LocalText both(const char* english, const char* spanish) {
    return LocalText(std::map<std::string, std::string>{{"en", english}, {"es", spanish}});
}

/// Planned and actual, in minutes from the bell.
app::TaskReview review(const char* id, LocalText name, int planned, int plannedLength, int actual,
                       int actualLength, bool isInterrupted = false) {
    app::TaskReview one;
    one.actual.task = TaskId(id);
    one.actual.step = id;
    one.actual.name = std::move(name);
    one.actual.plannedStart = minutes(planned);
    one.actual.plannedLength = minutes(plannedLength);
    one.actual.actualStart = minutes(actual);
    one.actual.actualLength = minutes(actualLength);
    one.isInterrupted = isInterrupted;
    return one;
}

}  // namespace

Result<app::Debrief, app::Refusal> FixedDoor::debrief() {
    app::Debrief debrief;
    debrief.tasks = {
        review("hands", both("Hand-wash station", "Lavamanos"), -119, 8, -117, 8),
        review("light", both("Light the charcoal", "Encender el carbón"), -118, 25, -112, 31),
        review("linen", both("Tables and linen", "Mesas y manteles"), -110, 36, -108, 74, true),
        review("lamb/1", both("Lamb legs on the grate", "Piernas de cordero a la parrilla"), -85,
               32, -81, 38),
        review("chafers", both("Chafers and fuel", "Calientaplatos y combustible"), -70, 12, -30,
               11),
        review("slice", both("Slice the lamb", "Cortar el cordero"), -18, 10, -14, 12),
        review("serve", both("Serve", "Servir"), 0, 45, 2, 38),
    };
    debrief.tasks[3].actual.batch = 1;
    debrief.tasks[4].actual.isSuspect = true;
    const auto ms = [](int length) { return Duration(minutes(length)).count(); };
    debrief.lessons = {
        {"length/light", app::LessonCard::Kind::Length,
         both("Light the charcoal", "Encender el carbón"), ms(25), ms(29), ms(26), ms(33), 4, 1,
         app::LessonCard::Answer::Accepted},
        {"length/lamb", app::LessonCard::Kind::Length,
         both("Lamb legs on the grate", "Piernas de cordero a la parrilla"), ms(32), ms(36), ms(33),
         ms(39), 4, 0, app::LessonCard::Answer::None},
        {"take/slaw", app::LessonCard::Kind::Take,
         both("Apple and fennel slaw", "Ensalada de manzana"), 90, 74, 66, 83, 3, 0,
         app::LessonCard::Answer::Ignored},
    };
    debrief.pans = {{both("Apple and fennel slaw", "Ensalada de manzana"), 3, 2},
                    {both("Bean stew", "Guiso de frijol"), 2, 2}};
    debrief.events = 4;
    return debrief;
}

Result<std::vector<learn::MethodHistory>, app::Refusal> FixedDoor::methods() const {
    const auto draft = orchardDraft();
    if (!draft) return std::vector<learn::MethodHistory>{};
    learn::DescribedEvent spring{*draft, {}};
    spring.event.id = EventId("spring");
    spring.event.name = both("Blossom supper", "Cena de la flor");
    spring.event.serve.at -= std::chrono::hours(24 * 119);
    learn::DescribedEvent summer = spring;
    summer.event.id = EventId("summer");
    summer.event.name = both("Cherry day", "Día de la cereza");
    summer.event.serve.at += std::chrono::hours(24 * 56);
    for (event::Dish& dish : summer.event.menu)
        if (dish.id == DishId("lamb")) dish.pullAt = Temperature::fromCelsius(57);
    summer.lessons = {{"length/lamb/rest", {true, Duration(minutes(18)).count()}},
                      {"take/slaw", {true, 74}}};
    return learn::methodHistories({spring, summer});
}

}  // namespace cinder::face::fixed
