#include "serve.h"

#include <algorithm>
#include <cmath>

#include "roles.h"
#include "settings.h"

namespace cinder::face {

const std::vector<Role<LinePanRow>>& LinePanRow::roles() {
    static const std::vector<Role<LinePanRow>> all{
        CINDER_ROLE(LinePanRow, key),
        CINDER_ROLE(LinePanRow, name),
        CINDER_ROLE(LinePanRow, number),
        CINDER_ROLE(LinePanRow, level),
        {"fullness", [](const LinePanRow& r) { return QVariant(r.left); }},
        CINDER_ROLE(LinePanRow, empty),
        CINDER_ROLE(LinePanRow, start),
        CINDER_ROLE(LinePanRow, advice),
        CINDER_ROLE(LinePanRow, isDue),
        CINDER_ROLE(LinePanRow, canTap),
        CINDER_ROLE(LinePanRow, isLast),
    };
    return all;
}

Serve::Serve(Door& door, Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings) {
    connect(&settings, &Settings::changed, this, [this] { show(seen_); });
}

void Serve::show(std::shared_ptr<const app::Snapshot> seen) {
    seen_ = std::move(seen);
    std::vector<LinePanRow> rows;
    if (seen_) {
        words_.setPlace(seen_->offset, seen_->serve);
        tellLine(seen_->service);
        for (const app::LinePanCard& card : seen_->service.pans)
            rows.push_back(row(card));
    } else {
        line_ = {};
    }
    pans_.show(std::move(rows));
    Q_EMIT changed();
}

void Serve::tellLine(const app::ServiceCards& cards) {
    line_ = {};
    line_.counted = QString::number(cards.counted);
    line_.expected = tr("of %1 guests").arg(cards.guests);
    line_.countVerb = cards.isOpen ? QStringLiteral("+%1").arg(app::kCountBy) : tr("First guest");
    line_.canCount = !cards.isOver && !seen_->isReadOnly;
    line_.canEnd = cards.isOpen && !cards.isOver && !seen_->isReadOnly;
    line_.end = cards.isOver ? tr("All through at %1").arg(words_.clock(cards.end.usual))
                             : tr("All through about %1").arg(words_.clock(cards.end.usual));
    if (!cards.isOver) {
        line_.band = tr("8 times in 10 between %1 and %2")
                         .arg(words_.clock(cards.end.early), words_.clock(cards.end.late));
        line_.queue = cards.waiting == 0 ? tr("nobody is waiting")
                                         : tr("about %1 waiting").arg(cards.waiting);
        const auto each = static_cast<double>(cards.each.count()) / 1000;
        line_.pace = tr("%1 s a guest").arg(each, 0, 'f', 1);
    }
    QStringList names;
    for (const LocalText& name : cards.bottleneck)
        names << words_.name(name);
    if (!names.isEmpty() && !cards.isOver)
        line_.bottleneck = tr("What holds them up: %1").arg(names.join(QStringLiteral(", ")));
}

LinePanRow Serve::row(const app::LinePanCard& card) const {
    const service::PanOutlook& pan = card.outlook;
    LinePanRow row;
    row.key = toText(card.dish.text());
    row.name = words_.name(card.name);
    row.number = tr("pan %1 of %2").arg(pan.pan).arg(card.pans);
    row.left = pan.left;
    // An eye judges no finer than five in a hundred.
    row.level = tr("about %1 % left").arg(5 * std::lround(20 * pan.left));
    if (pan.empty)
        row.empty = tr("empty about %1").arg(words_.clock(*pan.empty));
    else
        row.empty = tr("lasts; %1 portions for seconds").arg(pan.seconds);
    if (pan.startNextBy)
        row.start = card.isDue ? tr("Start the next pan now")
                               : tr("Start the next pan by %1").arg(words_.clock(*pan.startNextBy));
    if (pan.portionPercent < 100)
        row.advice = tr("Runs short: %1 portions left for %2. Serve %3 % of a portion.")
                         .arg(std::lround(std::floor(pan.portionsLeft)))
                         .arg(std::lround(std::ceil(pan.needed)))
                         .arg(pan.portionPercent);
    row.isDue = card.isDue;
    row.canTap = !seen_->isReadOnly;
    row.isLast = pan.pan >= card.pans;
    return row;
}

void Serve::take(const Taken& taken) {
    refusal_ = taken ? QString() : Words::refusal(taken.error());
    if (taken) Q_EMIT noted();
    Q_EMIT changed();
}

void Serve::count() {
    if (!seen_) return;
    const app::ServiceCards& cards = seen_->service;
    take(door_.countGuests(cards.isOpen ? cards.counted + app::kCountBy : 0));
}

void Serve::lastGuest() {
    take(door_.lastGuest());
}

void Serve::tap(const QString& dish, int percent) {
    take(door_.tapPan(DishId(dish.toStdString()), percent));
}

void Serve::nextPan(const QString& dish) {
    take(door_.setNextPan(DishId(dish.toStdString())));
}

}  // namespace cinder::face
