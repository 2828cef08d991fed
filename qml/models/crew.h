#pragma once

/// Who is there in the middle of a day: what is changed here counts when the rest of the day is
/// planned for it, in one touch.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "row_list.h"
#include "rows.h"
#include "search_thread.h"
#include "words.h"

namespace cinder::face {

class Crew : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::RowList* rows READ rows CONSTANT)
    /// What was changed since the rest was last planned; empty: nothing.
    Q_PROPERTY(QString change READ change NOTIFY told)
    /// Why the last touch was not taken; empty again after the next.
    Q_PROPERTY(QString refusal READ refusal NOTIFY told)
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY told)

  public:
    /// Both must outlive this.
    Crew(Door& door, Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] RowList* rows() { return &rows_; }
    [[nodiscard]] QString change() const { return change_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] bool isPlanning() const { return search_.isBusy(); }

    /// The crew as the day knows it; what is changed here stays as long as that is the same.
    void look();
    /// What was changed here and not planned for is as if it had not been.
    void forget() { begin(known_); }
    /// The same in the language that is spoken now.
    void retell() { tell(); }
    /// Waits for the plan that is searched; for pictures and tests.
    void settle() { search_.settle(); }

    Q_INVOKABLE void setHere(const QString& key, bool isHere);
    Q_INVOKABLE void toggleSkill(const QString& key, const QString& skill);
    Q_INVOKABLE void setName(const QString& key, const QString& name);
    /// Somebody comes, who can do these things.
    Q_INVOKABLE void add(const QStringList& skills);
    /// Takes somebody who was added here off again.
    Q_INVOKABLE void drop(const QString& key);
    Q_INVOKABLE void plan();
    /// Gives up the plan that is searched; what was changed here stays.
    Q_INVOKABLE void stopPlanning();

  Q_SIGNALS:
    void told();
    /// The day has a plan for those who are there.
    void accepted();

  private:
    struct Member {
        app::CrewMember now;
        std::optional<app::CrewMember> before;  ///< nothing: comes now
        QString key;
    };
    void begin(std::vector<app::CrewMember> crew);
    void tell();
    [[nodiscard]] Member* find(const QString& key);
    [[nodiscard]] CrewRow row(const Member& member) const;
    [[nodiscard]] QString changeOf(const Member& member) const;
    [[nodiscard]] QString wordsFor(const app::Refusal& refusal) const;
    [[nodiscard]] QString skillName(const SkillId& skill) const;

    Door& door_;
    Words words_;
    std::optional<EventId> event_;
    std::vector<app::CrewMember> known_;  ///< as the day said last
    std::vector<event::Skill> skills_;
    std::vector<Member> members_;
    int added_ = 0;
    QString change_, refusal_;
    ListOf<CrewRow> rows_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
