#include "quantity/line.h"

#include <algorithm>
#include <set>

#include "event/menu.h"

namespace cinder::quantity {

std::vector<Prompt> linePrompts(const event::Event& event, const Line& line);

namespace {

using What = event::Fault::What;

/// A vessel that has no place yet.
struct Piece {
    std::size_t dish = 0;
    std::int32_t number = 1;
    event::Vessel vessel = event::Vessel::Bowl;
    Footprint size;
};

std::optional<Footprint> footprint(const event::Serving& serving) {
    switch (*serving.vessel) {
        case event::Vessel::Chafer:
            return chaferFootprint();
        case event::Vessel::ColdPan:
            if (!serving.panSize) return std::nullopt;
            return panFootprint(*serving.panSize);
        case event::Vessel::Bowl:
        case event::Vessel::Basket:
        case event::Vessel::Board:
        case event::Vessel::SauceBowl:
            break;
    }
    if (!serving.vesselLength || !serving.vesselWidth) return std::nullopt;
    return Footprint{*serving.vesselLength, *serving.vesselWidth};
}

/// The tables of one station and the dishes that are loaded there.
struct Row {
    StationId station;
    std::vector<TableSpan> tables;
    std::vector<std::size_t> dishes;  ///< in serving order
    std::vector<Piece> pieces;
};

/// Every vessel of a dish that is on the line at once.
void addPieces(std::vector<Piece>& all, const event::Event& event, std::size_t dish,
               const std::optional<Figure>& onLine) {
    const auto& serving = event.menu[dish].serving;
    if (!serving || !serving->vessel) return;
    const auto size = footprint(*serving);
    if (!size) return;
    const auto count = onLine ? roundedUp(onLine->amount.value) : 1;
    for (std::int64_t n = 1; n <= std::min<std::int64_t>(count, 100); ++n)
        all.push_back({dish, static_cast<std::int32_t>(n), *serving->vessel, *size});
}

/// Where `dish` stands: at the first station it is loaded at that has a table, else at the first.
std::size_t rowOf(const std::vector<Row>& rows, const event::Dish& dish) {
    for (const event::Step& step : dish.method) {
        if (step.kind != event::StepKind::Load) continue;
        const auto there = std::find_if(rows.begin(), rows.end(), [&step](const Row& row) {
            return row.station == step.station;
        });
        if (there != rows.end()) return static_cast<std::size_t>(there - rows.begin());
    }
    return 0;
}

/// Tables at the stations where the dishes are loaded, as many as there are, end to end.
std::vector<Row> tables(const event::Event& event) {
    std::set<StationId> stations;
    for (const event::Dish& dish : event.menu)
        for (const event::Step& step : dish.method)
            if (step.kind == event::StepKind::Load) stations.insert(step.station);
    std::vector<Row> rows;
    for (const event::Table& table : event.kit.tables) {
        if (!table.station || !stations.contains(*table.station)) continue;
        auto row = std::find_if(rows.begin(), rows.end(),
                                [&table](const Row& one) { return one.station == *table.station; });
        if (row == rows.end()) row = rows.insert(row, {*table.station, {}, {}, {}});
        auto& spans = row->tables;
        for (std::int32_t n = 1; n <= table.count; ++n) {
            const Length x = spans.empty() ? Length{} : spans.back().x + spans.back().length;
            spans.push_back(
                {table.id, n, table.name, x, table.length, table.width, *table.station});
        }
    }
    return rows;
}

/// Lays columns on tables, and past the last one on more like it, so as to say how much is short.
class Layer {
  public:
    Layer(const event::Event& event, std::vector<TableSpan> spans, bool isEndOn)
        : event_(event), isEndOn_(isEndOn) {
        line_.tables = std::move(spans);
        line_.areChafersEndOn = isEndOn;
        for (const TableSpan& span : line_.tables)
            line_.available += span.length;
    }

    Line lay(const std::vector<Piece>& pieces) {
        cursor_ = kPlatesRoom + kColumnGap;
        for (std::size_t i = 0; i < pieces.size();) {
            const Piece& front = pieces[i];
            const bool hasBack = i + 1 < pieces.size() && fitBehind(front, pieces[i + 1]);
            const Length length = hasBack
                                      ? std::max(sizeOf(front).length, sizeOf(pieces[i + 1]).length)
                                      : sizeOf(front).length;
            const std::size_t table = makeRoom(length);
            place(front, table, length, std::nullopt);
            if (hasBack) place(pieces[i + 1], table, length, sizeOf(front).width);
            cursor_ += length + kColumnGap;
            i += hasBack ? 2 : 1;
        }
        makeRoom(kCutleryRoom);
        line_.needed = cursor_ + kCutleryRoom;
        if (line_.needed > line_.available) line_.shortBy = line_.needed - line_.available;
        if (line_.shortBy > Length{})
            line_.moreTables = static_cast<std::int32_t>(
                roundedUp(line_.shortBy / spanAt(line_.tables.size()).length));
        return std::move(line_);
    }

