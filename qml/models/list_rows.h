#pragma once

/// What the rows of the pages about quantities, van and kitchen say, finished.

#include <memory>

#include <QString>

#include "row_list.h"

namespace cinder::face {

/// One figure, or one of those that went into it.
struct FigureRow {
    QString key;
    QString name;
    QString amount;
    /// "your own figure; reckoned: 82", "now 82"; where an input comes from.
    QString note;
    bool isOwn = false;
    /// There is more to see behind it.
    bool opens = true;
    static const std::vector<Role<FigureRow>>& roles();
    friend bool operator==(const FigureRow&, const FigureRow&) = default;
};

struct FigureGroupRow {
    QString key;
    QString heading;
    std::shared_ptr<ListOf<FigureRow>> figures;
    static const std::vector<Role<FigureGroupRow>>& roles();
    friend bool operator==(const FigureGroupRow&, const FigureGroupRow&) = default;
};

/// One row of the pack list.
struct LoadRow {
    QString key;
    QString text;     ///< "4 · Chafers"
    QString counted;  ///< "3 / 4"
    bool isIn = false;
    bool canCount = false;  ///< by number, beside the one touch
    static const std::vector<Role<LoadRow>>& roles();
    friend bool operator==(const LoadRow&, const LoadRow&) = default;
};

struct LoadGroupRow {
    QString key;
    QString heading;
    QString note;  ///< "3 of 7"
    std::shared_ptr<ListOf<LoadRow>> rows;
    static const std::vector<Role<LoadGroupRow>>& roles();
    friend bool operator==(const LoadGroupRow&, const LoadGroupRow&) = default;
};

/// Work in the kitchen before the van leaves.
struct KitchenRow {
    QString key;
    QString name;
    QString when;    ///< "Fri 17 Sep 15:30 to Fri 17 Sep 17:00"
    QString then;    ///< what becomes of it
    QString limits;  ///< one to a line, each with its source
    static const std::vector<Role<KitchenRow>>& roles();
    friend bool operator==(const KitchenRow&, const KitchenRow&) = default;
};

}  // namespace cinder::face
