#pragma once

/// The answer to "can we promise this": kept or not, how late the crew may come, how sure that is,
/// and what would help, each as a sentence with a touch that takes it.

#include <optional>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app/promise.h"
#include "door.h"
#include "planned_touch.h"
#include "promise_line.h"
#include "ways_out.h"

namespace cinder::face {

class Promise : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// An answer is searched.
    Q_PROPERTY(bool isReckoning READ isReckoning NOTIFY changed)
    /// An option is being planned; no other is taken meanwhile.
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY changed)
    Q_PROPERTY(bool isKept READ isKept NOTIFY changed)
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
    Q_PROPERTY(QString answer READ answer NOTIFY changed)
    Q_PROPERTY(QString latest READ latest NOTIFY changed)
    Q_PROPERTY(QString bound READ bound NOTIFY changed)
    Q_PROPERTY(QString weakest READ weakest NOTIFY changed)
    /// Why there is no answer, or why an option was not taken.
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
    /// Why no option can be taken any more, and what can be done instead; empty while it can.
    Q_PROPERTY(QString locked READ locked NOTIFY changed)
    /// For a day that runs late: what would help from now on.
    Q_PROPERTY(cinder::face::WaysOut* waysOut READ waysOut CONSTANT)
    Q_PROPERTY(cinder::face::RowList* options READ options CONSTANT)
    /// The line of the guests: what is said of it, the queue by the minute, what would shorten it.
    Q_PROPERTY(cinder::face::PromiseLine line READ line NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* queue READ queue CONSTANT)
    Q_PROPERTY(cinder::face::RowList* shorter READ shorter CONSTANT)

  public:
    /// Both must outlive this.
    Promise(Door& door, Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] bool isReckoning() const { return search_.isBusy() && !isPlanning(); }
    [[nodiscard]] bool isPlanning() const { return search_.isBusy() && !taking_.isEmpty(); }
    [[nodiscard]] bool isKept() const { return isKept_; }
    [[nodiscard]] QString asked() const { return asked_; }
    [[nodiscard]] QString answer() const { return answer_; }
    [[nodiscard]] QString latest() const { return latest_; }
    [[nodiscard]] QString bound() const { return bound_; }
    [[nodiscard]] QString weakest() const { return weakest_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] QString locked() const { return locked_; }
    [[nodiscard]] WaysOut* waysOut() { return &waysOut_; }
    [[nodiscard]] RowList* options() { return &options_; }
    [[nodiscard]] const PromiseLine& line() const { return line_; }
    [[nodiscard]] RowList* queue() { return &queue_; }
    [[nodiscard]] RowList* shorter() { return &shorter_; }

    /// Searches on a thread of its own; what is shown meanwhile is the last answer for this event.
    Q_INVOKABLE void reckon();
    /// Puts the option into the event, plans it and reckons again; a touch to go on with.
    Q_INVOKABLE void accept(const QString& key);
    /// Gives up the option that is planned; the event stays as it is.
    Q_INVOKABLE void stopPlanning();
    /// The same in the language that is spoken now.
    void retell();
    /// Waits for the search that runs; for pictures and tests.
    void settle() {
        search_.settle();
        waysOut_.settle();
    }

  Q_SIGNALS:
    void changed();
    /// The event was changed and has a new plan.
    void accepted();

  private:
    void tell();
    void tellAnswer();
    /// The event with that option in it, while it is the event the answer was for.
    [[nodiscard]] Door::Asked askToTake(const QString& key) const;
    [[nodiscard]] OptionRow option(const plan::Remedy& remedy, std::size_t number) const;

    Door& door_;
    Words words_;
    WaysOut waysOut_;
    std::optional<Result<app::Promise, app::Refusal>> found_;
    EventId asking_;  ///< whose answer it is, or is to be
    bool isKept_ = false;
    QString taking_;  ///< the option that is planned, or was last
    QString asked_, answer_, latest_, bound_, weakest_, refusal_, locked_;
    ListOf<OptionRow> options_;
    PromiseLine line_;
    ListOf<QueueBar> queue_;
    ListOf<OptionRow> shorter_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
