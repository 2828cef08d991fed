#include "figures.h"

#include <algorithm>

#include "day.h"
#include "event/limits.h"
#include "event/menu.h"
#include "settings.h"

namespace cinder::face {

namespace {

using quantity::Figure;
using quantity::Unit;

/// What a keypad may take for a figure: wide of anything a crew carries, and six digits long.
constexpr double kMostTyped = 999'999;

NumberEntry::Kind kindOf(Unit unit) {
    switch (unit) {
        case Unit::Grams:
            return NumberEntry::Kind::Mass;
        case Unit::Millilitres:
            return NumberEntry::Kind::Volume;
        case Unit::Millimetres:
            return NumberEntry::Kind::Length;
        case Unit::Minutes:
            return NumberEntry::Kind::Minutes;
        case Unit::Percent:
        case Unit::Ratio:
            return NumberEntry::Kind::Percent;
        default:
            return NumberEntry::Kind::Count;
    }
}

/// A yield is kept as a share of one and typed in percent.
double typedFor(Unit unit) {
    return unit == Unit::Ratio ? 100.0 : 1.0;
}

}  // namespace

struct Figures::Group {
    QString key;
    QString heading;
    std::vector<const Figure*> figures;
    /// What is shown instead of the figure's own name; empty: that.
    std::vector<QString> names;

