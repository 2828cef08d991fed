#pragma once

/// Reads a table of published or computed check values (RFC 4180, header line first). A table that
/// is not there reads as nothing. A case that then checks nothing says "skipped: ", which CTest
/// shows as skipped, whatever else the case found; one that checks other things says "not
/// compared".

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace cinder::reference {

using Row = std::map<std::string, std::string>;

inline std::vector<std::string> splitRecord(std::istream& in) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (int c = in.get(); c != EOF; c = in.get()) {
        if (quoted) {
            if (c != '"') {
                fields.back().push_back(static_cast<char>(c));
            } else if (in.peek() == '"') {
                fields.back().push_back(static_cast<char>(in.get()));
            } else {
                quoted = false;
            }
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',') {
            fields.emplace_back();
        } else if (c == '\n') {
            break;
        } else if (c != '\r') {
            fields.back().push_back(static_cast<char>(c));
        }
    }
    return fields;
}

inline std::optional<std::vector<Row>> readTable(const std::string& path) {
    std::ifstream in(path);
    if (!in) return std::nullopt;
    const auto header = splitRecord(in);
    std::vector<Row> rows;
    while (in.peek() != EOF) {
        const auto record = splitRecord(in);
        Row row;
        for (std::size_t i = 0; i < header.size() && i < record.size(); ++i) {
            row[header[i]] = record[i];
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

/// Whether a case checks anything when its table is absent.
enum class Without { Nothing, TheRest };

/// The table of this name in the folder of reference tables; says so when it is absent.
inline std::optional<std::vector<Row>> sharedTable(const std::string& name, Without without) {
    auto rows = readTable(std::string(CINDER_SHARED) + "/reference/" + name);
    if (rows) return rows;
    if (without == Without::Nothing)
        WARN("skipped: reference/" << name << " is not here");
    else
        WARN("not compared with reference/" << name << ", which is not here");
    return rows;
}

/// The rows of the heat checks whose id begins with one of `letters`.
inline std::vector<Row> heatRows(const std::string& letters, Without without) {
    std::vector<Row> rows;
    const auto table = sharedTable("heat_checks.csv", without);
    if (!table) return rows;
    for (const Row& row : *table)
        if (letters.find(row.at("id")[0]) != std::string::npos) rows.push_back(row);
    CHECK_FALSE(rows.empty());
    return rows;
}

inline double number(const std::string& text) {
    return std::strtod(text.c_str(), nullptr);
}

/// "H=0.06 m;k=0.48" asked for "k" gives 0.48; a separator must precede the name.
inline std::optional<double> named(const std::string& text, const std::string& name) {
    for (std::size_t at = text.find(name + "="); at != std::string::npos;
         at = text.find(name + "=", at + 1)) {
        const bool begins = at == 0 || text[at - 1] == ';' || text[at - 1] == ' ' ||
                            text[at - 1] == ',' || text[at - 1] == '(';
        if (begins) return number(text.substr(at + name.size() + 1));
    }
    return std::nullopt;
}

/// The tolerance of a row: a number, or a percentage of the value.
inline double tolerance(const Row& row) {
    const std::string& text = row.at("tol");
    const double tol = number(text);
    return text.back() == '%' ? tol / 100.0 * number(row.at("value")) : tol;
}

}  // namespace cinder::reference
