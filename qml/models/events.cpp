#include "events.h"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <tuple>

#include <QDateTime>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include "settings.h"

namespace cinder::face {

namespace {

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return all.str();
}

// A screen of the past, and what one more touch adds.
constexpr std::size_t kPastAtOnce = 6;
// The day after, an event is over: strike may last into the night.
constexpr Duration kOverAfter = std::chrono::hours{12};
constexpr const char* kCopyEnding = ".store";

/// The event's own name as its document says it; a plain text or one for each language.
QString nameIn(const std::string& document, const QString& language) {
    const auto name = QJsonDocument::fromJson(QByteArray::fromStdString(document))
                          .object()
                          .value(QLatin1String("name"));
    return name.isObject() ? name.toObject().value(language).toString() : name.toString();
}

QString namesOf(const std::vector<EventId>& events) {
    QStringList names;
    for (const EventId& event : events)
        names += toText(event.text());
    return names.join(QStringLiteral(", "));
}
QString countedEvents(int count) {
    return count == 1 ? Events::tr("1 event") : Events::tr("%1 events").arg(count);
}
QString countedEntries(int count) {
    return count == 1 ? Events::tr("1 entry") : Events::tr("%1 entries").arg(count);
}

}  // namespace

Events::Events(Door& door, const Settings& settings, std::vector<std::filesystem::path> demos,
               std::filesystem::path copies, QObject* parent)
    : QObject(parent),
      door_(door),
      settings_(settings),
      demoFiles_(std::move(demos)),
      copyFolder_(std::move(copies)),
      pastShown_(kPastAtOnce) {
    connect(&settings_, &Settings::changed, this, [this] { refresh(); });
    refresh();
}

void Events::refresh() {
    showDemos();
    listCopies();
    auto entries = door_.events();
    if (!entries) return refuse(Words::refusal(entries.error()));
    list(*std::move(entries));
    // What was refused since is still to be read; what stands is said again in today's language.
    if (refusal_ != standing_ && !refusal_.isEmpty()) return;
    standing_ = standing();
    refuse(standing_);
}

QString Events::standing() const {
    const auto why = door_.whyReadOnly();
    return why ? Words::refusal(*why) : QString();
}

void Events::showDemos() {
    std::vector<EventRow> demos;
    for (const auto& file : demoFiles_) {
        EventRow row;
        row.key = toText(file.string());
        row.name = nameIn(contentOf(file), settings_.language());
        if (row.name.isEmpty()) row.name = toText(file.stem().string());
        if (search_.isBusy() && row.key == planned_)
            row.beingPlanned =
                plannedSpeed_ > 0 ? QStringLiteral("rehearse") : QStringLiteral("open");
        demos.push_back(std::move(row));
    }
    demos_.show(std::move(demos));
}

EventRow Events::row(const app::EventEntry& entry) const {
    const QString id = toText(entry.id.text());
    if (entry.isUnreadable)
        return {id, id, tr("Damaged: cannot be read on this device"), false, false, {}};
    Words there(settings_);
    there.setPlace(entry.offset, entry.serve);
    return {
        id,
        there.name(entry.name),
        there.date(entry.serve, entry.offset) + QStringLiteral(" · ") + there.clock(entry.serve),
        entry.isRehearsal,
        entry.isDraft,
        {}};
}

void Events::list(std::vector<app::EventEntry> entries) {
    std::stable_sort(
        entries.begin(), entries.end(), [](const app::EventEntry& a, const app::EventEntry& b) {
            // One without a time comes last.
            return std::tie(a.isUnreadable, a.serve) < std::tie(b.isUnreadable, b.serve);
        });
    const Instant now = door_.deviceTime();
    const auto isComing = [now](const app::EventEntry& entry) {
        return entry.isDraft || entry.isUnreadable ||
               (!entry.isRehearsal && entry.serve + kOverAfter > now);
    };
    const auto over = std::stable_partition(entries.begin(), entries.end(), isComing);
    std::vector<EventRow> coming, past;
    for (auto entry = entries.begin(); entry != over; ++entry)
        coming.push_back(row(*entry));
    const auto all = static_cast<std::size_t>(entries.end() - over);
    for (auto entry = entries.end(); entry != over && past.size() < pastShown_;)
        past.push_back(row(*--entry));
    const auto hidden = static_cast<int>(all - past.size());
    earlier_ = hidden > 0 ? tr("Earlier events: %1").arg(hidden) : QString();
    coming_.show(std::move(coming));
    past_.show(std::move(past));
    Q_EMIT earlierChanged();
}

void Events::showEarlier() {
    pastShown_ += 2 * kPastAtOnce;
    refresh();
}