    void add(const Figure& figure, QString called = {}) {
        figures.push_back(&figure);
        names.push_back(std::move(called));
    }
};

Figures::Figures(ListsDoor& door, Day& day, const Settings& settings, QObject* parent)
    : QObject(parent), door_(door), day_(day), settings_(settings), words_(settings) {}

void Figures::show(const Listed& lists) {
    const bool isAnother = lists && lists_ && !(lists->event.id == lists_->event.id);
    lists_ = lists;
    if (isAnother || !lists) {
        search_.stop();
        tried_.reset();
        close();
    }
    if (tried_) tryThese(tried_->first, tried_->second);
    tell();
}

const event::Guests& Figures::present() const {
    static const event::Guests nobody;
    return shown() ? shown()->event.guests : nobody;
}

QString Figures::guests() const {
    return ListWords::guests(present());
}
QString Figures::adults() const {
    const auto count = present().adults;
    return count == 1 ? tr("1 adult") : tr("%1 adults").arg(count);
}
QString Figures::children() const {
    const auto count = present().children;
    return count == 1 ? tr("1 child") : tr("%1 children").arg(count);
}
QString Figures::trial() const {
    if (!tried_ || !lists_) return {};
    return tr("What if: nothing is changed yet. Agreed are %1.")
        .arg(ListWords::guests(lists_->event.guests));
}

FigureRow Figures::row(const Figure& figure) const {
    FigureRow row;
    row.key = QString::fromStdString(figure.key);
    row.name = words_.name(figure.name);
    row.amount = words_.amount(figure.amount);
    row.isOwn = figure.isOverridden();
    if (row.isOwn)
        row.note = tr("your own figure; reckoned: %1")
                       .arg(words_.amount({*figure.reckoned, figure.amount.unit}));
    return row;
}

std::vector<Figures::Group> Figures::grouped() const {
    std::vector<Group> groups;
    if (!shown()) return groups;
    const quantity::Reckoning& all = shown()->all;
    for (const quantity::DishFigures& dish : all.dishes) {
        Group group{
            QString::fromStdString("dish/" + dish.dish.text()), words_.name(dish.name), {}, {}};
        for (const auto* figure :
             {&dish.portions, &dish.pieces, &dish.weight, &dish.vessels, &dish.onLine})
            if (*figure) group.add(**figure);
        groups.push_back(std::move(group));
    }
    Group buy{QStringLiteral("buy"), tr("To buy"), {}, {}};
    for (const quantity::Buy& one : all.purchase)
        buy.add(one.toBuy, words_.name(one.name));
    groups.push_back(std::move(buy));
    Group supplies{QStringLiteral("supplies"), tr("Line and guests"), {}, {}};
    for (const Figure& figure : all.supplies)
        supplies.add(figure);
    if (all.departure) supplies.add(all.departure->beforeBell);
    groups.push_back(std::move(supplies));
    std::erase_if(groups, [](const Group& group) { return group.figures.empty(); });
    return groups;
}

void Figures::tell() {
    std::vector<FigureGroupRow> rows;
    for (const Group& group : grouped()) {
        std::vector<FigureRow> figures;
        for (std::size_t i = 0; i < group.figures.size(); ++i) {
            const Figure& figure = *group.figures[i];
            FigureRow one = row(figure);
            if (!group.names[i].isEmpty()) one.name = group.names[i];
            const Figure* now = tried_ ? quantity::findFigure(lists_->all, figure.key) : nullptr;
            if (now && !(now->amount == figure.amount))
                one.note = tr("now %1").arg(words_.amount(now->amount));
            figures.push_back(std::move(one));
        }
        auto& inner = inner_[group.key];
        if (!inner) inner = std::make_shared<ListOf<FigureRow>>();
        inner->show(std::move(figures));
        rows.push_back({group.key, group.heading, inner});
    }
    groups_.show(std::move(rows));
    QStringList holes;
    if (shown())
        for (const event::Fault& fault : shown()->all.faults)
            holes << words_.fault(fault, shown()->event);
    holes.removeDuplicates();
    holes_ = holes.join(QLatin1Char('\n'));
    tellOpen();
}

void Figures::tellOpen() {
    open_.reset();
    const Figure* figure =
        shown() && !root_.empty() ? quantity::findFigure(shown()->all, root_) : nullptr;
    for (const std::size_t step : path_)
        figure = figure && step < figure->inputs.size() ? &figure->inputs[step] : nullptr;
    if (figure) open_ = *figure;
    std::vector<FigureRow> rows;
    if (open_)
        for (std::size_t i = 0; i < open_->inputs.size(); ++i) {
            const Figure& input = open_->inputs[i];
            FigureRow one = row(input);
            one.key = QString::number(i);
            one.opens = !input.inputs.empty() || !input.key.empty();
            const QString source = words_.source(input.source, shown()->event);
            if (!source.isEmpty())
                one.note = one.note.isEmpty() ? source : one.note + QStringLiteral(" · ") + source;
            rows.push_back(std::move(one));
        }
    inputs_.show(std::move(rows));
    Q_EMIT changed();
}

QString Figures::name() const {
    if (!open_) return {};
    QString name = words_.name(open_->name);
    // "Ready weight" alone does not say of what.
    for (const event::Dish& dish : shown()->event.menu)
        if (open_->key.starts_with("dish/" + dish.id.text() + "/"))
            return words_.name(dish.name) + QStringLiteral(" · ") + name;
    return name;
}
QString Figures::amount() const {
    return open_ ? words_.amount(open_->amount) : QString();
}
QString Figures::formula() const {
    return open_ ? words_.name(open_->formula) : QString();
}
QStringList Figures::worked() const {
    return open_ ? words_.worked(*open_) : QStringList();
}
QString Figures::source() const {
    return open_ ? words_.source(open_->source, shown()->event) : QString();
}
QString Figures::own() const {
    return open_ ? row(*open_).note : QString();
}

void Figures::open(const QString& key) {
    root_ = key.toStdString();
    path_.clear();
    tellOpen();
}

void Figures::openInput(const QString& key) {
    path_.push_back(key.toULongLong());
    tellOpen();
}

void Figures::goBack() {
    if (path_.empty()) return close();
    path_.pop_back();
    tellOpen();
}

void Figures::close() {
    root_.clear();
    path_.clear();
    asked_.clear();
    tellOpen();
}

QString Figures::askedName() const {
    if (asked_ == QLatin1String("value")) return name();
    if (asked_ == QLatin1String("adults")) return tr("Adults");
    if (asked_ == QLatin1String("children")) return tr("Children");
    return {};
}

void Figures::ask(const QString& what) {
    const bool isCustomary = settings_.isCustomary();
    const double most = event::kGuestRange.high;
    if (what == QLatin1String("value") && canBeOwn()) {
        const Unit unit = open_->amount.unit;
        entry_.beginAt(kindOf(unit), 0, kMostTyped, isCustomary,
                       open_->amount.value * typedFor(unit));
    } else if (what == QLatin1String("adults")) {
        entry_.beginAt(NumberEntry::Kind::Count, present().children > 0 ? 0 : 1, most, isCustomary,
                       present().adults);
    } else if (what == QLatin1String("children")) {
        entry_.beginAt(NumberEntry::Kind::Count, present().adults > 0 ? 0 : 1, most, isCustomary,
                       present().children);
    } else {
        return;
    }
    asked_ = what;
    Q_EMIT changed();
}

void Figures::dropAsked() {
    asked_.clear();
    Q_EMIT changed();
}

void Figures::keep() {
    if (!entry_.isReady()) return;
    const QString what = asked_;
    asked_.clear();
    if (what == QLatin1String("value") && canBeOwn()) {
        day_.take(door_.setFigure(open_->key, entry_.value() / typedFor(open_->amount.unit)));
        return;
    }
    const auto typed = static_cast<std::int32_t>(entry_.value());
    if (what == QLatin1String("adults")) tryThese(typed, present().children);
    if (what == QLatin1String("children")) tryThese(present().adults, typed);
    tell();
}

void Figures::restore() {
    if (isOwn()) day_.take(door_.clearFigure(open_->key));
}

void Figures::tryGuests(int moreAdults, int moreChildren) {
    const auto within = [](std::int32_t count) {
        return std::clamp(count, event::kGuestRange.low, event::kGuestRange.high);
    };
    tryThese(within(present().adults + moreAdults), within(present().children + moreChildren));
    tell();
}

void Figures::tryThese(std::int32_t adults, std::int32_t children) {
    if (!lists_) return;
    const event::Guests& agreed = lists_->event.guests;
    if (adults == agreed.adults && children == agreed.children) {
        tried_.reset();
        trialLists_.reset();
        return;
    }
    const auto found = door_.listsFor(adults, children);
    if (!found || !*found) return;
    trialLists_ = *found;
    tried_.emplace(adults, children);
}

void Figures::useTrial() {
    if (!tried_ || isPlanning()) return;
    const auto [adults, children] = *tried_;
    day_.plan(
        search_,
        [this, adults = adults, children = children] {
            return door_.askToSetGuests(adults, children);
        },
        [this] { Q_EMIT changed(); });
    Q_EMIT changed();
}

void Figures::dropTrial() {
    search_.stop();
    tried_.reset();
    trialLists_.reset();
    tell();
}

}  // namespace cinder::face
