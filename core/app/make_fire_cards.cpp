#include "app/make_fire_cards.h"

#include <algorithm>
#include <tuple>

#include "safety/cooked.h"
#include "safety/record.h"

namespace cinder::app {

namespace {

cook::Band<Duration> fromNow(const cook::Band<Instant>& band, Instant now) {
    const auto left = [now](Instant at) { return std::max(at - now, Duration{0}); };
    return {left(band.low), left(band.likely), left(band.high)};
}

/// Arranges one day's fire.
class Board {
  public:
    Board(const live::Day& day, const live::Outlook& outlook, const live::FireForecast& fire,
          Instant now)
        : day_(day),
          outlook_(outlook),
          fire_(fire),
          now_(now),
          limits_(safety::limitsIn(day.record, now)) {}

    FireCards run() {
        FireCards cards;
        for (const live::BatchForecast& batch : fire_.batches)
            cards.batches.push_back(batchCard(batch));
        std::stable_sort(
            cards.batches.begin(), cards.batches.end(), [](const BatchCard& a, const BatchCard& b) {
                return a.laid.value_or(Instant::max()) < b.laid.value_or(Instant::max());
            });
        const auto coals = live::coalOutlooks(day_, outlook_);
        for (std::size_t i = 0; i < coals.size(); ++i)
            cards.grates.push_back(grateCard(day_.event->kit.grates[i], coals[i]));
        cards.pans = panCards();
        return cards;
    }

  private:
    PieceCard pieceCard(const live::BatchForecast& batch, std::size_t i) const {
        const live::PieceForecast& seen = batch.pieces[i];
        grate::Place place = batch.batch.pieces[i].place;
        place.x += batch.begin;
        if (seen.isOnCoolSide) moveToCoolSide(batch, i, place);
        PieceCard card;
        card.number = seen.number;
        card.kind = seen.kind;
        card.outline = grate::outlineAt(batch.batch.footprint, place);
        const grate::Footprint& size = batch.batch.footprint;
        const auto half = [](Length length) {
            return Length::fromMillimetres(length.millimetres() / 2);
        };
        card.centre = {place.x + half(place.isAcross ? size.width : size.length),
                       place.y + half(place.isAcross ? size.length : size.width)};
        card.angle = grate::angleDegrees(place);
        card.state = stateOf(batch, seen);
        if (seen.pull) card.toPull = fromNow(*seen.pull, now_);
        if (seen.carryOver) card.peak = seen.carryOver->peak;
        card.lastReading = seen.lastReading;
        card.lastReadAt = seen.lastReadAt;
        card.lastJudgement = seen.lastJudgement;
        card.roast = roastOf(batch, seen.number);
        card.pulled = seen.pulled;
        card.pan = seen.pan;
        return card;
    }

    std::optional<cook::Lethality> roastOf(const live::BatchForecast& batch,
                                           std::int32_t number) const {
        if (batch.batch.food != event::Food::WholeMeat) return {};
        const auto facts = day_.batches.find(batch.batch.task);
        if (facts == day_.batches.end()) return {};
        const auto piece = facts->second.pieces.find(number);
        if (piece == facts->second.pieces.end()) return {};
        // A slip of the finger must not count for hours of heat.
        const auto& laid = facts->second.laid;
        const auto possible =
            cook::possibleReadings(laid ? std::optional(laid->start) : std::nullopt);
        std::vector<cook::MeasuredPoint> history;
        for (const auto& [at, reading] : piece->second.readings)
            if (possible.holds(reading.temperature)) history.push_back({at, reading.temperature});
        const auto done = cook::lethalityOf(history, cook::kSalmonellaInRoasts);
        if (!done) return {};
        return *done;
    }

