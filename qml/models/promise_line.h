#pragma once

/// What the model of the guest line says before the event, as words and bars for the Promise page.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app/promise.h"
#include "rows.h"
#include "words.h"

namespace cinder::face {

/// What stands alone.
struct PromiseLine {
    Q_GADGET
    QML_VALUE_TYPE(promiseLine)
    Q_PROPERTY(QString through MEMBER through)
    Q_PROPERTY(QString band MEMBER band)
    Q_PROPERTY(QString wait MEMBER wait)
    Q_PROPERTY(QString byTable MEMBER byTable)
    Q_PROPERTY(QString bottleneck MEMBER bottleneck)
    Q_PROPERTY(QString queueTitle MEMBER queueTitle)

  public:
    QString through, band, wait, byTable, bottleneck, queueTitle;
    friend bool operator==(const PromiseLine&, const PromiseLine&) = default;
};

/// One bar of the queue over time.
struct QueueBar {
    QString key;
    double share = 0;  ///< of the longest queue, 0 to 1
    QString label;     ///< minutes since the first guest, under every fifth bar; else empty
    QString count;     ///< guests waiting, over the highest bar; else empty
    static const std::vector<Role<QueueBar>>& roles();
    friend bool operator==(const QueueBar&, const QueueBar&) = default;
};

[[nodiscard]] PromiseLine promiseLine(const app::Promise& promise, const Words& words);
[[nodiscard]] std::vector<QueueBar> queueBars(const service::Flow& flow);
/// The few changes that shorten the line most.
[[nodiscard]] std::vector<OptionRow> shorterLine(const app::Promise& promise, const Words& words);

}  // namespace cinder::face
