#include "editor.h"

#include <algorithm>
#include <cmath>

#include "event/draft.h"
#include "event/json.h"
#include "event/method_card.h"
#include "quantity/build/reckon.h"
#include "settings.h"

namespace cinder::face {

namespace {

/// The parts of an event: their keys are places, their paths where their faults lie.
struct Part {
    const char* key;
    std::vector<std::string> paths;
};
const std::vector<Part>& allParts() {
    static const std::vector<Part> all{{"when", {"/name", "/serve", "/timeZone"}},
                                       {"guests", {"/guests"}},
                                       {"menu", {"/menu", "/work"}},
                                       {"site", {"/site"}},
                                       {"crew", {"/crew", "/skills"}},
                                       {"kit", {"/kit"}}};
    return all;
}

bool isBelow(const std::string& path, const std::string& above) {
    return path == above || (path.size() > above.size() && path.starts_with(above) &&
                             (path[above.size()] == '/' || path[above.size()] == '#'));
}

QString placeAbove(const QString& place) {
    if (place.startsWith(u"method:")) return QStringLiteral("library");
    if (place.startsWith(u"dish:") || place == u"library") return QStringLiteral("menu");
    if (place.startsWith(u"after:")) return QStringLiteral("step:") + place.section(u':', 1);
    if (place.startsWith(u"step:"))
        return QStringLiteral("dish:") + place.mid(5).section(u'/', 0, 0);
    if (place.startsWith(u"person:")) return QStringLiteral("crew");
    if (place.startsWith(u"kit:")) return QStringLiteral("kit");
    return {};
}

QString counted(std::size_t count, const QString& one, const QString& many) {
    return count == 1 ? one : many.arg(count);
}

}  // namespace

Editor::Editor(Door& door, Settings& settings, EventFiles* files, Library library, QObject* parent)
    : QObject(parent),
      door_(door),
      settings_(settings),
      files_(files),
      words_(settings),
      library_(std::move(library)) {
    connect(&settings, &Settings::changed, this, [this] { tell(); });
}

bool Editor::isCustomaryFor(int kind) const {
    return face::isCustomaryFor(static_cast<NumberEntry::Kind>(kind), settings_);
}

QString Editor::part() const {
    QString place = place_;
    for (QString above = placeAbove(place); !above.isEmpty(); above = placeAbove(place))
        place = above;
    return place;
}

const std::vector<event::Dish>& Editor::cards() const {
    if (!cards_) {
        cards_.emplace();
        for (const std::string& document : library_.cards())
            if (auto card = event::parseDish(document)) cards_->push_back(*std::move(card));
    }
    return *cards_;
}

void Editor::open() {
    said_.clear();
    refusal_.clear();
    written_.clear();
    search_.stop();
    place_.clear();
    tell();
    Q_EMIT placeChanged();
}

void Editor::go(const QString& place) {
    said_.clear();
    refusal_.clear();
    if (place == u"library" || place.startsWith(u"method:")) readMethods();
    place_ = place;
    tell();
    Q_EMIT placeChanged();
}

void Editor::goWhereNeeded() {
    const auto& rows = parts_.rows();
    if (!place_.isEmpty() || rows.empty()) return;
    const auto faulty =
        std::find_if(rows.begin(), rows.end(), [](const PartRow& row) { return row.isFaulty; });
    go((faulty == rows.end() ? rows.front() : *faulty).key);
}

bool Editor::back() {
    if (place_.isEmpty()) return false;
    go(placeAbove(place_));
    return true;
}

const learn::MethodHistory* Editor::method() const {
    if (!place_.startsWith(u"method:")) return nullptr;
    const auto at = place_.section(u':', 1).toULongLong();
    return at < methods_.size() ? &methods_[at] : nullptr;
}

void Editor::readMethods() {
    auto methods = door_.methods();
    methods_ = methods ? *std::move(methods) : std::vector<learn::MethodHistory>{};
}

// --- editing -------------------------------------------------------------------------------------

const Field* Editor::find(const QString& key) const {
    const auto at = std::find_if(shown_.begin(), shown_.end(),
                                 [&](const Field& field) { return field.row.key == key; });
    return at == shown_.end() ? nullptr : &*at;
}

bool Editor::take(const Field& field, const app::Edit& edit) {
    const QString key = field.row.key;
    const QString target = field.target;
    said_.erase(key);
    refusal_.clear();
    search_.stop();
    const auto taken = door_.edit(edit, field.path);
    if (!taken) {
        say(taken.error(), key);
        return false;
    }
    if (!target.isEmpty()) {
        go(target);
    } else {
        tell();
    }
    return true;
}

void Editor::say(const app::Refusal& refusal, const QString& field) {
    const auto draft = door_.draft();
    if (refusal.why == app::Refusal::Why::BadEvent && !refusal.faults.empty() && draft) {
        const QString words = FaultWords::say(refusal.faults.front(), *draft, words_);
        if (field.isEmpty())
            refusal_ = words;
        else
            said_[field] = words;
    } else if (refusal.why == app::Refusal::Why::NoPlan) {
        refusal_ =
            tr("No plan can be found for this. Take a dish off the menu, bring more people or "
               "more kit, or let the crew come earlier.");
    } else {
        refusal_ = Words::refusal(refusal);
    }
    tell();
}

void Editor::step(const QString& key, int steps) {
    const Field* field = find(key);
    if (field == nullptr || !field->number) return;
    const FieldRow& row = field->row;
    // From a figure between two steps to the next step, not past it.
    const double places = row.number / field->stepBy;
    const double next = (steps > 0 ? std::floor(places + 1e-6) : std::ceil(places - 1e-6)) + steps;
    setNumber(key, std::clamp(next * field->stepBy, row.least, row.most));
}

bool Editor::setNumber(const QString& key, double value) {
    const Field* field = find(key);
    return field != nullptr && field->number && take(*field, field->number(value));
}

bool Editor::setText(const QString& key, const QString& text) {
    const Field* field = find(key);
    return field != nullptr && field->text &&
           take(*field, field->text(text.trimmed().toStdString()));
}

void Editor::act(const QString& key) {
    const Field* field = find(key);
    if (field == nullptr) return;
    if (field->act)
        take(*field, field->act);
    else if (!field->target.isEmpty())
        go(QString(field->target));
}

void Editor::undo() {
    said_.clear();
    refusal_.clear();
    search_.stop();
    if (const auto taken = door_.undoEdit(); !taken) return say(taken.error(), {});
    tell();
}

void Editor::plan() {
    refusal_.clear();
    if (search_.isBusy()) return;
    carryOut(
        search_, door_, [this] { return door_.askToPlanDraft(); },
        [this](const Taken& taken) {
            if (!taken) return say(taken.error(), {});
            tell();
            Q_EMIT planned();
        });
    tell();
}

// --- telling -------------------------------------------------------------------------------------

std::vector<Field> Editor::fieldsOf(const event::Event& draft) const {
    FieldList list(draft, words_, settings_.isCustomary(), door_.food().limits());
    const auto id = place_.section(u':', 1).toStdString();
    if (place_ == u"when") addWhen(list);
    if (place_ == u"guests") addGuests(list);
    if (place_ == u"menu") addMenu(list);
    if (place_ == u"library") addLibrary(list, cards(), methods_);
    if (const auto* history = method()) addMethod(list, *history);
    if (place_ == u"site") addSite(list);
    if (place_ == u"crew") addCrew(list);
    if (place_ == u"kit") addKit(list);
    if (place_.startsWith(u"person:")) addPerson(list, PersonId(id));
    if (place_.startsWith(u"kit:")) addKitItem(list, ResourceId(id));
    if (place_.startsWith(u"dish:")) addDish(list, DishId(id));
    const auto slash = id.find('/');
    if (slash == std::string::npos) return std::move(list.fields);
    const DishId dish(id.substr(0, slash));
    const StepId step(id.substr(slash + 1));
    if (place_.startsWith(u"step:")) addStep(list, dish, step);
    if (place_.startsWith(u"after:")) addOthers(list, dish, step);
    return std::move(list.fields);
}

QString Editor::problemOf(const std::string& path, const event::Event& draft) const {
    if (path.empty()) return {};
    for (const auto* faults : {&faults_, &lacking_})
        for (const auto& fault : *faults)
            if (isBelow(fault.path, path)) return FaultWords::say(fault, draft, words_);
    return {};
}

void Editor::tellParts(const event::Event& draft) {
    const auto name = [&](const QString& key) {
        if (key == u"when") return tr("When");
        if (key == u"guests") return tr("Guests");
        if (key == u"menu") return tr("Menu");
        if (key == u"site") return tr("Site");
        return key == u"crew" ? tr("Crew") : tr("Kit");
    };
    const auto note = [&](const QString& key) -> QString {
        if (key == u"when") return when_;
        if (key == u"guests")
            return counted(static_cast<std::size_t>(event::headCount(draft.guests)), tr("1 guest"),
                           tr("%1 guests"));
        if (key == u"menu") return counted(draft.menu.size(), tr("1 dish"), tr("%1 dishes"));
        if (key == u"site") return words_.name(draft.site.name);
        if (key == u"crew") return counted(draft.crew.size(), tr("1 person"), tr("%1 people"));
        return counted(
            draft.kit.grates.size() + draft.kit.equipment.size() + draft.kit.tables.size(),
            tr("1 kind of things"), tr("%1 kinds of things"));
    };
    std::vector<PartRow> rows;
    for (const Part& part : allParts()) {
        const QString key = QString::fromLatin1(part.key);
        const auto lies = [&](const event::Fault& fault) {
            return std::any_of(part.paths.begin(), part.paths.end(),
                               [&](const auto& path) { return isBelow(fault.path, path); });
        };
        const auto fault = std::find_if(faults_.begin(), faults_.end(), lies);
        const bool isFaulty = fault != faults_.end();
        QString words = note(key);
        if (isFaulty) {
            const QString place = FaultWords::place(fault->path, draft, words_);
            words = (place.isEmpty() ? QString() : place + QStringLiteral(": ")) +
                    FaultWords::say(*fault, draft, words_);
        }
        rows.push_back({key, name(key), words, isFaulty});
    }
    parts_.show(std::move(rows));
}

void Editor::tellTitle(const event::Event& draft) {
    title_ = name_;
    for (const PartRow& row : parts_.rows())
        if (row.key == place_) title_ = row.name;
    if (place_ == u"library") title_ = tr("Library of dishes");
    if (const auto* history = method()) title_ = words_.name(history->name);
    const auto id = place_.section(u':', 1).toStdString();
    for (const auto& dish : draft.menu) {
        if (place_ == QStringLiteral("dish:") + toText(dish.id.text()))
            title_ = words_.name(dish.name);
        for (const auto& step : dish.method)
            if (place_.section(u':', 1) == toText(dish.id.text() + "/" + step.id.text()))
                title_ = words_.name(dish.name) + QStringLiteral(" · ") + words_.name(step.name);
    }
    for (const auto& person : draft.crew)
        if (place_ == QStringLiteral("person:") + toText(person.id.text()))
            title_ = toText(person.name);
    const auto kit = [&](const auto& items) {
        for (const auto& item : items)
            if (place_ == QStringLiteral("kit:") + toText(item.id.text()))
                title_ = words_.name(item.name);
    };
    kit(draft.kit.grates);
    kit(draft.kit.equipment);
    kit(draft.kit.tables);
}

void Editor::tell() {
    const auto draft = door_.draft();
    if (!draft) return;
    words_.setPlace(draft->serve.offset, draft->serve.at);
    name_ = words_.name(draft->name);
    when_ = words_.date(draft->serve.at, draft->serve.offset) + QStringLiteral(" · ") +
            words_.clock(draft->serve.at);
    faults_ = event::faultsOf(*draft);
    lacking_ = faults_.empty() ? quantity::reckon(*draft).faults : event::Faults{};
    isWhole_ = faults_.empty();
    standing_ = isPlanning() ? tr("A plan is being searched…")
                : isWhole_   ? tr("Nothing is missing.")
                             : counted(faults_.size(), tr("1 thing to settle first"),
                                       tr("%1 things to settle first"));
    canUndo_ = door_.canUndoEdit();
    const auto objection = door_.objectionToEdit();
    locked_ = objection ? Words::refusal(*objection) : QString();
    tellParts(*draft);
    tellTitle(*draft);
    shown_ = fieldsOf(*draft);
    std::vector<FieldRow> rows;
    for (Field& field : shown_) {
        const auto said = said_.find(field.row.key);
        field.row.problem = said != said_.end() ? said->second : problemOf(field.path, *draft);
        rows.push_back(field.row);
    }
    fields_.show(std::move(rows));
    Q_EMIT changed();
}

}  // namespace cinder::face
