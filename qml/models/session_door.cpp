#include "session_door.h"

namespace cinder::face {

Result<std::vector<app::EventEntry>, app::Refusal> SessionDoor::events() const {
    return session_.events();
}
std::optional<event::Event> SessionDoor::described() const {
    const auto* event = session_.described();
    return event != nullptr ? std::optional(*event) : std::nullopt;
}
Taken SessionDoor::open(const EventId& event) {
    return session_.open(event);
}
std::optional<app::Refusal> SessionDoor::whyReadOnly() const {
    return session_.whyReadOnly();
}
Door::BackedUp SessionDoor::backUp(const std::filesystem::path& file) {
    return session_.backUp(file);
}
Result<app::Restored, app::Refusal> SessionDoor::restore(const std::filesystem::path& file) {
    return session_.restore(file);
}
Result<EventId, app::Refusal> SessionDoor::newDraft(const app::NewEvent& wanted) {
    return session_.newDraft(wanted);
}
Result<std::string, app::Refusal> SessionDoor::documentOf(const EventId& e) const {
    return session_.documentOf(e);
}
std::optional<event::Event> SessionDoor::draft() const {
    const auto* draft = session_.draft();
    return draft != nullptr ? std::optional(*draft) : std::nullopt;
}
Taken SessionDoor::edit(const app::Edit& edit, const std::string& field) {
    return session_.edit(edit, field);
}
bool SessionDoor::canUndoEdit() const {
    return session_.canUndoEdit();
}
Taken SessionDoor::undoEdit() {
    return session_.undoEdit();
}
Instant SessionDoor::deviceTime() {
    return session_.deviceTime();
}
Door::Asked SessionDoor::askToImport(const std::string& document) const {
    return session_.askToImport(document);
}
Door::Asked SessionDoor::askToRedescribe(const std::string& document) const {
    return session_.askToRedescribe(document);
}
Door::Asked SessionDoor::askToPlanDraft() const {
    return session_.askToPlanDraft();
}
Door::Asked SessionDoor::askToReplan() const {
    return session_.askToReplan();
}
Door::Asked SessionDoor::askToLeaveOut(const DishId& dish) const {
    return session_.askToLeaveOut(dish);
}
Door::Asked SessionDoor::askToBringBack(const TaskId& task) const {
    return session_.askToBringBack(task);
}
Taken SessionDoor::publish(const app::Planning& planning, const app::Found& found) {
    return session_.publish(planning, found);
}
Result<EventId, app::Refusal> SessionDoor::rehearse(int speed, Duration lead) {
    return session_.rehearse(speed, lead);
}
Taken SessionDoor::setRehearsalSpeed(int speed) {
    return session_.setRehearsalSpeed(speed);
}
Taken SessionDoor::start(const TaskId& task) {
    return session_.start(task);
}
Taken SessionDoor::finish(const TaskId& task) {
    return session_.finish(task);
}
Taken SessionDoor::skip(const TaskId& task) {
    return session_.skip(task);
}
Taken SessionDoor::tick(const TaskId& task, std::int32_t line) {
    return session_.tick(task, line);
}
Taken SessionDoor::turn(const TaskId& task) {
    return session_.turn(task);
}
Taken SessionDoor::moveServe(Instant serve) {
    return session_.moveServe(serve);
}
Taken SessionDoor::acknowledge(const std::string& alarm) {
    return session_.acknowledge(alarm);
}
Taken SessionDoor::countGuests(std::int32_t guests) {
    return session_.countGuests(guests);
}

Taken SessionDoor::lastGuest() {
    return session_.lastGuest();
}

Taken SessionDoor::tapPan(const DishId& dish, std::int32_t percent) {
    return session_.tapPan(dish, percent);
}

Taken SessionDoor::setNextPan(const DishId& dish) {
    return session_.setNextPan(dish);
}

Result<app::Debrief, app::Refusal> SessionDoor::debrief() {
    return session_.debrief();
}
Taken SessionDoor::markInterrupted(const TaskId& task, bool isInterrupted) {
    return session_.markInterrupted(task, isInterrupted);
}
Taken SessionDoor::answerLesson(const std::string& figure, bool isAccepted) {
    return session_.answerLesson(figure, isAccepted);
}
Taken SessionDoor::undo() {
    return session_.undo();
}
Taken SessionDoor::followClock() {
    session_.followWallClock();
    return {};
}
void SessionDoor::setPerson(std::optional<PersonId> person) {
    session_.setPerson(std::move(person));
}
std::shared_ptr<const app::Snapshot> SessionDoor::look() {
    return session_.look();
}

}  // namespace cinder::face
