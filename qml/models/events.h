#pragma once

/// The events on this device, and the demos that may be opened.

#include <filesystem>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "day.h"

namespace cinder::face {

class Events : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* known READ known CONSTANT)
    Q_PROPERTY(cinder::face::RowList* demos READ demos CONSTANT)
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)

  public:
    Events(Door& door, const Settings& settings, std::vector<std::filesystem::path> demos,
           QObject* parent = nullptr);

    [[nodiscard]] RowList* known() { return &known_; }
    [[nodiscard]] RowList* demos() { return &demos_; }
    [[nodiscard]] QString refusal() const { return refusal_; }

    /// Reads the list again.
    Q_INVOKABLE void refresh();
    Q_INVOKABLE void open(const QString& event);
    /// Takes the demo into the store and opens it. `speed` above 0 opens a rehearsal of it.
    Q_INVOKABLE void openDemo(const QString& demo, int speed);

  Q_SIGNALS:
    void refusalChanged();
    /// An event with a plan is open now.
    void opened();
    /// An event that is still being written is.
    void draftOpened();

  private:
    void settle(const Taken& taken);

    Door& door_;
    const Settings& settings_;
    std::vector<std::filesystem::path> demoFiles_;
    ListOf<EventRow> known_;
    ListOf<EventRow> demos_;
    QString refusal_;
};

}  // namespace cinder::face
