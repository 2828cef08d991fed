#pragma once

#include <string>
#include <vector>

namespace cinder::cli {

/// Rows of text set in columns of equal width, two spaces apart, trailing blanks cut. Columns
/// named in `rightAligned` end flush. Widths count characters, not bytes.
class Table {
  public:
    Table(std::vector<std::string> heads, std::vector<std::size_t> rightAligned);
    void add(std::vector<std::string> row);
    [[nodiscard]] std::string text() const;

  private:
    std::vector<std::vector<std::string>> rows_;
    std::vector<std::size_t> rightAligned_;
};

}  // namespace cinder::cli
