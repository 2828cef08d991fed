#include "load.h"

#include <algorithm>

#include "day.h"

namespace cinder::face {

namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

}  // namespace

Load::Load(ListsDoor& door, Day& day, const Settings& settings, QObject* parent)
    : QObject(parent), door_(door), day_(day), words_(settings), clock_(settings) {}

void Load::show(const Listed& lists) {
    const bool isAnother = lists && lists_ && !(lists->event.id == lists_->event.id);
    lists_ = lists;
    if (isAnother || !lists) asked_.clear();
    tell();
}

void Load::setWay(const QString& way) {
    if (way == way_) return;
    way_ = way;
    tell();
}

journal::Packed::Where Load::where() const {
    return way_ == QLatin1String("home") ? journal::Packed::Where::Home
                                         : journal::Packed::Where::Out;
}

const app::PackCard* Load::find(const std::string& key) const {
    if (!lists_) return nullptr;
    const auto found = std::find_if(lists_->pack.begin(), lists_->pack.end(),
                                    [&](const app::PackCard& card) { return card.key == key; });
    return found == lists_->pack.end() ? nullptr : &*found;
}

std::int32_t Load::wanted(const app::PackCard& card) const {
    if (where() == journal::Packed::Where::Out) return card.wanted;
    return card.out > 0 ? card.out : card.wanted;
}

std::int32_t Load::counted(const app::PackCard& card) const {
    return where() == journal::Packed::Where::Out ? card.out : card.home;
}

LoadRow Load::row(const app::PackCard& card) const {
    LoadRow row;
    row.key = text(card.key);
    row.text = words_.amount(card.amount) + QStringLiteral(" · ") + words_.name(card.name);
    if (card.missing > 0 && where() == journal::Packed::Where::Home && card.home > 0)
        row.text += QStringLiteral(" · ") + tr("%1 missing").arg(card.missing);
    row.counted = QStringLiteral("%1 / %2").arg(counted(card)).arg(wanted(card));
    row.isIn = counted(card) >= wanted(card);
    row.canCount = wanted(card) > 1 || counted(card) > 0;
    return row;
}

void Load::tell() {
    std::vector<LoadGroupRow> groups;
    std::map<QString, std::vector<LoadRow>> inside;
    QStringList missing;
    int in = 0;
    int all = 0;
    const bool isHome = where() == journal::Packed::Where::Home;
    if (lists_)
        for (const app::PackCard& card : lists_->pack) {
            if (isHome && !card.comesBack) continue;
            const QString key = QString::number(static_cast<int>(card.ride));
            if (groups.empty() || groups.back().key != key)
                groups.push_back({key, text(report::word(card.ride, words_.style())), {}, nullptr});
            LoadRow one = row(card);
            ++all;
            in += one.isIn ? 1 : 0;
            if (isHome && card.missing > 0)
                missing << tr("%1 × %2").arg(card.missing).arg(words_.name(card.name));
            inside[key].push_back(std::move(one));
        }
    for (LoadGroupRow& group : groups) {
        auto& rows = inside[group.key];
        const auto done =
            std::count_if(rows.begin(), rows.end(), [](const LoadRow& one) { return one.isIn; });
        group.note = tr("%1 of %2").arg(done).arg(rows.size());
        auto& inner = inner_[group.key];
        if (!inner) inner = std::make_shared<ListOf<LoadRow>>();
        inner->show(std::move(rows));
        group.rows = inner;
    }
    groups_.show(std::move(groups));
    progress_ = isHome ? tr("%1 of %2 back in the van").arg(in).arg(all)
                       : tr("%1 of %2 in the van").arg(in).arg(all);
    done_ = all > 0 ? static_cast<double>(in) / all : 0;
    missing_ = missing.isEmpty() ? QString() : tr("Missing: %1").arg(missing.join(tr(", ")));
    leaveBy_.clear();
    if (lists_) {
        clock_.setPlace(lists_->event.serve.offset, lists_->event.serve.at);
        leaveBy_ = lists_->all.departure
                       ? tr("Leave by %1").arg(clock_.clockAndBell(lists_->all.departure->leaveBy))
                       : tr("When to leave is not known: say arrival, travel and time kept on "
                            "the road.");
    }
    tellKitchen();
    Q_EMIT changed();
}

QString Load::limits(const quantity::KitchenTask& task) const {
    QStringList lines;
    const auto style = words_.style();
    for (const quantity::Deadline& deadline : task.deadlines) {
        const QString degrees = text(report::temperatureText(deadline.temperature, style));
        const QString source = QString::fromUtf8(deadline.source.data(),
                                                 static_cast<qsizetype>(deadline.source.size()));
        const QString what =
            deadline.isAtMost ? tr("at most %1").arg(degrees) : tr("at least %1").arg(degrees);
        const QString when = deadline.by ? tr("by %1").arg(text(report::dayText(
                                               *deadline.by, lists_->event.serve.offset, style)))
                                         : tr("all the time");
        lines << tr("%1 %2 (%3)").arg(what, when, source);
    }
    return lines.join(QLatin1Char('\n'));
}

void Load::tellKitchen() {
    std::vector<KitchenRow> rows;
    const auto style = words_.style();
    if (lists_)
        for (const quantity::KitchenTask& task : lists_->all.kitchen) {
            const UtcOffset offset = lists_->event.serve.offset;
            KitchenRow one;
            one.key = text(task.dish.text() + "/" + task.step.text());
            one.name = words_.name(task.dishName) + QStringLiteral(" · ") + words_.name(task.name);
            if (task.weight) one.name += QStringLiteral(" · ") + words_.amount(task.weight->amount);
            const QString by = text(report::dayText(task.finishBy, offset, style));
            one.when = task.startBy
                           ? tr("begin by %1, done by %2")
                                 .arg(text(report::dayText(*task.startBy, offset, style)), by)
                           : tr("done by %1").arg(by);
            one.then = tr("then: %1").arg(text(report::word(task.then, style)));
            one.limits = limits(task);
            rows.push_back(std::move(one));
        }
    kitchen_.show(std::move(rows));
}

void Load::tick(const QString& key) {
    const app::PackCard* card = find(key.toStdString());
    if (card) day_.take(door_.pack(card->key, where(), wanted(*card)));
}

void Load::ask(const QString& key) {
    const app::PackCard* card = find(key.toStdString());
    if (!card) return;
    askedKey_ = card->key;
    asked_ = words_.name(card->name);
    entry_.beginAt(NumberEntry::Kind::Count, 0, wanted(*card), false, counted(*card));
    Q_EMIT changed();
}

void Load::dropAsked() {
    asked_.clear();
    Q_EMIT changed();
}

void Load::keep() {
    if (!entry_.isReady()) return;
    asked_.clear();
    day_.take(door_.pack(askedKey_, where(), static_cast<std::int32_t>(entry_.value())));
    Q_EMIT changed();
}

}  // namespace cinder::face
