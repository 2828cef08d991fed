#include "line_view.h"

#include <algorithm>
#include <cmath>

#include "day.h"

namespace cinder::face {

namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString keyOf(const DishId& dish) {
    return text(dish.text());
}

/// "a, b, c".
template <class List>
QString joined(const List& list, const report::Style& style) {
    QStringList words;
    for (const auto& one : list)
        words << text(report::word(one, style));
    return words.join(QStringLiteral(", "));
}

}  // namespace

LineView::LineView(ListsDoor& door, Day& day, const Settings& settings, QObject* parent)
    : QObject(parent), door_(door), day_(day), words_(settings) {}

void LineView::show(const Listed& lists) {
    lists_ = lists;
    tell();
}

std::vector<DishId> LineView::dishes() const {
    std::vector<DishId> order;
    if (!lists_) return order;
    const quantity::Line& line = lists_->all.line;
    for (const std::size_t i : quantity::servingOrder(lists_->event)) {
        const DishId& dish = lists_->event.menu[i].id;
        const bool stands = std::any_of(line.stands.begin(), line.stands.end(),
                                        [&](const auto& stand) { return stand.dish == dish; });
        const bool waits =
            std::find(line.waiting.begin(), line.waiting.end(), dish) != line.waiting.end();
        if (stands || waits) order.push_back(dish);
    }
    return order;
}

QString LineView::cardOf(const event::Dish& dish) const {
    const auto style = words_.style();
    QStringList parts;
    parts << (dish.contains.empty() ? tr("Card: no declared allergen")
                                    : tr("Card: contains %1").arg(joined(dish.contains, style)));
    if (!dish.suits.empty()) parts << tr("suits %1").arg(joined(dish.suits, style));
    return parts.join(QStringLiteral("; "));
}

OrderRow LineView::row(const std::vector<DishId>& order, std::size_t place) const {
    const DishId& id = order[place];
    OrderRow row;
    row.key = keyOf(id);
    row.number = QString::number(place + 1);
    for (const event::Dish& dish : lists_->event.menu)
        if (dish.id == id) {
            row.name = words_.name(dish.name);
            row.card = cardOf(dish);
        }
    const quantity::Line& line = lists_->all.line;
    row.isWaiting = std::find(line.waiting.begin(), line.waiting.end(), id) != line.waiting.end();
    QStringList where;
    for (const app::StandCard& card : lists_->line) {
        if (!(card.dish == id) || card.number != 1) continue;
        where << (card.count > 1 ? tr("%1 × %2")
                                       .arg(card.count)
                                       .arg(text(report::word(card.vessel, words_.style())))
                                 : text(report::word(card.vessel, words_.style())));
        where << tr("table %1").arg(card.table);
        if (card.isOnRiser) where << tr("on a riser");
    }
    if (row.isWaiting) where << tr("waits: no room");
    row.where = where.join(QStringLiteral(" · "));
    row.isChosen = row.key == chosen_;
    row.canGoEarlier = place > 0;
    row.canGoLater = place + 1 < order.size();
    return row;
}

void LineView::tell() {
    const auto order = dishes();
    std::vector<OrderRow> rows;
    for (std::size_t place = 0; place < order.size(); ++place)
        rows.push_back(row(order, place));
    tellTables(order);
    order_.show(std::move(rows));
    tellRoom();
    Q_EMIT changed();
}

void LineView::tellTables(const std::vector<DishId>& order) {
    std::vector<TableRow> tables;
    length_ = longest_ = deepest_ = 1;
    if (lists_) {
        const quantity::Line& line = lists_->all.line;
        length_ = std::max(1.0, line.available.millimetres());
        for (std::size_t t = 0; t < line.tables.size(); ++t) {
            const quantity::TableSpan& span = line.tables[t];
            const double depth = span.width.millimetres();
            longest_ = std::max(longest_, span.length.millimetres());
            deepest_ = std::max(deepest_, depth);
            std::vector<StandRow> stands;
            for (std::size_t i = 0; i < line.stands.size(); ++i) {
                const quantity::Stand& stand = line.stands[i];
                if (stand.table != t) continue;
                const auto place = std::find(order.begin(), order.end(), stand.dish);
                StandRow one;
                one.key = text(lists_->line[i].key);
                one.number = QString::number(place - order.begin() + 1);
                one.name = words_.name(stand.name);
                one.begin = (stand.x - span.x).millimetres();
                one.behind =
                    std::max(0.0, depth - stand.y.millimetres() - stand.width.millimetres());
                one.length = stand.length.millimetres();
                one.depth = stand.width.millimetres();
                one.isOnRiser = stand.isOnRiser;
                one.isPlaced = lists_->line[i].isPlaced;
                one.isChosen = keyOf(stand.dish) == chosen_;
                one.hasCard = stand.number == 1;
                stands.push_back(std::move(one));
            }
            const QString key = QString::number(t + 1);
            auto& inner = inner_[key];
            if (!inner) inner = std::make_shared<ListOf<StandRow>>();
            inner->show(std::move(stands));
            tables.push_back(
                {key,
                 tr("Table %1 · %2")
                     .arg(t + 1)
                     .arg(Words::unbroken(text(report::lengthText(span.length, words_.style())))),
                 span.length.millimetres(), depth, inner});
        }
    }
    tables_.show(std::move(tables));
}

void LineView::tellRoom() {
    room_.clear();
    prompts_.clear();
    isShort_ = false;
    if (!lists_) return;
    const quantity::Line& line = lists_->all.line;
    const auto style = words_.style();
    const QString needed = Words::unbroken(text(report::lengthText(line.needed, style)));
    const QString there = Words::unbroken(text(report::roomText(line.available, style)));
    isShort_ = line.shortBy > Length{};
    if (line.tables.empty())
        room_ = tr("No tables stand where the dishes are loaded: put some in the kit.");
    else if (isShort_ && line.moreTables == 1)
        room_ = tr("Short by %1: one table more would do.")
                    .arg(Words::unbroken(text(report::lengthText(line.shortBy, style))));
    else if (isShort_)
        room_ = tr("Short by %1: %2 tables more would do.")
                    .arg(Words::unbroken(text(report::lengthText(line.shortBy, style))))
                    .arg(line.moreTables);
    else
        room_ = tr("Everything has room: %1 of %2.").arg(needed, there);
    QStringList lines;
    for (const quantity::Prompt& prompt : line.prompts)
        lines << words_.name(prompt.words);
    prompts_ = lines.join(QLatin1Char('\n'));
}

void LineView::choose(const QString& dish) {
    chosen_ = chosen_ == dish ? QString() : dish;
    tell();
}

void LineView::move(const QString& dish, double rows) {
    auto order = dishes();
    const auto from = std::find(order.begin(), order.end(), DishId(dish.toStdString()));
    if (from == order.end()) return;
    chosen_ = dish;
    const auto last = static_cast<std::ptrdiff_t>(order.size()) - 1;
    const auto place = from - order.begin();
    const auto to = std::clamp<std::ptrdiff_t>(place + std::lround(rows), 0, last);
    if (to == place) return tell();
    const DishId moved = *from;
    order.erase(from);
    order.insert(order.begin() + to, moved);
    day_.take(door_.orderLine(order));
}

}  // namespace cinder::face
