// What a new event begins with, and the event as one file (editor.h).

#include <QDateTime>
#include <QTimeZone>

#include "editor.h"
#include "event/draft.h"
#include "event/json.h"

namespace cinder::face {

namespace {

/// One in the afternoon, four weeks from now: to be changed, and never in the past.
ZonedInstant usualServe(Instant now) {
    const QDate today = QDateTime::fromMSecsSinceEpoch(now.time_since_epoch().count()).date();
    const QDateTime at(today.addDays(28), QTime(13, 0));
    return {Instant{Duration{at.toMSecsSinceEpoch()}}, UtcOffset{at.offsetFromUtc() / 60}};
}

}  // namespace

void Editor::prepare() {
    begins_.clear();
    refusal_.clear();
    std::vector<PartRow> rows;
    for (std::string& document : library_.templates()) {
        const auto blank = event::parseDraft(document);
        if (!blank) continue;
        const QString key = QStringLiteral("template:") + toText(blank->id.text());
        rows.push_back({key, words_.name(blank->name), tr("From the beginning, kit and crew set")});
        begins_[key] = std::move(document);
    }
    if (const auto events = door_.events())
        for (const auto& entry : *events) {
            if (entry.isRehearsal || entry.isUnreadable) continue;
            rows.push_back({QStringLiteral("event:") + toText(entry.id.text()),
                            words_.name(entry.name),
                            tr("Like this one of %1").arg(words_.date(entry.serve, entry.offset))});
        }
    if (files_ != nullptr)
        for (const std::string& name : files_->names())
            rows.push_back(
                {QStringLiteral("file:") + toText(name), toText(name), tr("From a file")});
    beginnings_.show(std::move(rows));
    Q_EMIT changed();
}

void Editor::begin(const QString& beginning) {
    app::NewEvent wanted;
    wanted.serve = usualServe(door_.deviceTime());
    wanted.timeZone = QTimeZone::systemTimeZoneId().toStdString();
    if (const auto known = begins_.find(beginning); known != begins_.end()) {
        wanted.document = known->second;
    } else if (beginning.startsWith(u"file:")) {
        if (!readFile(beginning.mid(5), wanted)) return tell();
    } else {
        wanted.from = EventId(beginning.mid(6).toStdString());
        auto document = door_.documentOf(*wanted.from);
        if (!document) return say(document.error(), {});
        wanted.document = *std::move(document);
    }
    const auto id = door_.newDraft(wanted);
    if (!id) return say(id.error(), {});
    open();
    Q_EMIT begun();
}

/// A file says its own time and place; it becomes an event of its own and writes over nothing.
bool Editor::readFile(const QString& name, app::NewEvent& wanted) {
    const auto document = files_ != nullptr ? files_->read(name.toStdString()) : std::nullopt;
    const auto read = event::parseDraft(document.value_or(std::string()));
    if (!read) {
        const auto& fault = read.error().front();
        refusal_ = tr("%1 is not an event this app can read: %2")
                       .arg(name, fault.path.empty() ? tr("the file is damaged or something else")
                                                     : toText(fault.path) + QStringLiteral(": ") +
                                                           FaultWords::say(fault, {}, words_));
        Q_EMIT changed();
        return false;
    }
    wanted.document = *document;
    wanted.serve = read->serve;
    wanted.timeZone.clear();
    return true;
}

void Editor::writeFile() {
    const auto draft = door_.draft();
    if (!draft || files_ == nullptr) return;
    const auto path = files_->write(draft->id.text() + ".json", event::write(*draft));
    written_ = path ? tr("Written: %1").arg(toText(*path)) : QString();
    refusal_ = path ? QString()
                    : tr("The file could not be written. Make room, or let the app use "
                         "the documents folder.");
    Q_EMIT changed();
}

}  // namespace cinder::face
