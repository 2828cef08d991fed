#pragma once

/// Sheets to print: which, on what paper, in which language; and where the file went.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "devices.h"
#include "list_words.h"
#include "lists_door.h"

namespace cinder::face {

class Papers : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// The sheets by key, and what they are called.
    Q_PROPERTY(QStringList sheets READ sheets CONSTANT)
    Q_PROPERTY(QStringList names READ names NOTIFY changed)
    Q_PROPERTY(QString sheet READ sheet WRITE setSheet NOTIFY changed)
    /// "letter" or "a4".
    Q_PROPERTY(QString size READ size WRITE setSize NOTIFY changed)
    /// "en" or "es".
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
    /// A list can also be written for a spreadsheet.
    Q_PROPERTY(bool hasTable READ hasTable NOTIFY changed)
    /// Where the last file went, or why none was written; empty before the first.
    Q_PROPERTY(QString said READ said NOTIFY changed)
    Q_PROPERTY(bool isWritten READ isWritten NOTIFY changed)

  public:
    /// `printer` may be null: then it is said that this device writes no files.
    Papers(ListsDoor& door, const Settings& settings, Printer* printer, QObject* parent = nullptr);

    void retell();

    [[nodiscard]] QStringList sheets() const;
    [[nodiscard]] QStringList names() const;
    [[nodiscard]] QString sheet() const { return sheet_; }
    void setSheet(const QString& sheet);
    [[nodiscard]] QString size() const {
        return isLetter_ ? QStringLiteral("letter") : QStringLiteral("a4");
    }
    void setSize(const QString& size);
    [[nodiscard]] QString language() const { return language_; }
    void setLanguage(const QString& language);
    [[nodiscard]] bool hasTable() const;
    [[nodiscard]] QString said() const { return said_; }
    [[nodiscard]] bool isWritten() const { return isWritten_; }

    Q_INVOKABLE void writePdf();
    Q_INVOKABLE void writeCsv();

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] Result<app::Paper, app::Refusal> made() const;
    void say(const QString& what, bool isWritten);
    void tell(const Printer::Written& written);

    ListsDoor& door_;
    const Settings& settings_;
    ListWords words_;
    Printer* printer_;
    QString sheet_ = QStringLiteral("purchase");
    QString language_, said_;
    bool isLetter_ = true;
    bool isWritten_ = false;
};

}  // namespace cinder::face
