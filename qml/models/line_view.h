#pragma once

/// The buffet line to scale, and its dishes in serving order to be moved.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include <map>

#include "line_rows.h"
#include "list_words.h"
#include "lists_door.h"

namespace cinder::face {

class Day;

class LineView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* tables READ tables CONSTANT)
    Q_PROPERTY(cinder::face::RowList* order READ order CONSTANT)
    /// Length of all tables and of the longest, and depth of the deepest, mm.
    Q_PROPERTY(double length READ length NOTIFY changed)
    Q_PROPERTY(double longest READ longest NOTIFY changed)
    Q_PROPERTY(double deepest READ deepest NOTIFY changed)
    /// Whether everything has room, or how much is missing.
    Q_PROPERTY(QString room READ room NOTIFY changed)
    Q_PROPERTY(bool isShort READ isShort NOTIFY changed)
    /// What weather and order ask for, one to a line.
    Q_PROPERTY(QString prompts READ prompts NOTIFY changed)

  public:
    /// All must outlive this.
    LineView(ListsDoor& door, Day& day, const Settings& settings, QObject* parent = nullptr);

    void show(const Listed& lists);

    [[nodiscard]] RowList* tables() { return &tables_; }
    [[nodiscard]] RowList* order() { return &order_; }
    [[nodiscard]] double length() const { return length_; }
    [[nodiscard]] double longest() const { return longest_; }
    [[nodiscard]] double deepest() const { return deepest_; }
    [[nodiscard]] QString room() const { return room_; }
    [[nodiscard]] bool isShort() const { return isShort_; }
    [[nodiscard]] QString prompts() const { return prompts_; }

    /// Shows where a dish stands; touched again, no dish.
    Q_INVOKABLE void choose(const QString& dish);
    /// So many rows down the list, up when negative; the nearest whole row counts.
    Q_INVOKABLE void move(const QString& dish, double rows);

  Q_SIGNALS:
    void changed();

  private:
    /// The dishes that stand on the line or wait for room, in serving order.
    [[nodiscard]] std::vector<DishId> dishes() const;
    void tell();
    void tellTables(const std::vector<DishId>& order);
    void tellRoom();
    [[nodiscard]] OrderRow row(const std::vector<DishId>& order, std::size_t place) const;
    [[nodiscard]] QString cardOf(const event::Dish& dish) const;

    ListsDoor& door_;
    Day& day_;
    ListWords words_;
    Listed lists_;
    QString chosen_, room_, prompts_;
    bool isShort_ = false;
    double length_ = 1, longest_ = 1, deepest_ = 1;
    ListOf<TableRow> tables_;
    ListOf<OrderRow> order_;
    std::map<QString, std::shared_ptr<ListOf<StandRow>>> inner_;
};

}  // namespace cinder::face
