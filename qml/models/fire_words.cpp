#include "fire_words.h"

#include <algorithm>
#include <cmath>

#include "row_maker.h"

namespace cinder::face {

using app::BatchCard;
using app::PieceCard;
using app::PieceState;
using std::chrono::seconds;

QString pieceKey(const TaskId& task, std::int32_t number) {
    return toText(task.text()) + QLatin1Char('#') + QString::number(number);
}

QString FireWords::state(PieceState state) {
    switch (state) {
        case PieceState::ToCome:
            return tr("to come");
        case PieceState::OverCoals:
            return tr("over the coals");
        case PieceState::OnCoolSide:
            return tr("on the cool side");
        case PieceState::Due:
            return tr("due");
        case PieceState::Pulled:
            return tr("pulled");
    }
    return {};
}

QString FireWords::mark(PieceState state) {
    switch (state) {
        case PieceState::ToCome:
            return QStringLiteral("waiting");
        case PieceState::OverCoals:
            return QStringLiteral("running");
        case PieceState::OnCoolSide:
            return QStringLiteral("ready");
        case PieceState::Due:
            return QStringLiteral("over");
        case PieceState::Pulled:
            return QStringLiteral("done");
    }
    return {};
}

QString FireWords::title(const BatchCard& batch, const PieceCard& piece) {
    return tr("Piece %1 of %2").arg(piece.number).arg(batch.pieces.size());
}

QString FireWords::title(const BatchCard& batch, const app::Snapshot& day) const {
    const auto* card = findCard(day, batch.task);
    return card != nullptr ? words_.title(*card) : words_.name(batch.dishName);
}

int FireWords::studs(const BatchCard& batch, std::int32_t kind) {
    if (batch.kinds.size() < 2) return 0;
    const auto mine = batch.kinds.at(static_cast<std::size_t>(kind)).thickness;
    return 1 + static_cast<int>(
                   std::count_if(batch.kinds.begin(), batch.kinds.end(),
                                 [&](const app::KindCard& k) { return k.thickness < mine; }));
}

QString FireWords::className(const BatchCard& batch, std::int32_t kind) const {
    const app::KindCard& card = batch.kinds.at(static_cast<std::size_t>(kind));
    QStringList parts;
    if (!card.name.empty()) parts << words_.name(card.name);
    if (card.thickness > Length{}) parts << words_.thickness(card.thickness);
    return parts.join(QStringLiteral(", "));
}

QString FireWords::toPull(const PieceCard& piece) {
    if (piece.state == PieceState::Pulled) return {};
    if (piece.state == PieceState::Due) return tr("now");
    return piece.toPull ? Words::span(piece.toPull->likely) : QString();
}

QString FireWords::band(const cook::Band<Duration>& band) {
    return tr("8 times in 10 between %1 and %2").arg(Words::span(band.low), Words::span(band.high));
}

QString FireWords::target(const BatchCard& batch) const {
    return batch.missing.notMeat ? QString()
                                 : tr("Pull at %1").arg(words_.temperature(batch.pullAt));
}

QString FireWords::minimum(const BatchCard& batch) const {
    return batch.minimum ? words_.minimum(*batch.minimum, batch.minimumHold, batch.isMinimumLocal)
                         : QString();
}

QString FireWords::warning(const BatchCard& batch) {
    if (batch.minimum && batch.isBelowMinimum && batch.isMinimumLocal)
        return tr(
            "The target lies below the local minimum. Only a thermometer tells whether a piece "
            "reached it; the forecast never says safe.");
    return batch.minimum && batch.isBelowMinimum
               ? tr("The target lies below the published minimum. Only a thermometer tells "
                    "whether a piece reached it; the forecast never says safe.")
               : QString();
}

QString FireWords::peak(const PieceCard& piece) const {
    if (!piece.peak) return {};
    return tr("Climbs after the pull to about %1 (%2 to %3)")
        .arg(words_.temperature(piece.peak->likely), words_.temperature(piece.peak->low),
             words_.temperature(piece.peak->high));
}

QString FireWords::reading(const PieceCard& piece) const {
    QStringList parts;
    if (piece.lastReading && piece.lastReadAt)
        parts << tr("Probe showed %1 at %2")
                     .arg(words_.measured(*piece.lastReading), words_.clock(*piece.lastReadAt));
    if (piece.lastJudgement)
        parts << (*piece.lastJudgement ? tr("looked done") : tr("looked not done yet"));
    return parts.join(QStringLiteral(" · "));
}

QString FireWords::roast(const PieceCard& piece) const {
    if (!piece.roast) return {};
    const auto& row = cook::kSalmonellaInRoasts.reference;
    QString said =
        tr("Readings so far count like %1 at %2; the published roast table asks %3 there.")
            .arg(Words::span(piece.roast->equivalent), words_.temperature(row),
                 Words::span(cook::kRoastNeedAt60));
    if (piece.roast->gaps > 0)
        said += QLatin1Char(' ') + tr("Gaps longer than 15 min count for nothing.");
    return said;
}

QString FireWords::roastWarning(const PieceCard& piece) const {
    if (!piece.roast) return {};
    return tr("Information only: one probe at one place, intact roasts of beef, lamb or pork. "
              "Below %1 treat it as advice and add margin. The food code and a thermometer at "
              "the published minimum decide.")
        .arg(words_.temperature(Temperature::fromCelsius(58)));
}

QString FireWords::turning(const BatchCard& batch, const PieceCard& piece) {
    const auto kind = static_cast<std::size_t>(piece.kind);
    if (kind >= batch.kinds.size() || batch.kinds[kind].turning.size() != 3) return {};
    const cook::TurningEffect& often = batch.kinds[kind].turning[0];
    const cook::TurningEffect& usual = batch.kinds[kind].turning[1];
    const cook::TurningEffect& seldom = batch.kinds[kind].turning[2];
    if (!usual.toPull) return {};
    const auto against = [&](const cook::TurningEffect& other) {
        const QString every = Words::span(other.interval);
        if (!other.toPull) return tr("every %1 it would not get there").arg(every);
        const Duration more = *other.toPull - *usual.toPull;
        if (std::chrono::abs(more) < seconds(30))
            return tr("every %1 makes no difference").arg(every);
        return more > Duration::zero()
                   ? tr("every %1 takes %2 longer").arg(every, Words::span(more))
                   : tr("every %1 saves %2").arg(every, Words::span(more));
    };
    return tr("Turned every %1 it lies about %2 in all; %3, %4.")
        .arg(Words::span(usual.interval), Words::span(*usual.toPull), against(often),
             against(seldom));
}

QString FireWords::missing(const BatchCard& batch) {
    const auto& missing = batch.missing;
    if (missing.notMeat) return tr("No forecast for this food: the plan's estimate stands.");
    if (missing.thickness)
        return tr(
            "No forecast: the event does not say how thick the pieces are. The plan's "
            "estimate stands.");
    if (missing.start && missing.fire)
        return tr(
            "No forecast yet, the plan's estimate stands. Tell how warm the meat was when it "
            "went on, and test the fire by hand.");
    if (missing.start)
        return tr(
            "No forecast yet, the plan's estimate stands. Tell how warm the meat was when it "
            "went on.");
    if (missing.fire)
        return tr("No forecast yet, the plan's estimate stands. Test the fire by hand.");
    if (missing.refused) return refused(batch);
    if (missing.isNeverReached)
        return tr(
            "No forecast: by the model this fire brings no piece to the target in four hours. "
            "The plan's estimate stands; test the fire again and go by the thermometer.");
    if (batch.readingsSetAside > 0)
        return tr("Readings that no piece can have given are left out of the forecast: %1. Probe "
                  "again, and look at the unit.")
            .arg(batch.readingsSetAside);
    return {};
}

QString FireWords::refused(const BatchCard& batch) {
    if (batch.missing.refused->field == "start")
        return batch.startTemperature && *batch.startTemperature < batch.pullAt
                   ? tr("No forecast: the meat was laid frozen, and the model knows thawed meat "
                        "only. The plan's estimate stands; go by the thermometer.")
                   : tr("No forecast: the meat was laid as warm as it is to be pulled. The plan's "
                        "estimate stands; take that back if it was a slip, and go by the "
                        "thermometer.");
    if (batch.missing.refused->field == "thickness")
        return tr(
            "No forecast: the model knows pieces of 3 to 299 mm. The plan's estimate stands; "
            "look at the thickness in the event, and go by the thermometer.");
    return tr("No forecast: what was told of this batch does not fit together (%1). The plan's "
              "estimate stands; go by the thermometer.")
        .arg(QString::fromUtf8(batch.missing.refused->field.data(),
                               static_cast<qsizetype>(batch.missing.refused->field.size())));
}

PieceRow FireWords::piece(const BatchCard& batch, const PieceCard& card,
                          const app::GrateCard& grate, const QString& chosen) const {
    const double length = std::max(1.0, grate.length.millimetres());
    const double width = std::max(1.0, grate.width.millimetres());
    PieceRow row;
    row.key = pieceKey(batch.task, card.number);
    row.task = toText(batch.task.text());
    row.number = card.number;
    row.state = card.state;
    row.studs = studs(batch, card.kind);
    row.time = toPull(card);
    for (const grate::Point& corner : card.outline)
        row.outline << QPointF(corner.x.millimetres() / length, corner.y.millimetres() / width);
    const QRectF box = row.outline.boundingRect();
    row.along = box.x();
    row.across = box.y();
    row.alongSize = box.width();
    row.acrossSize = box.height();
    row.isChosen = row.key == chosen;
    QStringList said{tr("Piece %1").arg(card.number)};
    if (const QString kind = className(batch, card.kind); !kind.isEmpty()) said << kind;
    said << state(card.state);
    if (!row.time.isEmpty() && card.state != PieceState::Due) said << row.time;
    row.name = said.join(QStringLiteral(", "));
    return row;
}

void FireWords::tellCoals(GrateRow& row, const app::CoalCard& coal) const {
    if (!coal.handTests.empty()) {
        const auto& test = coal.handTests.back();
        row.hand = tr("Hand test %1 at %2").arg(Words::span(test.held), words_.clock(test.at));
        // What cooks say the seconds mean: common practice - no source.
        if (test.low && test.high)
            row.hand += tr(": about %1–%2 at the grate")
                            .arg(words_.temperature(*test.low), words_.temperature(*test.high));
    }
    if (coal.topUpBy) row.topUp = tr("Add coal by %1").arg(words_.clockAndBell(*coal.topUpBy));
    if (coal.need) {
        const QString load = words_.mass(coal.need->load);
        row.need = coal.need->bags == 1
                       ? tr("Coal for the day: %1, 1 bag.").arg(load)
                       : tr("Coal for the day: %1, %2 bags.").arg(load).arg(coal.need->bags);
        row.need += QLatin1Char(' ') +
                    tr("By published heating values %1 to %2; by the depth of bed that cooks "
                       "keep, without a source, %3.")
                        .arg(words_.mass(coal.need->byHeat.low),
                             words_.mass(coal.need->byHeat.high), words_.mass(coal.need->byDepth));
    }
}

std::vector<GrateRow> FireWords::grates(const app::Snapshot& day, const QString& chosen) {
    std::vector<GrateRow> rows;
    for (const app::GrateCard& grate : day.fire.grates) {
        GrateRow row;
        row.key = toText(grate.id.text());
        row.name = words_.name(grate.name);
        row.ratio = grate.length.millimetres() / std::max(1.0, grate.width.millimetres());
        row.coolShare = grate.coolSide.millimetres() / std::max(1.0, grate.length.millimetres());
        std::vector<PieceRow> pieces;
        int due = 0;
        for (const TaskId& task : grate.batches) {
            const BatchCard* batch = day.fire.find(task);
            if (batch == nullptr) continue;
            for (const PieceCard& card : batch->pieces) {
                pieces.push_back(piece(*batch, card, grate, chosen));
                due += card.state == PieceState::Due ? 1 : 0;
                row.onIt += card.state == PieceState::Pulled ? 0 : 1;
            }
        }
        row.note =
            due > 0 ? tr("%1 on it, %2 due").arg(row.onIt).arg(due) : tr("%1 on it").arg(row.onIt);
        row.canTouch = !day.isReadOnly;
        row.fire = fireChart(grate.coal, day.now, words_);
        tellCoals(row, grate.coal);
        auto& list = pieces_[grate.id.text()];
        if (!list) list = std::make_shared<ListOf<PieceRow>>();
        list->show(std::move(pieces));
        row.pieces = list;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<PieceChoiceRow> FireWords::choices(const BatchCard& batch,
                                               const std::set<std::int32_t>& chosen) const {
    std::vector<PieceChoiceRow> rows;
    for (const PieceCard& card : batch.pieces) {
        if (card.state == PieceState::Pulled || card.state == PieceState::ToCome) continue;
        PieceChoiceRow row;
        row.key = pieceKey(batch.task, card.number);
        row.number = QString::number(card.number);
        row.time = toPull(card);
        row.mark = mark(card.state);
        row.studs = studs(batch, card.kind);
        row.isChosen = chosen.contains(card.number);
        row.isDue = card.state == PieceState::Due;
        QStringList said{tr("Piece %1").arg(card.number)};
        if (const QString kind = className(batch, card.kind); !kind.isEmpty()) said << kind;
        said << state(card.state);
        row.name = said.join(QStringLiteral(", "));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ShelfRow> FireWords::shelf(const app::Snapshot& day) const {
    std::vector<ShelfRow> rows;
    for (const app::PanCard& pan : day.fire.pans) {
        ShelfRow row;
        row.key = QString::number(pan.number) + QLatin1Char('#') + toText(pan.dish.text());
        row.title = tr("Pan %1 · %2").arg(pan.number).arg(words_.name(pan.dishName));
        row.note = tr("%1 of %2 pieces, the last at %3")
                       .arg(pan.pulled)
                       .arg(pan.of)
                       .arg(words_.clock(pan.last));
        row.share = pan.of > 0 ? static_cast<double>(pan.pulled) / pan.of : 0;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ClassRow> FireWords::classes(const BatchCard& batch) const {
    std::vector<ClassRow> rows;
    for (std::size_t i = 0; i < batch.kinds.size(); ++i) {
        const app::KindCard& card = batch.kinds[i];
        ClassRow row;
        row.key = QString::number(i);
        row.studs = studs(batch, static_cast<std::int32_t>(i));
        row.name = className(batch, static_cast<std::int32_t>(i));
        row.onGrate = tr("%1 of %2 on the grate").arg(card.pieces - card.pulled).arg(card.pieces);
        if (card.toPull && card.pulled < card.pieces)
            row.time = card.toPull->likely > seconds(0)
                           ? tr("about %1 to pull (%2 to %3)")
                                 .arg(Words::span(card.toPull->likely),
                                      Words::span(card.toPull->low), Words::span(card.toPull->high))
                           : tr("due");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<FireBatchRow> FireWords::batches(const app::Snapshot& day) {
    std::vector<FireBatchRow> rows;
    for (const BatchCard& batch : day.fire.batches) {
        if (!batch.laid || batch.isOver) continue;
        FireBatchRow row;
        row.key = toText(batch.task.text());
        row.grate = toText(batch.grate.text());
        row.title = title(batch, day);
        row.target = target(batch);
        row.minimum = minimum(batch);
        row.source = QString::fromUtf8(batch.minimumSource.data(),
                                       static_cast<qsizetype>(batch.minimumSource.size()));
        row.warning = warning(batch);
        if (batch.spread)
            row.spread = tr("From the first piece to the last about %1 (%2 to %3)")
                             .arg(Words::span(batch.spread->likely), Words::span(batch.spread->low),
                                  Words::span(batch.spread->high));
        row.missing = missing(batch);
        row.canTellStart = batch.missing.start && !batch.missing.notMeat && !day.isReadOnly;
        if (batch.startTemperature)
            row.start = tr("Laid at %1 inside").arg(words_.measured(*batch.startTemperature));
        row.canPull = !day.isReadOnly;
        auto& list = classes_[batch.task.text()];
        if (!list) list = std::make_shared<ListOf<ClassRow>>();
        list->show(classes(batch));
        row.classes = list;
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace cinder::face
