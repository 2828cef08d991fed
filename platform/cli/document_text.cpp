#include "cli/document_text.h"

#include "cli/table.h"

namespace cinder::cli {

namespace {

std::string tableText(const report::Table& table) {
    std::vector<std::string> heads;
    std::vector<std::size_t> ends;
    if (table.boxes > 0) heads.emplace_back();
    for (const report::Column& column : table.columns) {
        if (column.align == report::Align::End) ends.push_back(heads.size());
        heads.push_back(column.head);
    }
    Table text(std::move(heads), std::move(ends));
    for (const report::Row& row : table.rows) {
        std::vector<std::string> cells;
        if (table.boxes > 0) {
            std::string boxes;
            for (int i = 0; i < table.boxes; ++i)
                boxes += "[ ]";
            cells.push_back(std::move(boxes));
        }
        cells.insert(cells.end(), row.cells.begin(), row.cells.end());
        // A person's own value is marked, not only set in bold.
        if (row.isEmphasized) cells.back() += " *";
        text.add(std::move(cells));
    }
    return text.text();
}

std::string cardText(const report::StandingCard& card) {
    std::string text = card.title + "\n";
    for (const std::string& line : card.lines)
        text += "  " + line + "\n";
    return text;
}

std::string blockText(const report::Block& block) {
    if (const auto* heading = std::get_if<report::Heading>(&block))
        return "\n" + heading->text + "\n";
    if (const auto* note = std::get_if<report::Note>(&block))
        return (note->isCaution ? "! " : "") + note->text + "\n";
    if (const auto* table = std::get_if<report::Table>(&block)) return tableText(*table);
    if (const auto* blank = std::get_if<report::Blank>(&block)) return blank->label + " ______\n";
    if (const auto* card = std::get_if<report::StandingCard>(&block)) return cardText(*card);
    return {};
}

}  // namespace

std::string documentText(const report::Document& document) {
    std::string text = document.title + "\n" + document.subtitle + "\n\n";
    for (const report::Block& block : document.blocks)
        text += blockText(block);
    return text;
}

}  // namespace cinder::cli
