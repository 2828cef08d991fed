#include "fire.h"

#include <algorithm>
#include <cmath>

#include "cautions.h"
#include "settings.h"

namespace cinder::face {

using app::BatchCard;
using app::PieceCard;
using app::PieceState;

namespace {

/// Seconds a hand bears a grate, and grams of coal added at once; the core refuses the rest
/// (session_fire.cpp).
constexpr double kShortestHand = 1;
constexpr double kLongestHand = 14;
constexpr double kLeastCoal = 100;
constexpr double kMostCoal = 200'000;

}  // namespace

Fire::Fire(FireDoor& door, const Settings& settings, const Words& words, Take take)
    : door_(door), settings_(settings), words_(words), take_(std::move(take)) {}

void Fire::show(std::shared_ptr<const app::Snapshot> day) {
    day_ = std::move(day);
    // Undone, finished elsewhere or planned anew: a sheet about nothing closes.
    const bool isOfBatch = sheet_ != QLatin1String("hand") && sheet_ != QLatin1String("coal");
    const bool isGone =
        batch() == nullptr || (sheet_ == QLatin1String("several") && batch()->isOver);
    if (!sheet_.isEmpty() && isOfBatch && isGone) close();
    retell();
}

void Fire::retell() {
    if (!day_) return;
    const QString key =
        chosen() != nullptr && !sheet_.isEmpty() ? pieceKey(*task_, number_) : QString();
    grates_.show(fireWords_.grates(*day_, key));
    batches_.show(fireWords_.batches(*day_));
    pans_.show(fireWords_.shelf(*day_));
    retellSeveral();
    Q_EMIT mapChanged();
    if (auto next = describePiece(); !(next == piece_)) {
        piece_ = std::move(next);
        Q_EMIT pieceChanged();
    }
}

const BatchCard* Fire::batch() const {
    return day_ && task_ ? day_->fire.find(*task_) : nullptr;
}

const PieceCard* Fire::chosen() const {
    const BatchCard* found = batch();
    if (found == nullptr) return nullptr;
    const auto piece = std::find_if(found->pieces.begin(), found->pieces.end(),
                                    [&](const PieceCard& p) { return p.number == number_; });
    return piece == found->pieces.end() ? nullptr : &*piece;
}

PieceFace Fire::describePiece() const {
    PieceFace face;
    const BatchCard* found = batch();
    const PieceCard* card = chosen();
    if (card == nullptr) return face;
    face.title = FireWords::title(*found, *card);
    face.dish = fireWords_.title(*found, *day_);
    face.kind = fireWords_.className(*found, card->kind);
    face.studs = FireWords::studs(*found, card->kind);
    face.state = FireWords::state(card->state);
    face.mark = FireWords::mark(card->state);
    face.isDue = card->state == PieceState::Due;
    if (card->toPull && card->state != PieceState::Pulled) {
        face.time = face.isDue ? tr("pull now") : tr("%1 to pull").arg(FireWords::toPull(*card));
        face.band = found->isForecast ? FireWords::band(*card->toPull) : QString();
    }
    if (card->pulled)
        face.time = tr("into pan %1 at %2").arg(card->pan).arg(words_.clock(*card->pulled));
    face.target = fireWords_.target(*found);
    face.minimum = fireWords_.minimum(*found);
    face.source = QString::fromUtf8(found->minimumSource.data(),
                                    static_cast<qsizetype>(found->minimumSource.size()));
    face.warning = FireWords::warning(*found);
    face.peak = fireWords_.peak(*card);
    face.reading = fireWords_.reading(*card);
    face.roast = fireWords_.roast(*card);
    face.roastWarning = fireWords_.roastWarning(*card);
    face.core = coreChart(*found, *card, day_->now, words_);
    face.turning = FireWords::turning(*found, *card);
    face.missing = FireWords::missing(*found);
    const bool isCool = card->state == PieceState::OnCoolSide;
    face.moveVerb = isCool ? tr("Back over the coals") : tr("To the cool side");
    face.pullVerb = tr("Pull into pan %1").arg(panFor(*found));
    face.canTouch =
        !day_->isReadOnly && card->state != PieceState::Pulled && card->state != PieceState::ToCome;
    return face;
}

std::int32_t Fire::panFor(const BatchCard& batch) const {
    std::int32_t highest = 0;
    for (const app::PanCard& pan : day_->fire.pans) {
        if (pan.dish == batch.dish) return pan.number;
        highest = std::max(highest, pan.number);
    }
    return highest + 1;
}

QString Fire::sheetTitle() const {
    if (sheet_ == QLatin1String("probe"))
        return tr("%1: what does the probe show?").arg(piece_.title);
    if (sheet_ == QLatin1String("start"))
        return tr("How warm was the meat inside when it went on?");
    if (sheet_ == QLatin1String("hand"))
        return tr("How long did a palm bear the heat at the height of the grate?");
    if (sheet_ == QLatin1String("coal")) return tr("How much coal was added?");
    if (sheet_ == QLatin1String("several")) return tr("Which pieces come off now?");
    return piece_.title;
}

QString Fire::thermometerCaution() const {
    return briefCaution("thermometer", words_.language());
}

QString Fire::greaseCaution() const {
    return briefCaution("hot-grease", words_.language());
}

void Fire::retellSeveral() {
    const BatchCard* found = batch();
    if (found == nullptr || sheet_ != QLatin1String("several")) return;
    // What somebody else pulled in the meantime is not pulled again.
    for (const PieceCard& piece : found->pieces)
        if (piece.state == PieceState::Pulled) several_.erase(piece.number);
    choices_.show(fireWords_.choices(*found, several_));
    const auto count = static_cast<int>(several_.size());
    severalVerb_ = count == 0   ? tr("Touch the pieces to pull")
                   : count == 1 ? tr("Pull 1 piece into pan %1").arg(panFor(*found))
                                : tr("Pull %1 pieces into pan %2").arg(count).arg(panFor(*found));
    Q_EMIT severalChanged();
}

void Fire::openSheet(const QString& name) {
    sheet_ = name;
    retell();
    Q_EMIT sheetChanged();
}

void Fire::openPiece(const QString& key) {
    const auto cut = key.lastIndexOf(QLatin1Char('#'));
    task_ = TaskId(key.left(cut).toStdString());
    number_ = key.mid(cut + 1).toInt();
    if (chosen() != nullptr) openSheet(QStringLiteral("piece"));
}

void Fire::step(int by) {
    const BatchCard* found = batch();
    if (found == nullptr || found->pieces.empty()) return;
    const auto count = static_cast<std::int32_t>(found->pieces.size());
    std::int32_t place = 0;
    while (place < count && found->pieces[static_cast<std::size_t>(place)].number != number_)
        ++place;
    place = ((place + by) % count + count) % count;
    number_ = found->pieces[static_cast<std::size_t>(place)].number;
    openSheet(QStringLiteral("piece"));
}

void Fire::ask(const QString& name, NumberEntry::Kind kind, double least, double most) {
    pad_.begin(kind, least, most, isCustomaryFor(kind, settings_));
    openSheet(name);
}

void Fire::askProbe() {
    const BatchCard* found = batch();
    const auto possible = cook::possibleReadings(found ? found->startTemperature : std::nullopt);
    ask(QStringLiteral("probe"), NumberEntry::Kind::Temperature, possible.least.celsius(),
        possible.most.celsius());
}

void Fire::askHand(const QString& grate) {
    grate_ = ResourceId(grate.toStdString());
    ask(QStringLiteral("hand"), NumberEntry::Kind::Seconds, kShortestHand, kLongestHand);
}

void Fire::askCoal(const QString& grate) {
    grate_ = ResourceId(grate.toStdString());
    ask(QStringLiteral("coal"), NumberEntry::Kind::Mass, kLeastCoal, kMostCoal);
}

void Fire::askStart(const QString& task) {
    task_ = TaskId(task.toStdString());
    number_ = 0;
    if (batch() == nullptr) return;
    const auto possible = cook::possibleReadings({});
    ask(QStringLiteral("start"), NumberEntry::Kind::Temperature, possible.least.celsius(),
        possible.most.celsius());
}

void Fire::noteNumber() {
    if (!pad_.isReady()) return;
    if (sheet_ == QLatin1String("hand") && grate_) {
        const auto held = std::chrono::milliseconds(std::llround(pad_.value() * 1000));
        if (take_(door_.testByHand(*grate_, held))) close();
        return;
    }
    if (sheet_ == QLatin1String("coal") && grate_) {
        if (take_(door_.addCoal(*grate_, Mass::fromGrams(std::llround(pad_.value()))))) close();
        return;
    }
    if (!task_) return;
    const auto shown = Temperature::fromCelsius(pad_.value());
    if (sheet_ == QLatin1String("probe")) {
        if (take_(door_.readPiece(*task_, number_, shown))) openSheet(QStringLiteral("piece"));
    } else if (sheet_ == QLatin1String("start")) {
        if (take_(door_.layPieces(*task_, shown))) close();
    }
}

void Fire::judge(bool isDone) {
    if (task_) take_(door_.judgePiece(*task_, number_, isDone));
}

void Fire::pull() {
    const BatchCard* found = batch();
    if (found != nullptr && take_(door_.pullPieces(*task_, {number_}, panFor(*found)))) close();
}

void Fire::openSeveral(const QString& task) {
    task_ = TaskId(task.toStdString());
    number_ = 0;
    several_.clear();
    const BatchCard* found = batch();
    if (found == nullptr) return;
    for (const PieceCard& piece : found->pieces)
        if (piece.state == PieceState::Due) several_.insert(piece.number);
    openSheet(QStringLiteral("several"));
}

void Fire::choose(const QString& key) {
    const std::int32_t number = key.mid(key.lastIndexOf(QLatin1Char('#')) + 1).toInt();
    if (several_.erase(number) == 0) several_.insert(number);
    retellSeveral();
}

void Fire::pullSeveral() {
    const BatchCard* found = batch();
    if (found == nullptr || several_.empty()) return;
    if (take_(door_.pullPieces(*task_, {several_.begin(), several_.end()}, panFor(*found))))
        close();
}

void Fire::move() {
    const PieceCard* card = chosen();
    if (card == nullptr) return;
    if (take_(door_.movePieces(*task_, {number_}, card->state != PieceState::OnCoolSide))) close();
}

void Fire::back() {
    if (sheet_ == QLatin1String("probe"))
        openSheet(QStringLiteral("piece"));
    else
        close();
}

void Fire::close() {
    if (sheet_.isEmpty()) return;
    openSheet({});
}

}  // namespace cinder::face