    /// Pieces on the cool side lie there in the order of their numbers, batch after batch.
    void moveToCoolSide(const live::BatchForecast& batch, std::size_t index,
                        grate::Place& place) const {
        const event::Grate* grate = plan::findGrate(*day_.event, batch.batch.grate);
        if (!grate) return;
        grate::Surface side{grate->coolSide, grate->width, grate->gap};
        Length begin = grate->length - grate->coolSide;
        for (const live::BatchForecast& other : fire_.batches) {
            if (other.batch.grate != batch.batch.grate) continue;
            std::int32_t there = 0;
            std::int32_t before = 0;
            for (std::size_t i = 0; i < other.pieces.size(); ++i) {
                if (!other.pieces[i].isOnCoolSide || other.pieces[i].pulled) continue;
                if (i < index) ++before;
                ++there;
            }
            if (there == 0 && &other != &batch) continue;
            const auto layout = grate::lay(side, other.batch.footprint, std::max(there, 1));
            if (&other == &batch) {
                const auto mine = static_cast<std::size_t>(before);
                if (!layout || mine >= layout->places.size()) return;  // no room: stays drawn here
                place = layout->places[mine];
                place.x += begin;
                return;
            }
            if (!layout) continue;
            begin += layout->usedLength + grate->gap;
            side.length = side.length - layout->usedLength - grate->gap;
        }
    }

    PieceState stateOf(const live::BatchForecast& batch, const live::PieceForecast& seen) const {
        if (seen.pulled) return PieceState::Pulled;
        if (!batch.laid) return PieceState::ToCome;
        if (seen.pull && seen.pull->likely <= now_) return PieceState::Due;
        return seen.isOnCoolSide ? PieceState::OnCoolSide : PieceState::OverCoals;
    }

    KindCard kindCard(const live::BatchForecast& batch, const live::KindForecast& seen) const {
        const live::PieceKind& described = batch.batch.kinds[static_cast<std::size_t>(seen.kind)];
        KindCard card;
        card.name = described.name;
        card.thickness = described.thickness;
        card.pieces = seen.pieces;
        card.pulled = seen.pulled;
        if (seen.pull) card.toPull = fromNow(*seen.pull, now_);
        card.drawnPiece = seen.drawnPiece;
        for (const cook::CurvePoint& point : seen.curve)
            card.curve.push_back({point.at, point.core});
        card.turning = seen.turning;
        const auto facts = day_.batches.find(batch.batch.task);
        if (!seen.drawnPiece || facts == day_.batches.end()) return card;
        const auto piece = facts->second.pieces.find(*seen.drawnPiece);
        if (piece == facts->second.pieces.end()) return card;
        for (const auto& [at, reading] : piece->second.readings)
            card.readings.push_back({at, reading.temperature});
        return card;
    }

    LocalText dishName(const DishId& id) const {
        for (const event::Dish& dish : day_.event->menu)
            if (dish.id == id) return dish.name;
        return {};
    }

    /// What the record will hold the thermometer against.
    void addMinimum(const live::BatchForecast& seen, BatchCard& card) const {
        safety::Minimum minimum = safety::minimumInForce(seen.batch.food, limits_);
        card.minimum = minimum.temperature;
        card.minimumHold = minimum.hold;
        card.isMinimumLocal = minimum.isLocal;
        card.minimumSource = std::move(minimum.source);
        card.isBelowMinimum = seen.pullAt < *card.minimum;
    }

    BatchCard batchCard(const live::BatchForecast& seen) const {
        BatchCard card;
        card.task = seen.batch.task;
        card.dish = seen.batch.dish;
        card.dishName = dishName(card.dish);
        card.grate = seen.batch.grate;
        card.isLaid = seen.laid.has_value();
        card.isOver = seen.over.has_value();
        card.isForecast = seen.isForecast;
        card.missing = {seen.missing.fire,    seen.missing.start,   seen.missing.thickness,
                        seen.missing.notMeat, seen.missing.refused, seen.missing.isNeverReached};
        card.laid = seen.laid;
        const auto facts = day_.batches.find(seen.batch.task);
        if (facts != day_.batches.end() && facts->second.laid)
            card.startTemperature = facts->second.laid->start;
        card.pullAt = seen.pullAt;
        if (seen.minimum) addMinimum(seen, card);
        for (std::size_t i = 0; i < seen.pieces.size(); ++i)
            card.pieces.push_back(pieceCard(seen, i));
        for (const live::KindForecast& kind : seen.kinds)
            card.kinds.push_back(kindCard(seen, kind));
        if (seen.isForecast) {
            if (seen.spread) card.spread = seen.spread->between;
            card.fireFactor = seen.fireFactor;
        }
        card.readingsSetAside = seen.readingsSetAside;
        return card;
    }

