#pragma once

/// What must be true before the van leaves: fire safe, food decided, everything aboard, site clean.
/// Four lines with a mark each, and whether it may leave.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "row_list.h"
#include "words.h"

namespace cinder::face {

struct LeavingRow {
    QString key;  ///< "fire", "food", "van" or "site"
    QString title;
    QString standing;
    QString mark;   ///< "done" or "late"; see StateMark
    QString place;  ///< the page where it is done; empty: on this one
    QString verb;
    static const std::vector<Role<LeavingRow>>& roles();
    friend bool operator==(const LeavingRow&, const LeavingRow&) = default;
};

class Strike : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// "Do not leave yet: the fire is not safe", or that the site may be left.
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed)
    Q_PROPERTY(bool mayLeave READ mayLeave NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* lines READ lines CONSTANT)

  public:
    /// Both must outlive this.
    Strike(Door& door, const Settings& settings, QObject* parent = nullptr);

    void show(const std::shared_ptr<const app::Snapshot>& day);
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] bool mayLeave() const { return mayLeave_; }
    [[nodiscard]] RowList* lines() { return &lines_; }

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] LeavingRow fire(const app::Snapshot& day) const;
    [[nodiscard]] static LeavingRow food(const app::Snapshot& day);
    [[nodiscard]] LeavingRow van() const;
    [[nodiscard]] LeavingRow site(const app::Snapshot& day) const;

    Door& door_;
    Words words_;
    QString verdict_;
    bool mayLeave_ = false;
    ListOf<LeavingRow> lines_;
};

}  // namespace cinder::face