void Events::listCopies() {
    namespace fs = std::filesystem;
    std::vector<std::string> names;
    std::error_code none;
    // A range-for would throw when a card is pulled out while it is listed.
    for (fs::directory_iterator file(copyFolder_, none), end; !none && file != end;
         file.increment(none))
        if (file->path().extension() == kCopyEnding)
            names.push_back(file->path().filename().string());
    // Their names begin with the day, so the latest comes first.
    std::sort(names.rbegin(), names.rend());
    std::vector<EventRow> rows;
    rows.reserve(names.size());
    for (const std::string& name : names)
        rows.push_back(
            {toText(name), toText(fs::path(name).stem().string()), {}, false, false, {}});
    copies_.show(std::move(rows));
}

/// What is left of copies during which the battery died; nobody would ever look for it.
void Events::dropCutOff() const {
    namespace fs = std::filesystem;
    const auto longAgo = fs::file_time_type::clock::now() - std::chrono::hours{1};
    std::error_code none;
    std::vector<fs::path> left;
    for (fs::directory_iterator file(copyFolder_, none), end; !none && file != end;
         file.increment(none)) {
        std::error_code unknown;
        const bool isPart =
            file->path().extension() == ".part" && file->path().stem().extension() == kCopyEnding;
        if (isPart && fs::last_write_time(file->path(), unknown) < longAgo && !unknown)
            left.push_back(file->path());
    }
    for (const fs::path& part : left)
        fs::remove(part, none);
}

void Events::backUp() {
    const auto now = door_.deviceTime();
    const auto at = QDateTime::fromMSecsSinceEpoch(now.time_since_epoch().count());
    const auto name = at.toString(QStringLiteral("yyyy-MM-dd-HHmm")).toStdString() + kCopyEnding;
    std::error_code failed;
    std::filesystem::create_directories(copyFolder_, failed);
    const auto file = copyFolder_ / name;
    dropCutOff();
    const auto taken = door_.backUp(file);
    listCopies();
    if (!taken) return say(Words::refusal(taken.error()));
    QString words = tr("Everything on this device is in %1. Carry the file to another device or "
                       "card.")
                        .arg(toText(file.string()));
    if (*taken)
        words += QStringLiteral(" ") +
                 tr("The record of event %1 is not as it was written, and was copied as it stands: "
                    "keep older copies too.")
                     .arg(toText((*taken)->event.text()));
    say(words);
}

void Events::restore(const QString& copy) {
    const auto restored = door_.restore(copyFolder_ / copy.toStdString());
    if (!restored) {
        say(Words::refusal(restored.error()));
        return;
    }
    QStringList words;
    if (restored->operations > 0)
        words += tr("Taken back: %1, %2 in all.")
                     .arg(countedEvents(restored->events), countedEntries(restored->operations));
    else if (restored->differing.empty() && restored->broken.empty())
        words += tr("All of this copy is on this device already.");
    else
        words += tr("Nothing was added.");
    if (!restored->differing.empty())
        words += tr("Went another way here and stays as it is: %1.")
                     .arg(countedEvents(static_cast<int>(restored->differing.size())));
    if (!restored->broken.empty())
        words +=
            tr("Changed or damaged in the copy and not taken: %1.").arg(namesOf(restored->broken));
    say(words.join(QLatin1Char(' ')));
    refresh();
}

void Events::say(const QString& copied) {
    copied_ = copied;
    Q_EMIT copiedChanged();
}

void Events::open(const QString& event) {
    dropDemo();
    show(door_.open(EventId(event.toStdString())));
}

void Events::openDemo(const QString& demo, int speed) {
    planned_ = demo;
    plannedSpeed_ = speed;
    carryOut(
        search_, door_,
        [this, document = contentOf(demo.toStdString())] { return door_.askToImport(document); },
        [this, speed](Taken taken) {
            showDemos();
            if (isLeft(taken)) return;
            if (taken && speed > 0)
                if (const auto made = door_.rehearse(speed, std::chrono::minutes(5)); !made)
                    taken = fail(made.error());
            show(taken);
        });
    showDemos();
}

void Events::dropDemo() {
    search_.stop();
    showDemos();
}

void Events::refuse(const QString& why) {
    if (why == refusal_) return;
    refusal_ = why;
    Q_EMIT refusalChanged();
}

void Events::show(const Taken& taken) {
    standing_ = standing();
    refuse(taken ? standing_ : Words::refusal(taken.error()));
    if (!taken) return;
    if (door_.look())
        Q_EMIT opened();
    else
        Q_EMIT draftOpened();
}

}  // namespace cinder::face
