#pragma once

/// The events on this device, the demos that may be opened, and the copies of everything.

#include <filesystem>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "day.h"
#include "planned_touch.h"

namespace cinder::face {

class Events : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// What is being written and what is still to come, the next first.
    Q_PROPERTY(cinder::face::RowList* coming READ coming CONSTANT)
    /// What is over, the latest first, as many as were asked for.
    Q_PROPERTY(cinder::face::RowList* past READ past CONSTANT)
    /// "12 earlier events"; empty when all are shown.
    Q_PROPERTY(QString earlier READ earlier NOTIFY earlierChanged)
    /// The copies of everything in the folder, the latest first.
    Q_PROPERTY(cinder::face::RowList* copies READ copies CONSTANT)
    Q_PROPERTY(bool canCopy READ canCopy CONSTANT)
    /// What became of the last copy; empty when nothing was asked.
    Q_PROPERTY(QString copied READ copied NOTIFY copiedChanged)
    Q_PROPERTY(cinder::face::RowList* demos READ demos CONSTANT)
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)

  public:
    /// `copies` is the folder of the copies; empty: none can be made here.
    Events(Door& door, const Settings& settings, std::vector<std::filesystem::path> demos,
           std::filesystem::path copies, QObject* parent = nullptr);

    [[nodiscard]] RowList* coming() { return &coming_; }
    [[nodiscard]] RowList* past() { return &past_; }
    [[nodiscard]] QString earlier() const { return earlier_; }
    [[nodiscard]] RowList* copies() { return &copies_; }
    [[nodiscard]] bool canCopy() const { return !copyFolder_.empty(); }
    [[nodiscard]] QString copied() const { return copied_; }
    [[nodiscard]] RowList* demos() { return &demos_; }
    [[nodiscard]] QString refusal() const { return refusal_; }

    /// Reads the list again.
    Q_INVOKABLE void refresh();
    /// Shows a few more of the past.
    Q_INVOKABLE void showEarlier();
    Q_INVOKABLE void open(const QString& event);
    /// Everything on this device into one file of the folder.
    Q_INVOKABLE void backUp();
    /// What the copy has and this device has not.
    Q_INVOKABLE void restore(const QString& copy);
    /// Plans the demo, takes it into the store and opens it. `speed` above 0 opens a rehearsal of
    /// it. The last demo touched is the one that opens.
    Q_INVOKABLE void openDemo(const QString& demo, int speed);
    /// The person does something else: the demo that is planned is let go.
    Q_INVOKABLE void dropDemo();
    /// Waits for the demo that is planned; for pictures and tests.
    void settle() { search_.settle(); }

  Q_SIGNALS:
    void refusalChanged();
    void earlierChanged();
    void copiedChanged();
    /// An event with a plan is open now.
    void opened();
    /// An event that is still being written is.
    void draftOpened();

  private:
    void show(const Taken& taken);
    void showDemos();
    void refuse(const QString& why);
    /// Why nothing can be noted on this device; empty when it can.
    [[nodiscard]] QString standing() const;
    void list(std::vector<app::EventEntry> entries);
    void listCopies();
    void dropCutOff() const;
    void say(const QString& copied);
    [[nodiscard]] EventRow row(const app::EventEntry& entry) const;

    Door& door_;
    const Settings& settings_;
    std::vector<std::filesystem::path> demoFiles_;
    std::filesystem::path copyFolder_;
    ListOf<EventRow> coming_;
    ListOf<EventRow> past_;
    ListOf<EventRow> copies_;
    std::size_t pastShown_ = 0;
    QString earlier_;
    QString copied_;
    ListOf<EventRow> demos_;
    QString planned_;       ///< the demo that was touched last
    int plannedSpeed_ = 0;  ///< of its rehearsal; 0: it is opened
    QString refusal_;
    QString standing_;     ///< what stands in its place while nothing was refused
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
