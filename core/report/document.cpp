#include "report/document.h"

namespace cinder::report {

std::vector<const Table*> tablesOf(const Document& document) {
    std::vector<const Table*> tables;
    for (const Block& block : document.blocks)
        if (const auto* table = std::get_if<Table>(&block)) tables.push_back(table);
    return tables;
}

}  // namespace cinder::report
