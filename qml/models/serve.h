#pragma once

/// The line while guests pass: the counter, the queue and its end, the pans and by when to start
/// the next. Finished words to read, touches to make.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "row_list.h"
#include "words.h"

namespace cinder::face {

/// What stands alone on the page.
struct ServeLine {
    Q_GADGET
    QML_VALUE_TYPE(serveLine)
    Q_PROPERTY(QString counted MEMBER counted)
    Q_PROPERTY(QString expected MEMBER expected)
    Q_PROPERTY(QString countVerb MEMBER countVerb)
    Q_PROPERTY(QString end MEMBER end)
    Q_PROPERTY(QString band MEMBER band)
    Q_PROPERTY(QString pace MEMBER pace)
    Q_PROPERTY(QString queue MEMBER queue)
    Q_PROPERTY(QString bottleneck MEMBER bottleneck)
    Q_PROPERTY(bool canCount MEMBER canCount)
    Q_PROPERTY(bool canEnd MEMBER canEnd)

  public:
    QString counted, expected, countVerb, end, band, pace, queue, bottleneck;
    bool canCount = false, canEnd = false;
    friend bool operator==(const ServeLine&, const ServeLine&) = default;
};

/// One dish on the line.
struct LinePanRow {
    QString key;
    QString name;
    QString number;  ///< "pan 1 of 2"
    QString level;   ///< "about 60 % left"
    double left = 1;
    QString empty;   ///< when, or that it lasts
    QString start;   ///< "Start the next pan by 13:20"; empty when there is no need
    QString advice;  ///< when it runs short
    bool isDue = false;
    bool canTap = false;
    bool isLast = false;  ///< no fresh pan follows
    static const std::vector<Role<LinePanRow>>& roles();
    friend bool operator==(const LinePanRow&, const LinePanRow&) = default;
};

class Serve : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::ServeLine line READ line NOTIFY changed)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
    Q_PROPERTY(cinder::face::RowList* pans READ pans CONSTANT)

  public:
    /// Both must outlive this.
    Serve(Door& door, Settings& settings, QObject* parent = nullptr);

    void show(std::shared_ptr<const app::Snapshot> seen);
    [[nodiscard]] const ServeLine& line() const { return line_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] RowList* pans() { return &pans_; }

    /// The first guest, then ten by ten.
    Q_INVOKABLE void count();
    Q_INVOKABLE void lastGuest();
    Q_INVOKABLE void tap(const QString& dish, int percent);
    Q_INVOKABLE void nextPan(const QString& dish);

  Q_SIGNALS:
    void changed();
    /// Something is on record; look again.
    void noted();

  private:
    void take(const Taken& taken);
    void tellLine(const app::ServiceCards& cards);
    [[nodiscard]] LinePanRow row(const app::LinePanCard& card) const;

    Door& door_;
    Words words_;
    std::shared_ptr<const app::Snapshot> seen_;
    ServeLine line_;
    QString refusal_;
    ListOf<LinePanRow> pans_;
};

}  // namespace cinder::face
