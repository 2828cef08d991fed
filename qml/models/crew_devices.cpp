#include "crew_devices.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include <QDateTime>

#include "day.h"
#include "settings.h"
#include "sync/crew_code.h"

namespace cinder::face {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr std::size_t kGroup = 4;
/// Less than nobody notices on a countdown.
constexpr Duration kSameClock = seconds(2);
/// Out of reach for so long is worth a line on the boards: round the van and back takes less.
constexpr Duration kPatience = minutes(2);
/// What is further from the bell is another day, and so is who was seen longer ago.
constexpr Duration kOfTheDay = hours(12);

/// A dash is as wide as a digit in our type, so that nothing moves while one types.
QList<QString> inGroups(const std::string& digits) {
    const QString all = toText(digits).leftJustified(sync::kCodeDigits, QChar(0x2013));
    QList<QString> groups;
    for (qsizetype at = 0; at < all.size(); at += kGroup)
        groups += all.mid(at, kGroup);
    return groups;
}

QString nameOf(const CrewDevices::Other& other) {
    if (!other.holder.empty()) return CrewDevicesView::tr("%1's device").arg(toText(other.holder));
    return CrewDevicesView::tr("Device %1").arg(toText(other.device.text()).left(4).toUpper());
}

/// Nothing is exchanged, though it is near, before somebody does something about it.
bool isStuck(const CrewDevices::Other& other) {
    using sync::Standing;
    const Standing standing = other.peer.standing;
    return other.isInReach &&
           (standing == Standing::ClocksApart || standing == Standing::OtherVersion ||
            standing == Standing::NotNoted);
}

QString markOf(const CrewDevices::Other& other) {
    if (!other.isInReach) return QStringLiteral("waiting");
    if (isStuck(other)) return QStringLiteral("late");
    return other.peer.standing == sync::Standing::UpToDate ? QStringLiteral("done")
                                                           : QStringLiteral("running");
}

QString clockOf(const CrewDevices::Other& other) {
    if (!other.isInReach || !other.peer.clock) return {};
    const Duration ahead = other.peer.clock->ahead;
    if (std::chrono::abs(ahead) < kSameClock) return CrewDevicesView::tr("The clocks agree");
    return ahead > Duration::zero()
               ? CrewDevicesView::tr("Its clock is %1 ahead").arg(Words::span(ahead))
               : CrewDevicesView::tr("Its clock is %1 behind").arg(Words::span(ahead));
}

QString partedOf(const CrewDevices::Other& other) {
    const auto count = other.peer.parted.size();
    if (count == 0) return {};
    return count == 1 ? CrewDevicesView::tr(
                            "The record of one event went two ways; it is left as "
                            "it is on both.")
                      : CrewDevicesView::tr(
                            "The records of %1 events went two ways; they are left "
                            "as they are on both.")
                            .arg(count);
}

/// "12 entries to come, 3 to go"; empty when neither is known.
QString onItsWay(const sync::Peer& peer) {
    QStringList parts;
    if (peer.toCome == 1) parts += CrewDevicesView::tr("1 entry to come");
    if (peer.toCome > 1) parts += CrewDevicesView::tr("%1 entries to come").arg(peer.toCome);
    if (peer.toGo == 1) parts += CrewDevicesView::tr("1 entry to go");
    if (peer.toGo > 1) parts += CrewDevicesView::tr("%1 entries to go").arg(peer.toGo);
    return parts.join(QStringLiteral(", "));
}

QString nameOfBoard(const QString& board) {
    if (board == QLatin1String("fire")) return CrewDevicesView::tr("Fire");
    if (board == QLatin1String("buffet")) return CrewDevicesView::tr("Buffet");
    return board == QLatin1String("lead") ? CrewDevicesView::tr("Lead") : QString();
}

}  // namespace

CrewDevicesView::CrewDevicesView(CrewDevices* devices, const Day& day, const Settings& settings,
                                 std::function<Instant()> now, QObject* parent)
    : QObject(parent), devices_(devices), day_(day), words_(settings), now_(std::move(now)) {
    connect(&settings, &Settings::changed, this, [this] { retell(); });
    look();
}

void CrewDevicesView::look() {
    if (!isThere()) return;
    others_ = devices_->others();
    isJoined_ = devices_->isJoined();
    code_ = devices_->code();
    trouble_ = devices_->trouble();
    if (!isJoined_) isCodeShown_ = false;
    if (isJoined_) isEntering_ = false;
    tell();
}

