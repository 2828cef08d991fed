#include "report/csv.h"

namespace cinder::report {

namespace {

void addField(std::string& record, const std::string& field, bool isFirst) {
    if (!isFirst) record += ',';
    if (field.find_first_of("\",\r\n") == std::string::npos) {
        record += field;
        return;
    }
    record += '"';
    for (const char c : field) {
        if (c == '"') record += '"';
        record += c;
    }
    record += '"';
}

}  // namespace

std::string csv(const Table& table) {
    std::string text;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        addField(text, table.columns[i].head, i == 0);
    text += "\r\n";
    for (const Row& row : table.rows) {
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            addField(text, row.cells[i], i == 0);
        text += "\r\n";
    }
    return text;
}

}  // namespace cinder::report
