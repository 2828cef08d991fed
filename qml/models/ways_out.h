#pragma once

/// What would bring a day that has got late nearer to its bell, each as a sentence with, where
/// there is one, a touch that takes it.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "live/ways_out.h"
#include "rows.h"
#include "search_thread.h"
#include "words.h"

namespace cinder::face {

class WaysOut : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the promise")
    Q_PROPERTY(bool isReckoning READ isReckoning NOTIFY changed)
    /// A way is being planned; no other is taken meanwhile.
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY changed)
    /// The last answer is that nothing helps.
    Q_PROPERTY(bool isNothing READ isNothing NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* rows READ rows CONSTANT)

  public:
    /// Both must outlive this.
    WaysOut(Door& door, Settings& settings, QObject* parent);

    [[nodiscard]] bool isReckoning() const { return search_.isBusy() && !isPlanning(); }
    [[nodiscard]] bool isPlanning() const { return search_.isBusy() && !taking_.isEmpty(); }
    [[nodiscard]] bool isNothing() const { return found_ && found_->ways.empty(); }
    [[nodiscard]] RowList* rows() { return &rows_; }

    /// Searches on a thread of its own, for the day as it stands now; what is shown meanwhile is
    /// the last answer for this event.
    Q_INVOKABLE void reckon();
    /// Plans the day that way and publishes it, then reckons again; of one person more it asks who.
    Q_INVOKABLE void take(const QString& key);
    /// Gives up the way that is planned and reckons again; the day stays as it is.
    Q_INVOKABLE void stopPlanning();
    /// The same in the language that is spoken now.
    void retell() { tell(); }
    /// Waits for the search that runs; for pictures and tests.
    void settle() { search_.settle(); }

  Q_SIGNALS:
    void changed();
    /// The day has another plan.
    void accepted();
    /// Somebody with these skills would help.
    void personAsked(const QStringList& skills);
    /// The words for the person; empty when it went well.
    void refused(const QString& why);

  private:
    struct Found {
        EventId event;
        std::vector<live::WayOut> ways;
        live::Remaining day;  ///< what they were found for
    };
    void tell();
    [[nodiscard]] OptionRow row(const live::WayOut& way, std::size_t number) const;

    Door& door_;
    Words words_;
    std::optional<Found> found_;
    QString taking_;  ///< the way that is planned, or was last
    ListOf<OptionRow> rows_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
