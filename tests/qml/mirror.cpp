#include "mirror.h"

#include <algorithm>

#include "row_list.h"

namespace cinder::face::scene {

Mirror::Mirror(std::string name, QAbstractItemModel& model)
    : name_(std::move(name)),
      model_(model),
      tester_(std::make_unique<QAbstractItemModelTester>(
          &model, QAbstractItemModelTester::FailureReportingMode::Warning)) {
    for (int row = 0; row < model.rowCount(); ++row)
        rows_.append(read(row));
    follow();
}

Mirror::Row Mirror::read(int row) const {
    Row values;
    const auto roles = model_.roleNames();
    for (auto role = roles.begin(); role != roles.end(); ++role)
        values.insert(role.key(), model_.data(model_.index(row, 0), role.key()));
    return values;
}

void Mirror::follow() {
    const auto* here = tester_.get();  // the connections end with the tester
    QObject::connect(&model_, &QAbstractItemModel::modelReset, here, [this] { say("a reset"); });
    QObject::connect(&model_, &QAbstractItemModel::layoutChanged, here,
                     [this] { say("a new layout"); });
    QObject::connect(&model_, &QAbstractItemModel::rowsInserted, here,
                     [this](const QModelIndex&, int first, int last) {
                         ++notices_, ++rowNotices_;
                         for (int row = first; row <= last; ++row)
                             rows_.insert(row, read(row));
                     });
    QObject::connect(&model_, &QAbstractItemModel::rowsRemoved, here,
                     [this](const QModelIndex&, int first, int last) {
                         ++notices_, ++rowNotices_;
                         rows_.remove(first, last - first + 1);
                     });
    QObject::connect(&model_, &QAbstractItemModel::rowsMoved, here,
                     [this](const QModelIndex&, int from, int last, const QModelIndex&, int to) {
                         ++notices_, ++rowNotices_;
                         if (last != from) say("several rows moved at once");
                         rows_.move(from, to > from ? to - 1 : to);
                     });
    QObject::connect(&model_, &QAbstractItemModel::dataChanged, here,
                     [this](const QModelIndex& first, const QModelIndex& last,
                            const QList<int>& roles) { change(first.row(), last.row(), roles); });
}

void Mirror::change(int first, int last, const QList<int>& roles) {
    ++notices_;
    if (roles.isEmpty()) say("a change that does not say of what");
    for (int row = first; row <= last; ++row) {
        const Row now = read(row);
        for (const int role : roles) {
            if (rows_[row][role] == now[role])
                say("row " + std::to_string(row) + " did not change its " +
                    model_.roleNames()[role].toStdString());
            rows_[row][role] = now[role];
        }
    }
}

std::vector<std::string> Mirror::faults() const {
    auto all = faults_;
    if (rows_.size() != model_.rowCount()) {
        all.push_back(name_ + ": " + std::to_string(model_.rowCount()) + " rows, told of " +
                      std::to_string(rows_.size()));
        return all;
    }
    for (int row = 0; row < rows_.size(); ++row)
        if (rows_[row] != read(row))
            all.push_back(name_ + ": row " + std::to_string(row) + " changed and nobody was told");
    return all;
}

void Mirrors::watch(const std::string& name, QAbstractItemModel& model) {
    const bool isKnown = std::any_of(mirrors_.begin(), mirrors_.end(),
                                     [&](const auto& known) { return known.first == &model; });
    if (!isKnown) mirrors_.emplace_back(&model, std::make_unique<Mirror>(name, model));
}

void Mirrors::watchInside() {
    for (std::size_t i = 0; i < mirrors_.size(); ++i) {
        auto& model = *mirrors_[i].first;
        for (int row = 0; row < model.rowCount(); ++row)
            for (const int role : model.roleNames().keys()) {
                auto* inner = model.data(model.index(row, 0), role).value<RowList*>();
                if (inner != nullptr)
                    watch(model.roleNames()[role].toStdString() + " of a row", *inner);
            }
    }
}

std::vector<std::string> Mirrors::faults() const {
    std::vector<std::string> all;
    for (const auto& [model, mirror] : mirrors_)
        for (auto& fault : mirror->faults())
            all.push_back(fault);
    return all;
}

int Mirrors::notices() const {
    int sum = 0;
    for (const auto& [model, mirror] : mirrors_)
        sum += mirror->notices();
    return sum;
}

int Mirrors::rowNotices() const {
    int sum = 0;
    for (const auto& [model, mirror] : mirrors_)
        sum += mirror->rowNotices();
    return sum;
}

}  // namespace cinder::face::scene
