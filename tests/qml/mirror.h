#pragma once

/// A view of one list that believes only its notices. What it holds at the end is what a board
/// would show; a notice that says more, or less, than changed is written down as a fault.

#include <memory>
#include <set>
#include <string>
#include <vector>

#include <QAbstractItemModelTester>
#include <QAbstractListModel>

namespace cinder::face::scene {

class Mirror {
  public:
    Mirror(std::string name, QAbstractItemModel& model);

    /// What is wrong so far, what does not match the list now included.
    [[nodiscard]] std::vector<std::string> faults() const;
    [[nodiscard]] int notices() const { return notices_; }
    /// Rows that came, went or moved; the notices that build a board anew.
    [[nodiscard]] int rowNotices() const { return rowNotices_; }

  private:
    using Row = QMap<int, QVariant>;
    [[nodiscard]] Row read(int row) const;
    void follow();
    void change(int first, int last, const QList<int>& roles);
    void say(const std::string& fault) { faults_.push_back(name_ + ": " + fault); }

    std::string name_;
    QAbstractItemModel& model_;
    std::unique_ptr<QAbstractItemModelTester> tester_;
    QList<Row> rows_;
    int notices_ = 0;
    int rowNotices_ = 0;
    std::vector<std::string> faults_;
};

/// A mirror for every list of a day: those of the boards, and those inside their rows, which come
/// and go as the day does.
class Mirrors {
  public:
    void watch(const std::string& name, QAbstractItemModel& model);
    /// Looks for lists inside the rows that are new.
    void watchInside();

    [[nodiscard]] std::vector<std::string> faults() const;
    [[nodiscard]] int notices() const;
    [[nodiscard]] int rowNotices() const;
    [[nodiscard]] std::size_t count() const { return mirrors_.size(); }

  private:
    std::vector<std::pair<QAbstractItemModel*, std::unique_ptr<Mirror>>> mirrors_;
};

}  // namespace cinder::face::scene
