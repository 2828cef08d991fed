#pragma once

/// Lists of finished words for QML. A list is handed its whole next content and works out what
/// changed, so that a tick of the clock repaints one number and not the board.

#include <algorithm>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

namespace cinder::face {

/// What QML knows of any list.
class RowList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the view models")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

  public:
    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int count() const { return rowCount(); }

  Q_SIGNALS:
    void countChanged();
};

/// How QML reads one field of a row.
template <class Row>
struct Role {
    const char* name;
    QVariant (*read)(const Row&);
};

/// `Row` has a `QString key` that is unique in the list, and `static roles()`.
template <class Row>
class ListOf final : public RowList {
  public:
    using RowList::RowList;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        const auto place = static_cast<std::size_t>(role - Qt::UserRole);
        if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role < Qt::UserRole ||
            place >= Row::roles().size())
            return {};
        return Row::roles()[place].read(rows_[static_cast<std::size_t>(index.row())]);
    }
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override {
        QHash<int, QByteArray> names;
        int role = Qt::UserRole;
        for (const auto& entry : Row::roles())
            names.insert(role++, entry.name);
        return names;
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] const Row* find(const QString& key) const {
        const auto at = std::find_if(rows_.begin(), rows_.end(),
                                     [&](const Row& row) { return row.key == key; });
        return at == rows_.end() ? nullptr : &*at;
    }

    /// Becomes `next` by the fewest notices: rows gone, rows moved or new, fields changed.
    void show(std::vector<Row> next) {
        const auto before = rows_.size();
        removeMissing(next);
        for (std::size_t place = 0; place < next.size(); ++place) {
            bring(next[place], place);
            change(next[place], place);
        }
        if (rows_.size() != before) Q_EMIT countChanged();
    }

  private:
    void removeMissing(const std::vector<Row>& next) {
        for (auto place = rows_.size(); place-- > 0;) {
            const auto& key = rows_[place].key;
            if (std::any_of(next.begin(), next.end(), [&](const Row& r) { return r.key == key; }))
                continue;
            const int row = static_cast<int>(place);
            beginRemoveRows({}, row, row);
            rows_.erase(rows_.begin() + row);
            endRemoveRows();
        }
    }
    void bring(const Row& wanted, std::size_t place) {
        const int row = static_cast<int>(place);
        const auto at = std::find_if(rows_.begin() + row, rows_.end(),
                                     [&](const Row& r) { return r.key == wanted.key; });
        if (at == rows_.end()) {
            beginInsertRows({}, row, row);
            rows_.insert(rows_.begin() + row, wanted);
            endInsertRows();
        } else if (const int from = static_cast<int>(at - rows_.begin()); from != row) {
            beginMoveRows({}, from, from, {}, row);
            std::rotate(rows_.begin() + row, at, at + 1);
            endMoveRows();
        }
    }
    void change(const Row& wanted, std::size_t place) {
        Row& shown = rows_[place];
        if (shown == wanted) return;
        QList<int> changed;
        int role = Qt::UserRole;
        for (const auto& entry : Row::roles()) {
            if (entry.read(shown) != entry.read(wanted)) changed.append(role);
            ++role;
        }
        shown = wanted;
        if (!changed.isEmpty()) {
            const auto at = index(static_cast<int>(place));
            Q_EMIT dataChanged(at, at, changed);
        }
    }

    std::vector<Row> rows_;
};

}  // namespace cinder::face
