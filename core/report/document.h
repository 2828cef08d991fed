#pragma once

/// Paper as values: one model for every sheet the crew prints, apart from how it is drawn.
///
/// A document is a title and blocks in order. All text in it is finished words in one language and
/// one set of units; whoever draws it decides fonts, columns and page breaks, and may not compute.
/// Lists can also be written as CSV (report/csv.h).

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "base/units.h"

namespace cinder::report {

enum class Align : std::uint8_t { Start, End };

struct Column {
    std::string head;
    Align align = Align::Start;
    /// Share of the width, relative to the other columns.
    int weight = 1;
    friend bool operator==(const Column&, const Column&) = default;
};

struct Row {
    std::vector<std::string> cells;  ///< as many as the table has columns
    /// Set in bold: a person's own value, something critical.
    bool isEmphasized = false;
    friend bool operator==(const Row&, const Row&) = default;
};

struct Table {
    /// What the table is called, for the name of its CSV file; never printed.
    std::string name;
    std::vector<Column> columns;
    std::vector<Row> rows;
    /// So many check boxes before each row: one for the van, one for the way home.
    int boxes = 0;
    friend bool operator==(const Table&, const Table&) = default;
};

struct Heading {
    std::string text;
    int level = 1;  ///< 1 or 2
    friend bool operator==(const Heading&, const Heading&) = default;
};

struct Note {
    std::string text;
    /// Someone could be hurt: framed, never left out to save space.
    bool isCaution = false;
    friend bool operator==(const Note&, const Note&) = default;
};

/// A line to fill in by hand: "Temperature at 14:00 ______".
struct Blank {
    std::string label;
    friend bool operator==(const Blank&, const Blank&) = default;
};

/// A drawing to scale, seen from above; x to the right, y downwards.
struct Drawing {
    struct Box {
        Length x, y, width, height;
        std::string label;
        bool isHollow = false;  ///< an outline only: a table
        friend bool operator==(const Box&, const Box&) = default;
    };
    Length width, height;
    std::vector<Box> boxes;
    friend bool operator==(const Drawing&, const Drawing&) = default;
};

/// A card to fold and stand: large title, smaller lines.
struct StandingCard {
    std::string title;
    std::vector<std::string> lines;
    friend bool operator==(const StandingCard&, const StandingCard&) = default;
};

struct PageBreak {
    friend bool operator==(const PageBreak&, const PageBreak&) = default;
};

using Block = std::variant<Heading, Note, Table, Blank, Drawing, StandingCard, PageBreak>;

struct Document {
    std::string title;
    std::string subtitle;
    std::string language;
    std::vector<Block> blocks;
    friend bool operator==(const Document&, const Document&) = default;
};

/// The tables of a document in order.
[[nodiscard]] std::vector<const Table*> tablesOf(const Document& document);

}  // namespace cinder::report
