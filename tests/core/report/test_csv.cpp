/// RFC 4180, "Common Format and MIME Type for CSV Files", section 2.

#include <catch2/catch.hpp>

#include "report/csv.h"

using namespace cinder::report;

TEST_CASE("Fields are quoted where RFC 4180 asks for it, and records end in CRLF") {
    Table table;
    table.columns = {{"plain", Align::Start, 1}, {"a,b", Align::Start, 1}};
    table.rows = {{{"aaa", "b \"quoted\" b"}, false}, {{"two\r\nlines", ""}, false}};
    CHECK(csv(table) ==
          "plain,\"a,b\"\r\n"
          "aaa,\"b \"\"quoted\"\" b\"\r\n"
          "\"two\r\nlines\",\r\n");
}

TEST_CASE("A table without rows is its header") {
    Table table;
    table.columns = {{"año", Align::Start, 1}};
    CHECK(csv(table) == "año\r\n");
}