    CoalCard coalCard(const live::CoalOutlook& seen) const {
        CoalCard card;
        card.isReady = seen.isReady;
        card.ready = seen.ready;
        if (seen.bed) {
            card.left = fromNow(seen.bed->weak, now_);
            card.topUpBy = seen.bed->topUpBy;
        }
        for (const live::HandTest& test : seen.handTests) {
            CoalCard::HandTest mark{test.at, test.held, {}, {}};
            if (test.band) {
                mark.low = test.band->low;
                mark.high = test.band->high;
            }
            card.handTests.push_back(mark);
        }
        for (const auto& [at, shown] : seen.thermometer)
            card.thermometer.push_back({at, shown});
        card.added = seen.added;
        if (seen.need)
            card.need = CoalCard::Need{seen.need->byHeat, seen.need->byDepth, seen.need->load,
                                       seen.need->bags, cook::FirePlan{}.bag};
        return card;
    }

    GrateCard grateCard(const event::Grate& grate, const live::CoalOutlook& coal) const {
        GrateCard card;
        card.id = grate.id;
        card.name = grate.name;
        card.length = grate.length;
        card.width = grate.width;
        card.coolSide = grate.coolSide;
        std::vector<const live::BatchForecast*> lying;
        for (const live::BatchForecast& batch : fire_.batches)
            if (batch.batch.grate == grate.id && batch.laid && !batch.over) lying.push_back(&batch);
        std::stable_sort(lying.begin(), lying.end(),
                         [](const live::BatchForecast* a, const live::BatchForecast* b) {
                             return a->begin < b->begin;
                         });
        for (const live::BatchForecast* batch : lying)
            card.batches.push_back(batch->batch.task);
        card.coal = coalCard(coal);
        return card;
    }

    std::vector<PanCard> panCards() const {
        std::vector<PanCard> pans;
        const auto panOf = [&](std::int32_t number, const DishId& dish) -> PanCard& {
            for (PanCard& pan : pans)
                if (pan.number == number && pan.dish == dish) return pan;
            PanCard pan;
            pan.number = number;
            pan.dish = dish;
            pan.dishName = dishName(dish);
            pan.first = Instant::max();
            pan.last = Instant::min();
            return pans.emplace_back(std::move(pan));
        };
        for (const live::BatchForecast& batch : fire_.batches) {
            std::vector<std::int32_t> filled;
            for (const live::PieceForecast& piece : batch.pieces) {
                if (!piece.pulled || piece.pan < 1) continue;
                PanCard& pan = panOf(piece.pan, batch.batch.dish);
                ++pan.pulled;
                pan.first = std::min(pan.first, *piece.pulled);
                pan.last = std::max(pan.last, *piece.pulled);
                if (std::find(filled.begin(), filled.end(), piece.pan) != filled.end()) continue;
                filled.push_back(piece.pan);
                pan.of += static_cast<std::int32_t>(batch.pieces.size());
            }
        }
        std::sort(pans.begin(), pans.end(), [](const PanCard& a, const PanCard& b) {
            return std::tie(a.number, a.dish) < std::tie(b.number, b.dish);
        });
        return pans;
    }

    const live::Day& day_;
    const live::Outlook& outlook_;
    const live::FireForecast& fire_;
    Instant now_;
    safety::Limits limits_;
};

}  // namespace

const BatchCard* FireCards::find(const TaskId& task) const {
    for (const BatchCard& batch : batches)
        if (batch.task == task) return &batch;
    return nullptr;
}

FireCards makeFireCards(const live::Day& day, const live::Outlook& outlook,
                        const live::FireForecast& fire, Instant now) {
    return day.event ? Board(day, outlook, fire, now).run() : FireCards{};
}

}  // namespace cinder::app
