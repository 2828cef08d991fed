#pragma once

/// Every caution the app knows, in the language of this device, for the page that lists them.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "row_list.h"

namespace cinder::face {

class Settings;

struct CautionRow {
    QString key;
    QString heading;  ///< over the first of its part; empty on the others
    QString text;
    QString source;
    static const std::vector<Role<CautionRow>>& roles();
    friend bool operator==(const CautionRow&, const CautionRow&) = default;
};

class CautionList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* rows READ rows CONSTANT)
    Q_PROPERTY(QString deference READ deference NOTIFY told)

  public:
    /// `settings` must outlive this.
    explicit CautionList(const Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] RowList* rows() { return &rows_; }
    [[nodiscard]] QString deference() const { return deference_; }
    /// Anew, in the language chosen now.
    void tell();

  Q_SIGNALS:
    void told();

  private:
    const Settings& settings_;
    ListOf<CautionRow> rows_;
    QString deference_;
};

}  // namespace cinder::face