QString CrewDevicesView::page() const {
    if (isEntering_) return QStringLiteral("enter");
    if (!isJoined_) return QStringLiteral("none");
    return isCodeShown_ ? QStringLiteral("code") : QStringLiteral("joined");
}

QString CrewDevicesView::title() const {
    if (isEntering_) return tr("Enter the code");
    return isCodeShown_ ? tr("The code of this crew") : tr("Devices");
}

QString CrewDevicesView::note() const {
    if (isEntering_) return tr("The other device shows it under Devices.");
    if (isCodeShown_) return tr("On each other device, once: Devices, then Enter a code.");
    if (!isJoined_) return {};
    if (others_.empty()) return tr("No other device has been in reach yet.");
    const auto near = std::count_if(others_.begin(), others_.end(),
                                    [](const auto& other) { return other.isInReach; });
    return tr("%1 of %2 in reach").arg(near).arg(others_.size());
}

QList<QString> CrewDevicesView::code() const {
    return inGroups(code_);
}

QList<QString> CrewDevicesView::typed() const {
    return inGroups(typed_);
}

int CrewDevicesView::group() const {
    return typed_.size() < sync::kCodeDigits ? static_cast<int>(typed_.size() / kGroup) : -1;
}

QString CrewDevicesView::problem() const {
    if (problem_ == Problem::NoRoom)
        return tr("This device has no room to make the key. Close other apps, then touch again.");
    if (problem_ == Problem::WrongDigit && isEntering_)
        return tr("One digit is not right. Compare it with the other screen.");
    return {};
}

QString CrewDevicesView::trouble() const {
    using Trouble = CrewDevices::Trouble;
    switch (trouble_) {
        case Trouble::NoNetwork:
            return tr(
                "This device is in no local network. Switch on a hotspot on one phone and "
                "join it with the others; no internet is needed.");
        case Trouble::PortTaken:
            return tr(
                "Another program on this device listens where this app would. Close it, or "
                "start this device again.");
        case Trouble::NotKept:
            return tr(
                "The code could not be kept: this device forgets it when the app ends. Free "
                "some space, then leave and enter the code again.");
        case Trouble::NotEncrypted:
            return tr(
                "This device lacks what guards the connection, so nothing is exchanged. "
                "Update its system and this app.");
        case Trouble::None:
            break;
    }
    return {};
}

void CrewDevicesView::begin() {
    if (!isThere()) return;
    const bool isMade = devices_->begin();
    isCodeShown_ = isMade;
    if (isMade) typed_.clear();
    problem_ = isMade ? Problem::None : Problem::NoRoom;
    look();
}

void CrewDevicesView::ask() {
    isEntering_ = true;
    if (problem_ == Problem::NoRoom) problem_ = Problem::None;
    tell();
}

void CrewDevicesView::press(const QString& key) {
    const bool isDigit = key.size() == 1 && key.front() >= u'0' && key.front() <= u'9';
    if (!isThere() || !isDigit) return;
    const bool isFull = typed_.size() == sync::kCodeDigits;
    // There was no room for the key; all digits are there, so any of them tries again.
    if (isFull && problem_ != Problem::NoRoom) return;
    if (!isFull) typed_ += key.toStdString();
    problem_ = Problem::None;
    if (typed_.size() == sync::kCodeDigits) {
        if (!sync::isCode(typed_))
            problem_ = Problem::WrongDigit;
        else if (!devices_->join(typed_))
            problem_ = Problem::NoRoom;
        else
            typed_.clear();
    }
    look();
}

void CrewDevicesView::erase() {
    if (!typed_.empty()) typed_.pop_back();
    problem_ = Problem::None;
    tell();
}

void CrewDevicesView::showCode() {
    isCodeShown_ = isJoined_;
    tell();
}

void CrewDevicesView::close() {
    isEntering_ = false;
    isCodeShown_ = false;
    if (problem_ == Problem::NoRoom) problem_ = Problem::None;
    tell();
}

void CrewDevicesView::leave() {
    if (!isThere()) return;
    devices_->leave();
    look();
}

void CrewDevicesView::takeUp(const QString& board) {
    board_ = board;
    tellHolder();
}

