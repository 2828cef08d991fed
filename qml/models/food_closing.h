#pragma once

/// The end of a day's record: the limits it was held to, whether it is as it was written, and who
/// signs it.

#include <memory>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "food_entry.h"

namespace cinder::face {

class FoodClosing : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the record")
    /// "Signed by Inés at 14:40"; what is to be done first; or that it may be signed.
    Q_PROPERTY(QString standing READ standing NOTIFY told)
    Q_PROPERTY(bool isSigned READ isSigned NOTIFY told)
    Q_PROPERTY(bool maySign READ maySign NOTIFY told)
    /// What the last check of the chain found; empty before the first.
    Q_PROPERTY(QString verdict READ verdict NOTIFY told)
    Q_PROPERTY(bool isBroken READ isBroken NOTIFY told)
    Q_PROPERTY(QString refusal READ refusal NOTIFY told)
    /// Those who may sign: the crew, by name.
    Q_PROPERTY(QStringList people READ people NOTIFY told)
    Q_PROPERTY(QString authority READ authority NOTIFY told)
    Q_PROPERTY(cinder::face::RowList* limits READ limits CONSTANT)

  public:
    /// All must outlive this.
    FoodClosing(FoodDoor& door, const FoodWords& words, const Words& plain,
                QObject* parent = nullptr);

    void show(const std::shared_ptr<const app::Snapshot>& day);

    [[nodiscard]] QString standing() const { return standing_; }
    [[nodiscard]] bool isSigned() const { return isSigned_; }
    [[nodiscard]] bool maySign() const { return maySign_; }
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] bool isBroken() const { return isBroken_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] QStringList people() const { return people_; }
    [[nodiscard]] QString authority() const { return authority_; }
    [[nodiscard]] RowList* limits() { return &limits_; }

    Q_INVOKABLE void sign(const QString& name);
    /// Walks the hash chain of every device and names the first entry that is not as written.
    Q_INVOKABLE void verify();

  Q_SIGNALS:
    void told();
    void noted();

  private:
    [[nodiscard]] std::vector<LimitRow> limitRows(const app::Snapshot& day) const;

    FoodDoor& door_;
    const FoodWords& words_;
    const Words& plain_;
    QString standing_, verdict_, refusal_, authority_;
    QStringList people_;
    bool isSigned_ = false, maySign_ = false, isBroken_ = false;
    ListOf<LimitRow> limits_;
};

/// What a limit is called; its field when it has no name.
[[nodiscard]] QString nameOfLimit(std::string_view field);

}  // namespace cinder::face
