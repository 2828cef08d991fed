#include "network/crew_network.h"

#include <algorithm>
#include <utility>

#include <QHostAddress>
#include <QMetaObject>
#include <QTimer>

#include "network/beacon.h"
#include "network/link.h"
#include "network/links.h"
#include "network/listener.h"
#include "sync/crew_code.h"

namespace cinder::platform {

namespace {

/// Three of these unheard end a link (Link::kMostSilence).
constexpr std::chrono::seconds kBeat{5};

/// A newer app may keep its record by rules that this one does not know; a copy has no device.
bool takesPart(const journal::Store& store) {
    return store.access() != journal::Access::Newer && !store.device().empty();
}

}  // namespace

struct CrewNetwork::Running {
    explicit Running(CrewNetwork& network)
        : links(network.store_, network.session_, network.membership_->key, network.holder_,
                {[&network] { network.tellChanged(); },
                 [&network] {
                     network.isAdditionDue_ = true;
                     network.tellChanged();
                 }}),
          listener([this](qintptr descriptor) { links.accept(descriptor); }),
          hasPort(listener.begin()),
          beacon(network.options_.port,
                 {sync::crewMark(network.membership_->key), network.store_.device(),
                  listener.serverPort()},
                 [this, own = network.store_.device()](
                     const DeviceId& device, const QHostAddress& address, std::uint16_t port) {
                     heard(own, device, address, port);
                 }) {
        QObject::connect(&beats, &QTimer::timeout, &beats, [this] { links.beat(); });
        beats.start(kBeat);
    }

    /// Of two devices the one with the smaller name goes to the other.
    void heard(const DeviceId& own, const DeviceId& device, const QHostAddress& address,
               std::uint16_t port) {
        if (own < device)
            links.dial(device, address, port);
        else if (!links.has(device))
            beacon.answer(address);
    }

    Links links;
    Listener listener;
    bool hasPort;
    Beacon beacon;
    QTimer beats;
};

CrewNetwork::CrewNetwork(journal::Store& store, app::Session& session,
                         std::filesystem::path keyFile, Options options)
    : store_(store), session_(session), keyFile_(std::move(keyFile)), options_(options) {
    if (!takesPart(store_)) return;
    session_.tellWhenNoted([this](const EventId& event) {
        // The session is in the middle of a touch.
        noted_.insert(event);
        settleLater();
    });
    membership_ = keyFile_.read();
    // Loading what the links are guarded with takes longer than the first board may.
    if (membership_)
        QMetaObject::invokeMethod(
            &context_, [this] { start(); }, Qt::QueuedConnection);
}

CrewNetwork::CrewNetwork(journal::Store& store, app::Session& session,
                         std::filesystem::path keyFile)
    : CrewNetwork(store, session, std::move(keyFile), Options{}) {}

CrewNetwork::~CrewNetwork() {
    if (takesPart(store_)) session_.tellWhenNoted(nullptr);
}

std::string CrewNetwork::code() const {
    return membership_ ? membership_->code : std::string{};
}

bool CrewNetwork::begin() {
    return join(sync::newCode());
}

bool CrewNetwork::join(const std::string& code) {
    if (!takesPart(store_) || !sync::isCode(code)) return false;
    if (membership_ && membership_->code == code) return true;
    const auto key = sync::crewKey(code);
    if (!key) return false;
    stop();
    membership_ = Membership{code, *key};
    isKept_ = keyFile_.write(*membership_);
    start();
    tellChanged();
    return true;
}

void CrewNetwork::leave() {
    if (!membership_) return;
    stop();
    keyFile_.remove();
    membership_.reset();
    tellChanged();
}

void CrewNetwork::start() {
    if (running_ || !membership_) return;
    isUnguarded_ = !Link::isPossible();
    if (!isUnguarded_) {
        running_ = std::make_unique<Running>(*this);
        running_->beacon.begin(options_.callEvery, [this] {
            if (trouble() != told_) tellChanged();
        });
    }
    tellChanged();
}

void CrewNetwork::stop() {
    running_.reset();
    isUnguarded_ = false;
    isKept_ = true;
}

std::vector<face::CrewDevices::Other> CrewNetwork::others() const {
    return running_ ? running_->links.others() : std::vector<Other>{};
}

face::CrewDevices::Trouble CrewNetwork::trouble() const {
    if (isUnguarded_) return Trouble::NotEncrypted;
    if (running_) {
        if (!running_->hasPort || !running_->beacon.isListening()) return Trouble::PortTaken;
        const auto all = others();
        // Two apps on one machine need no network.
        if (!running_->beacon.isInNetwork() && (all.empty() || !all.front().isInReach))
            return Trouble::NoNetwork;
    }
    return isKept_ ? Trouble::None : Trouble::NotKept;
}

void CrewNetwork::setHolder(const std::string& name) {
    holder_ = name;
    if (running_) running_->links.setHolder(name);
}

void CrewNetwork::tell(std::function<void()> changed, std::function<void()> added) {
    changed_ = std::move(changed);
    added_ = std::move(added);
}

void CrewNetwork::tellChanged() {
    isChangeDue_ = true;
    settleLater();
}

void CrewNetwork::settleLater() {
    if (std::exchange(isSettleDue_, true)) return;
    QMetaObject::invokeMethod(
        &context_, [this] { settle(); }, Qt::QueuedConnection);
}

void CrewNetwork::settle() {
    isSettleDue_ = false;
    if (running_ && !noted_.empty()) running_->links.noteAdded(noted_);
    noted_.clear();
    const bool isChanged = std::exchange(isChangeDue_, false);
    const bool isAddition = std::exchange(isAdditionDue_, false);
    told_ = trouble();
    // These may call back into this, and may be set anew meanwhile.
    const auto added = added_;
    const auto changed = changed_;
    if (isAddition && added) added();
    if (isChanged && changed) changed();
}

}  // namespace cinder::platform
