#pragma once

/// Quantities as groups of figures: each opens down to where it comes from, may be given an own
/// value, and follows a guest count that is only tried.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include <map>
#include <optional>
#include <vector>

#include "list_rows.h"
#include "list_words.h"
#include "lists_door.h"
#include "number_entry.h"
#include "search_thread.h"

namespace cinder::face {

class Day;

class Figures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* groups READ groups CONSTANT)
    /// What is missing or contradicts; one to a line, empty when nothing does.
    Q_PROPERTY(QString holes READ holes NOTIFY changed)
    // --- who eats ---
    Q_PROPERTY(QString guests READ guests NOTIFY changed)
    Q_PROPERTY(QString adults READ adults NOTIFY changed)
    Q_PROPERTY(QString children READ children NOTIFY changed)
    /// The figures in view are for guests that are only tried.
    Q_PROPERTY(bool isTrial READ isTrial NOTIFY changed)
    Q_PROPERTY(QString trial READ trial NOTIFY changed)
    /// So many come, and are being planned for.
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY changed)
    // --- the figure that is open ---
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString amount READ amount NOTIFY changed)
    Q_PROPERTY(QString formula READ formula NOTIFY changed)
    /// The formula with this event's own numbers, a line for each step, from the guests to the
    /// figure.
    Q_PROPERTY(QStringList worked READ worked NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QString own READ own NOTIFY changed)
    Q_PROPERTY(bool isOwn READ isOwn NOTIFY changed)
    Q_PROPERTY(bool canBeOwn READ canBeOwn NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* inputs READ inputs CONSTANT)
    /// What is typed: "value", "adults", "children", or nothing.
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
    Q_PROPERTY(QString askedName READ askedName NOTIFY changed)
    Q_PROPERTY(cinder::face::NumberEntry* entry READ entry CONSTANT)

  public:
    /// All must outlive this.
    Figures(ListsDoor& door, Day& day, const Settings& settings, QObject* parent = nullptr);

    /// The event is now this.
    void show(const Listed& lists);

    [[nodiscard]] RowList* groups() { return &groups_; }
    [[nodiscard]] QString holes() const { return holes_; }
    [[nodiscard]] QString guests() const;
    [[nodiscard]] QString adults() const;
    [[nodiscard]] QString children() const;
    [[nodiscard]] bool isTrial() const { return tried_.has_value(); }
    [[nodiscard]] QString trial() const;
    [[nodiscard]] bool isPlanning() const { return search_.isBusy(); }
    [[nodiscard]] bool isOpen() const { return open_.has_value(); }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString amount() const;
    [[nodiscard]] QString formula() const;
    [[nodiscard]] QStringList worked() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] QString own() const;
    [[nodiscard]] bool isOwn() const { return open_ && open_->isOverridden(); }
    [[nodiscard]] bool canBeOwn() const { return open_ && !open_->key.empty(); }
    [[nodiscard]] RowList* inputs() { return &inputs_; }
    [[nodiscard]] QString asked() const { return asked_; }
    [[nodiscard]] QString askedName() const;
    [[nodiscard]] NumberEntry* entry() { return &entry_; }

    /// A figure of the list, or an input of the one that is open, by its key.
    Q_INVOKABLE void open(const QString& key);
    Q_INVOKABLE void openInput(const QString& key);
    /// Back to the figure it went into; from the first, to the list.
    Q_INVOKABLE void goBack();
    Q_INVOKABLE void close();
    Q_INVOKABLE void ask(const QString& what);
    Q_INVOKABLE void dropAsked();
    /// What was typed counts.
    Q_INVOKABLE void keep();
    /// The app's own value again.
    Q_INVOKABLE void restore();
    Q_INVOKABLE void tryGuests(int moreAdults, int moreChildren);
    /// So many come: the trial is over when there is a plan for them.
    Q_INVOKABLE void useTrial();
    Q_INVOKABLE void dropTrial();
    /// Waits for the plan that is searched; for pictures and tests.
    void settle() { search_.settle(); }

  Q_SIGNALS:
    void changed();

  private:
    struct Group;
    [[nodiscard]] const Listed& shown() const { return tried_ ? trialLists_ : lists_; }
    [[nodiscard]] const event::Guests& present() const;
    [[nodiscard]] FigureRow row(const quantity::Figure& figure) const;
    [[nodiscard]] std::vector<Group> grouped() const;
    void tryThese(std::int32_t adults, std::int32_t children);
    void tell();
    void tellOpen();

    ListsDoor& door_;
    Day& day_;
    const Settings& settings_;
    ListWords words_;
    Listed lists_;
    Listed trialLists_;
    std::optional<std::pair<std::int32_t, std::int32_t>> tried_;
    /// From the figure of the list to the one that is open: its key, then places among inputs.
    std::string root_;
    std::vector<std::size_t> path_;
    std::optional<quantity::Figure> open_;
    QString holes_, asked_;
    NumberEntry entry_;
    ListOf<FigureGroupRow> groups_;
    ListOf<FigureRow> inputs_;
    /// One inner list for each group, kept so that a number changes and not the page.
    std::map<QString, std::shared_ptr<ListOf<FigureRow>>> inner_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
