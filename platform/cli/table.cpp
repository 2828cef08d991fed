#include "cli/table.h"

#include <algorithm>

namespace cinder::cli {

namespace {

/// Code points in UTF-8 text: every byte that does not continue one.
std::size_t width(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U;
    }));
}

}  // namespace

Table::Table(std::vector<std::string> heads, std::vector<std::size_t> rightAligned)
    : rightAligned_(std::move(rightAligned)) {
    rows_.push_back(std::move(heads));
}

void Table::add(std::vector<std::string> row) {
    row.resize(rows_.front().size());
    rows_.push_back(std::move(row));
}

std::string Table::text() const {
    std::vector<std::size_t> widths(rows_.front().size(), 0);
    for (const auto& row : rows_)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], width(row[i]));
    std::string text;
    for (const auto& row : rows_) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string blanks(widths[i] - width(row[i]), ' ');
            const bool isRight =
                std::find(rightAligned_.begin(), rightAligned_.end(), i) != rightAligned_.end();
            line += (i == 0 ? "" : "  ") + (isRight ? blanks + row[i] : row[i] + blanks);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

}  // namespace cinder::cli