void CrewDevicesView::tellHolder() {
    if (!isThere()) return;
    std::string holder;
    if (const auto& seen = day_.snapshot())
        for (const app::PersonCard& person : seen->people)
            if (toText(person.id.text()) == day_.person()) holder = person.name;
    devices_->setHolder(holder.empty() ? nameOfBoard(board_).toStdString() : holder);
}

QString CrewDevicesView::momentOf(Instant at) const {
    const auto& seen = day_.snapshot();
    const auto here = QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count());
    const UtcOffset offset =
        seen ? seen->offset : std::chrono::duration_cast<UtcOffset>(seconds(here.offsetFromUtc()));
    Words there = words_;
    there.setPlace(offset, at);
    QString clock = there.clock(at);
    if (now_() - at < kOfTheDay) return clock;
    return there.date(at, offset) + QStringLiteral(" · ") + clock;
}

QString CrewDevicesView::standing(const CrewDevices::Other& other) const {
    using sync::Standing;
    if (!other.isInReach)
        return tr("Out of reach since %1. It catches up by itself once it is near again, in the "
                  "same network.")
            .arg(momentOf(other.lastSeen));
    const QString moving = onItsWay(other.peer);
    switch (other.peer.standing) {
        case Standing::UpToDate:
            return tr("In reach, everything is on both");
        case Standing::Exchanging:
            return moving.isEmpty() ? tr("In reach, exchanging") : tr("In reach, %1").arg(moving);
        case Standing::ClocksApart:
            return other.peer.clock
                       ? tr("The clocks are %1 apart: set the wrong one right. Nothing is "
                            "exchanged "
                            "until then.")
                             .arg(Words::span(other.peer.clock->ahead))
                       : tr("The clocks are far apart: set the wrong one right. Nothing is "
                            "exchanged until then.");
        case Standing::OtherVersion:
            return tr(
                "Another version of the app: update the older one. Nothing is exchanged "
                "until then.");
        case Standing::NotNoted:
            return tr("What arrives cannot be noted: free some space on both devices.");
        case Standing::Greeting:
            break;
    }
    return tr("In reach, comparing");
}

DeviceRow CrewDevicesView::row(const CrewDevices::Other& other) const {
    return {toText(other.device.text()),
            nameOf(other),
            standing(other),
            markOf(other),
            clockOf(other),
            partedOf(other)};
}

void CrewDevicesView::tell() {
    std::vector<DeviceRow> rows;
    rows.reserve(others_.size());
    for (const CrewDevices::Other& other : others_)
        rows.push_back(row(other));
    rows_.show(std::move(rows));
    Q_EMIT told();
}

/// A rehearsal has a bell of its own; who sits at home with it misses nobody.
bool CrewDevicesView::isDayOn(Instant now) const {
    const auto& seen = day_.snapshot();
    return seen && !seen->isRehearsal && std::chrono::abs(now - seen->serve) <= kOfTheDay;
}

QString CrewDevicesView::notice() const {
    const Instant now = now_();
    if (!isJoined_ || !isDayOn(now)) return {};
    const auto stuck = std::find_if(others_.begin(), others_.end(), isStuck);
    if (stuck != others_.end()) return nameOf(*stuck) + QStringLiteral(" · ") + standing(*stuck);
    return awayNotice(now);
}

QString CrewDevicesView::awayNotice(Instant now) const {
    const CrewDevices::Other* longest = nullptr;
    int count = 0;
    for (const CrewDevices::Other& other : others_) {
        const Duration away = now - other.lastSeen;
        if (other.isInReach || away <= kPatience || away > kOfTheDay) continue;
        ++count;
        if (longest == nullptr || other.lastSeen < longest->lastSeen) longest = &other;
    }
    if (longest == nullptr) return {};
    // Nobody is missing: it is this device that is alone.
    using Trouble = CrewDevices::Trouble;
    if (trouble_ != Trouble::None && trouble_ != Trouble::NotKept) return trouble();
    const QString since = momentOf(longest->lastSeen);
    return count == 1 ? tr("%1 is out of reach since %2: bring it near, into the same network.")
                            .arg(nameOf(*longest), since)
                      : tr("%1 devices are out of reach, one since %2: bring them near, into the "
                           "same network.")
                            .arg(count)
                            .arg(since);
}

}  // namespace cinder::face
