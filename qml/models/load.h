#pragma once

/// The van: what rides where, counted in and counted home; and the kitchen's work before it leaves.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include <map>

#include "list_rows.h"
#include "list_words.h"
#include "lists_door.h"
#include "number_entry.h"
#include "words.h"

namespace cinder::face {

class Day;

class Load : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* groups READ groups CONSTANT)
    /// "Leave by 9:20 · T−3:40"; what it lacks when it is not known.
    Q_PROPERTY(QString leaveBy READ leaveBy NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(double done READ done NOTIFY changed)
    /// "out", or "home".
    Q_PROPERTY(QString way READ way WRITE setWay NOTIFY changed)
    /// What did not come home, by name; empty while nothing is missing or nobody loads out.
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    /// The row whose number is typed; empty while none is.
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
    Q_PROPERTY(cinder::face::NumberEntry* entry READ entry CONSTANT)
    Q_PROPERTY(cinder::face::RowList* kitchen READ kitchen CONSTANT)

  public:
    /// All must outlive this.
    Load(ListsDoor& door, Day& day, const Settings& settings, QObject* parent = nullptr);

    void show(const Listed& lists);

    [[nodiscard]] RowList* groups() { return &groups_; }
    [[nodiscard]] QString leaveBy() const { return leaveBy_; }
    [[nodiscard]] QString progress() const { return progress_; }
    [[nodiscard]] double done() const { return done_; }
    [[nodiscard]] QString way() const { return way_; }
    void setWay(const QString& way);
    [[nodiscard]] QString missing() const { return missing_; }
    [[nodiscard]] QString asked() const { return asked_; }
    [[nodiscard]] NumberEntry* entry() { return &entry_; }
    [[nodiscard]] RowList* kitchen() { return &kitchen_; }

    /// All of one row are in.
    Q_INVOKABLE void tick(const QString& key);
    /// How many of one row are in is to be typed.
    Q_INVOKABLE void ask(const QString& key);
    Q_INVOKABLE void dropAsked();
    Q_INVOKABLE void keep();

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] journal::Packed::Where where() const;
    [[nodiscard]] const app::PackCard* find(const std::string& key) const;
    /// How many are to come in on this way: home, as many as went out.
    [[nodiscard]] std::int32_t wanted(const app::PackCard& card) const;
    [[nodiscard]] std::int32_t counted(const app::PackCard& card) const;
    [[nodiscard]] LoadRow row(const app::PackCard& card) const;
    void tell();
    void tellKitchen();
    [[nodiscard]] QString limits(const quantity::KitchenTask& task) const;

    ListsDoor& door_;
    Day& day_;
    ListWords words_;
    Words clock_;
    Listed lists_;
    QString leaveBy_, progress_, missing_, asked_;
    QString way_ = QStringLiteral("out");
    std::string askedKey_;
    double done_ = 0;
    NumberEntry entry_;
    ListOf<LoadGroupRow> groups_;
    ListOf<KitchenRow> kitchen_;
    std::map<QString, std::shared_ptr<ListOf<LoadRow>>> inner_;
};

}  // namespace cinder::face