  private:
    [[nodiscard]] Footprint sizeOf(const Piece& piece) const {
        if (piece.vessel == event::Vessel::Chafer && isEndOn_)
            return {piece.size.width, piece.size.length};
        return piece.size;
    }
    /// The table at `index`; past the last one, another like it.
    [[nodiscard]] TableSpan spanAt(std::size_t index) const {
        if (index < line_.tables.size()) return line_.tables[index];
        TableSpan more = line_.tables.back();
        more.x =
            line_.available + more.length * static_cast<std::int64_t>(index - line_.tables.size());
        return more;
    }
    [[nodiscard]] bool fitBehind(const Piece& front, const Piece& back) const {
        if (front.vessel == event::Vessel::Chafer || back.vessel == event::Vessel::Chafer)
            return false;
        return kCardStrip + sizeOf(front).width + sizeOf(back).width <= spanAt(table_).width;
    }
    /// Moves the cursor to where `length` stands on one table; that table's index.
    std::size_t makeRoom(Length length) {
        for (;; ++table_) {
            const TableSpan span = spanAt(table_);
            cursor_ = std::max(cursor_, span.x);
            // A thing longer than a table is blamed elsewhere; it must not go on for ever.
            if (cursor_ + length <= span.x + span.length || length > span.length) return table_;
        }
    }
    void place(const Piece& piece, std::size_t table, Length column, std::optional<Length> behind) {
        const event::Dish& dish = event_.menu[piece.dish];
        const Footprint size = sizeOf(piece);
        const bool hasRoom =
            table < line_.tables.size() && cursor_ + size.length <= line_.available;
        if (!hasRoom) {
            if (std::find(line_.waiting.begin(), line_.waiting.end(), dish.id) ==
                line_.waiting.end())
                line_.waiting.push_back(dish.id);
            return;
        }
        const Length middle =
            cursor_ + Length::fromMillimetres((column - size.length).millimetres() / 2);
        line_.stands.push_back({dish.id, dish.name, piece.vessel, dish.course, piece.number, table,
                                middle, kCardStrip + behind.value_or(Length{}), size.length,
                                size.width, behind.has_value()});
        if (piece.number == 1)
            line_.cards.push_back(
                {dish.id, dish.name, dish.contains, dish.suits,
                 middle + Length::fromMillimetres(size.length.millimetres() / 2)});
    }

    const event::Event& event_;
    bool isEndOn_;
    Line line_;
    Length cursor_;
    std::size_t table_ = 0;
};

/// Nothing is wider than the narrowest table of its line.
void checkWidths(Tally& tally, const Row& row) {
    Length narrowest = row.tables.front().width;
    for (const TableSpan& span : row.tables)
        narrowest = std::min(narrowest, span.width);
    for (const std::size_t i : row.dishes) {
        const auto& serving = tally.event().menu[i].serving;
        if (!serving || !serving->vesselWidth) continue;
        if (*serving->vesselWidth + kCardStrip > narrowest)
            tally.blame(
                What::Contradiction, "/menu/" + std::to_string(i) + "/serving/vesselWidthMm",
                std::to_string(roundedUp(serving->vesselWidth->millimetres())), "/kit/tables");
    }
}

void checkShort(Tally& tally, const Line& line) {
    if (line.shortBy == Length{}) return;
    const auto& kit = tally.event().kit.tables;
    for (std::size_t i = 0; i < kit.size(); ++i)
        if (kit[i].id == line.tables.back().table)
            tally.blame(What::OutOfRange, "/kit/tables/" + std::to_string(i) + "/count",
                        std::to_string(kit[i].count),
                        std::to_string(kit[i].count + line.moreTables) + "..1000");
}

Line layRow(const event::Event& event, const Row& row) {
    Line line = Layer(event, row.tables, false).lay(row.pieces);
    if (line.shortBy == Length{}) return line;
    // End-on chafers need a table that is deep enough.
    const bool isDeep = std::all_of(
        row.tables.begin(), row.tables.end(),
        [](const TableSpan& span) { return kCardStrip + chaferFootprint().length <= span.width; });
    Line endOn = Layer(event, row.tables, true).lay(row.pieces);
    return isDeep && endOn.needed < line.needed ? endOn : line;
}

/// `next` follows what there is.
void append(Line& line, Line next) {
    const Length from = line.available;
    const std::size_t before = line.tables.size();
    for (TableSpan& span : next.tables) {
        span.x += from;
        line.tables.push_back(std::move(span));
    }
    for (Stand& stand : next.stands) {
        stand.x += from;
        stand.table += before;
        line.stands.push_back(std::move(stand));
    }
    for (Card& card : next.cards) {
        card.x += from;
        line.cards.push_back(std::move(card));
    }
    line.waiting.insert(line.waiting.end(), next.waiting.begin(), next.waiting.end());
    line.available += next.available;
    line.needed += next.needed;
    line.shortBy += next.shortBy;
    line.moreTables += next.moreTables;
    line.areChafersEndOn = line.areChafersEndOn || next.areChafersEndOn;
}

}  // namespace

std::size_t jointCount(const Line& line) {
    std::size_t joints = 0;
    for (std::size_t t = 1; t < line.tables.size(); ++t)
        if (line.tables[t].station == line.tables[t - 1].station) ++joints;
    return joints;
}

Line layLine(Tally& tally, const std::vector<DishFigures>& dishes) {
    const event::Event& event = tally.event();
    auto rows = tables(event);
    if (rows.empty()) {
        tally.missing("/kit/tables");
        return {};
    }
    for (const std::size_t i : servingOrder(event)) {
        Row& row = rows[rowOf(rows, event.menu[i])];
        row.dishes.push_back(i);
        addPieces(row.pieces, event, i, dishes[i].onLine);
    }
    Line line;
    for (const Row& row : rows) {
        Line laid = layRow(event, row);
        checkWidths(tally, row);
        checkShort(tally, laid);
        append(line, std::move(laid));
    }
    line.prompts = linePrompts(event, line);
    return line;
}

}  // namespace cinder::quantity
