#include "ways_out.h"

#include <algorithm>

#include "planned_touch.h"
#include "settings.h"

namespace cinder::face {

WaysOut::WaysOut(Door& door, Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings) {
    connect(&settings, &Settings::changed, this, [this] { tell(); });
}

void WaysOut::reckon() {
    // The ways follow the plan that is being made.
    if (isPlanning()) return;
    taking_.clear();
    search_.stop();
    const auto planning = door_.askToReplan();
    const auto* day = planning ? std::get_if<live::Remaining>(&planning->wanted) : nullptr;
    if (day == nullptr || (found_ && found_->event != planning->event)) found_.reset();
    if (day == nullptr) return tell();
    search_.start(
        [event = planning->event, day = *day](const std::atomic<bool>& stop) {
            plan::Search search;
            search.stop = &stop;
            return Found{event, live::waysOut(day, search), day};
        },
        [this](Found found) {
            found_ = std::move(found);
            tell();
        });
    tell();
}

void WaysOut::take(const QString& key) {
    const auto number = static_cast<std::size_t>(key.toULongLong());
    if (!found_ || isPlanning() || number >= found_->ways.size()) return;
    if (found_->ways[number].kind == live::WayOut::Kind::OnePersonMore) {
        QStringList skills;
        for (const auto skill : found_->ways[number].skills)
            skills << toText(
                found_->day.sheet.problem.skills[static_cast<std::size_t>(skill)].id.text());
        Q_EMIT personAsked(skills);
        return;
    }
    taking_ = key;
    carryOut(
        search_, door_,
        [this, dish = found_->ways[number].dish] {
            return dish ? door_.askToLeaveOut(*dish) : door_.askToReplan();
        },
        [this](const Taken& taken) {
            taking_.clear();
            if (isLeft(taken)) return tell();
            Q_EMIT refused(taken ? QString() : Words::refusal(taken.error()));
            if (taken) Q_EMIT accepted();
            reckon();
        });
    tell();
}

void WaysOut::stopPlanning() {
    if (!isPlanning()) return;
    search_.stop();
    reckon();
}

void WaysOut::tell() {
    constexpr std::size_t kMost = 6;  // more is no advice
    std::vector<OptionRow> rows;
    if (found_) {
        if (const auto event = door_.described())
            words_.setPlace(event->serve.offset, event->serve.at);
        for (std::size_t i = 0; i < std::min(kMost, found_->ways.size()); ++i)
            rows.push_back(row(found_->ways[i], i));
    }
    rows_.show(std::move(rows));
    Q_EMIT changed();
}

OptionRow WaysOut::row(const live::WayOut& way, std::size_t number) const {
    using Kind = live::WayOut::Kind;
    OptionRow row;
    row.key = QString::number(number);
    row.isEnough = way.late <= Duration::zero();
    row.isBeingPlanned = isPlanning() && row.key == taking_;
    row.isHeld = way.kind == Kind::DropDish;
    switch (way.kind) {
        case Kind::PlanAgain:
            row.text = tr("Plan again");
            break;
        case Kind::OnePersonMore: {
            QStringList skills;
            for (const auto skill : way.skills)
                skills << words_.name(
                    found_->day.sheet.problem.skills[static_cast<std::size_t>(skill)].name);
            row.text = tr("One person more from now on: %1").arg(skills.join(QStringLiteral(", ")));
            break;
        }
        case Kind::DropDish: {
            const auto event = door_.described();
            for (const auto& dish : event ? event->menu : std::vector<event::Dish>())
                if (way.dish && dish.id == *way.dish)
                    row.text = tr("Leave out: %1").arg(words_.name(dish.name));
            break;
        }
    }
    row.note = row.isEnough
                   ? tr("ready by the bell")
                   : tr("ready %1, %2 late")
                         .arg(words_.clock(found_->day.serve + way.late), Words::span(way.late));
    return row;
}

}  // namespace cinder::face
