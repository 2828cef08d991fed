#include "crew.h"

#include <algorithm>

#include "planned_touch.h"
#include "settings.h"

namespace cinder::face {

Crew::Crew(Door& door, Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings) {}

void Crew::look() {
    const auto seen = door_.look();
    const std::optional<EventId> open = seen ? std::optional(seen->event) : std::nullopt;
    auto crew = door_.crew();
    if (open == event_ && crew == known_) return;
    event_ = open;
    const auto event = door_.described();
    skills_ = event ? event->skills : std::vector<event::Skill>();
    begin(std::move(crew));
}

void Crew::begin(std::vector<app::CrewMember> crew) {
    known_ = std::move(crew);
    members_.clear();
    added_ = 0;
    refusal_.clear();
    for (const app::CrewMember& member : known_)
        members_.push_back({member, member, toText(member.person.text())});
    tell();
}

Crew::Member* Crew::find(const QString& key) {
    const auto found = std::find_if(members_.begin(), members_.end(),
                                    [&](const Member& one) { return one.key == key; });
    return found == members_.end() ? nullptr : &*found;
}

void Crew::setHere(const QString& key, bool isHere) {
    if (Member* member = find(key)) member->now.isHere = isHere;
    refusal_.clear();
    tell();
}

void Crew::toggleSkill(const QString& key, const QString& skill) {
    Member* member = find(key);
    if (member == nullptr) return;
    const SkillId id(skill.toStdString());
    std::vector<SkillId> after;
    for (const event::Skill& one : skills_) {
        const auto& has = member->now.skills;
        const bool isThere = std::find(has.begin(), has.end(), one.id) != has.end();
        if (isThere != (one.id == id)) after.push_back(one.id);
    }
    // What was there before, in another order, is no change.
    if (member->before &&
        std::is_permutation(after.begin(), after.end(), member->before->skills.begin(),
                            member->before->skills.end()))
        after = member->before->skills;
    member->now.skills = std::move(after);
    refusal_.clear();
    tell();
}

void Crew::setName(const QString& key, const QString& name) {
    if (Member* member = find(key)) member->now.name = name.trimmed().toStdString();
    refusal_.clear();
    tell();
}

void Crew::add(const QStringList& skills) {
    const std::string number = "+" + std::to_string(++added_);
    app::CrewMember member{{}, number, {}};
    for (const event::Skill& one : skills_)
        if (skills.contains(toText(one.id.text()))) member.skills.push_back(one.id);
    members_.push_back({std::move(member), {}, toText(number)});
    refusal_.clear();
    tell();
}

void Crew::drop(const QString& key) {
    std::erase_if(members_, [&](const Member& one) { return one.key == key && !one.before; });
    refusal_.clear();
    tell();
}

void Crew::plan() {
    if (isPlanning() || change_.isEmpty()) return;
    refusal_.clear();
    std::vector<app::CrewMember> changed;
    for (const Member& member : members_)
        if (member.before != member.now) changed.push_back(member.now);
    carryOut(
        search_, door_, [this, changed] { return door_.askToChangeCrew(changed); },
        [this](const Taken& taken) {
            if (isLeft(taken)) return tell();
            refusal_ = taken ? QString() : wordsFor(taken.error());
            if (taken) look();
            tell();
            if (taken) Q_EMIT accepted();
        });
    tell();
}

void Crew::stopPlanning() {
    search_.stop();
    tell();
}

QString Crew::skillName(const SkillId& skill) const {
    for (const event::Skill& one : skills_)
        if (one.id == skill) return words_.name(one.name);
    return toText(skill.text());
}

QString Crew::wordsFor(const app::Refusal& refusal) const {
    using Why = app::Refusal::Why;
    if (refusal.why == Why::NobodyCan) {
        QStringList wanting;
        for (const event::Fault& fault : refusal.faults)
            wanting << skillName(SkillId(fault.found));
        return tr("Nobody there could do what is still to be done: %1. Give it to somebody who is "
                  "there, or leave it out first.")
            .arg(wanting.join(QStringLiteral(", ")));
    }
    if (refusal.why == Why::BadEvent)
        return !refusal.faults.empty() && refusal.faults.front().path == "/members"
                   ? tr("More than 8 people are too many for one plan.")
                   : tr("Everybody needs a name, of at most 200 letters.");
    return Words::refusal(refusal);
}

QString Crew::changeOf(const Member& member) const {
    const QString name = toText(member.now.name);
    if (!member.before) return tr("%1 comes").arg(name);
    if (member.before == member.now) return {};
    if (member.now.isHere != member.before->isHere)
        return member.now.isHere ? tr("%1 is back").arg(name) : tr("%1 is gone").arg(name);
    QStringList skills;
    for (const SkillId& skill : member.now.skills)
        skills << skillName(skill);
    if (skills.isEmpty()) return tr("%1 can do nothing of it").arg(name);
    return tr("%1 does: %2").arg(name, skills.join(QStringLiteral(", ")));
}

CrewRow Crew::row(const Member& member) const {
    CrewRow row;
    row.key = member.key;
    row.name = toText(member.now.name);
    row.isHere = member.now.isHere;
    row.isNew = !member.before;
    row.isChanged = member.before != member.now;
    for (const event::Skill& one : skills_) {
        const auto& has = member.now.skills;
        row.skills << toText(one.id.text());
        row.skillWords << words_.name(one.name);
        if (std::find(has.begin(), has.end(), one.id) != has.end())
            row.chosen << toText(one.id.text());
    }
    return row;
}

void Crew::tell() {
    std::vector<CrewRow> rows;
    QStringList changes;
    for (const Member& member : members_) {
        rows.push_back(row(member));
        if (const QString change = changeOf(member); !change.isEmpty()) changes << change;
    }
    change_ = changes.join(QStringLiteral(" · "));
    rows_.show(std::move(rows));
    Q_EMIT told();
}

}  // namespace cinder::face
