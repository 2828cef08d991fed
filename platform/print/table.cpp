#include <algorithm>
#include <vector>

#include "print/blocks.h"

namespace cinder::platform {

namespace {

constexpr double kPadding = 4;

QString words(const std::string& text) {
    return QString::fromStdString(text);
}

class TableSetter {
  public:
    TableSetter(Pages& pages, const report::Table& table) : pages_(pages), table_(table) {
        boxesWidth_ = table.boxes * (ink::kBox + 5);
        int weights = 0;
        for (const report::Column& column : table.columns)
            weights += std::max(1, column.weight);
        double x = pages.left() + boxesWidth_;
        const double room = pages.width() - boxesWidth_;
        for (const report::Column& column : table.columns) {
            const double width = room * std::max(1, column.weight) / std::max(1, weights);
            columns_.push_back({x, width});
            x += width;
        }
    }

    void set() {
        setHead();
        for (const report::Row& row : table_.rows) {
            const double height = heightOf(row);
            if (!pages_.hasRoom(height) && !pages_.isAtTop()) {
                pages_.newPage();
                setHead();
            }
            setRow(row, height);
        }
        pages_.skip(ink::kGap);
    }

  private:
    struct Span {
        double x;
        double width;
    };

    [[nodiscard]] Qt::Alignment alignOf(std::size_t column) const {
        return table_.columns[column].align == report::Align::End ? Qt::AlignRight : Qt::AlignLeft;
    }

    void setHead() {
        const QFont font = pages_.strong(ink::kSmall);
        double height = 0;
        for (std::size_t i = 0; i < columns_.size(); ++i)
            height = std::max(height, pages_.heightOf(words(table_.columns[i].head), font,
                                                      columns_[i].width - 2 * kPadding));
        // A head with no row below it says nothing.
        if (!pages_.hasRoom(height + 40) && !pages_.isAtTop()) pages_.newPage();
        for (std::size_t i = 0; i < columns_.size(); ++i)
            pages_.write(QRectF(columns_[i].x + kPadding, pages_.y(),
                                columns_[i].width - 2 * kPadding, height),
                         words(table_.columns[i].head), font, alignOf(i));
        pages_.skip(height + 2);
        pages_.rule(pages_.y(), 1.2);
        pages_.skip(2);
    }

    [[nodiscard]] QFont fontOf(const report::Row& row) const {
        return row.isEmphasized ? pages_.strong(ink::kText) : pages_.text(ink::kText);
    }

    [[nodiscard]] double heightOf(const report::Row& row) const {
        double height = table_.boxes > 0 ? ink::kBox + 4 : 0;
        for (std::size_t i = 0; i < columns_.size() && i < row.cells.size(); ++i)
            height = std::max(height, pages_.heightOf(words(row.cells[i]), fontOf(row),
                                                      columns_[i].width - 2 * kPadding));
        return height + 5;
    }

    void setRow(const report::Row& row, double height) {
        for (int b = 0; b < table_.boxes; ++b)
            pages_.box(
                QRectF(pages_.left() + b * (ink::kBox + 5), pages_.y() + 2, ink::kBox, ink::kBox),
                1);
        for (std::size_t i = 0; i < columns_.size() && i < row.cells.size(); ++i)
            pages_.write(QRectF(columns_[i].x + kPadding, pages_.y() + 1,
                                columns_[i].width - 2 * kPadding, height),
                         words(row.cells[i]), fontOf(row), alignOf(i));
        pages_.skip(height);
        pages_.rule(pages_.y() - 1, 0.3);
    }

    Pages& pages_;
    const report::Table& table_;
    double boxesWidth_ = 0;
    std::vector<Span> columns_;
};

}  // namespace

void setTable(Pages& pages, const report::Table& table) {
    if (table.columns.empty()) return;
    TableSetter(pages, table).set();
}

}  // namespace cinder::platform
