#pragma once

/// The other devices of the crew, found and kept in touch with over the local network: a beacon
/// that calls out where this device is (beacon.h), a listener, a link to each device in reach
/// (link.h) and an exchange of journals over each (core/sync). No server and no internet is needed
/// or asked. Lives on the thread of the session, and needs its event loop.

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <QObject>

#include "app/session.h"
#include "journal/store.h"
#include "models/devices.h"
#include "network/key_file.h"

namespace cinder::platform {

class CrewNetwork final : public face::CrewDevices {
  public:
    struct Options {
        /// Where every device calls and listens. Of the dynamic ports (RFC 6335, section 6), above
        /// those that Linux hands out by itself (kernel documentation, ip_local_port_range).
        std::uint16_t port = 62'147;
        std::chrono::milliseconds callEvery{2000};
    };

    /// `store` and `session` must outlive this. `keyFile` says whether this device belongs to a
    /// crew; then it is looked for as soon as the event loop runs. With a store that was written by
    /// a newer app nothing is done, then or later.
    CrewNetwork(journal::Store& store, app::Session& session, std::filesystem::path keyFile,
                Options options);
    CrewNetwork(journal::Store& store, app::Session& session, std::filesystem::path keyFile);
    ~CrewNetwork() override;

    [[nodiscard]] bool isJoined() const override { return membership_.has_value(); }
    [[nodiscard]] std::string code() const override;
    /// Both make the key on the calling thread: a fraction of a second.
    bool begin() override;
    bool join(const std::string& code) override;
    void leave() override;
    [[nodiscard]] std::vector<Other> others() const override;
    [[nodiscard]] Trouble trouble() const override;
    void setHolder(const std::string& name) override;
    void tell(std::function<void()> changed, std::function<void()> added) override;

  private:
    struct Running;

    void start();
    void stop();
    /// What is due is done once this call, and whatever it came from, is over.
    void settleLater();
    void settle();
    void tellChanged();

    journal::Store& store_;
    app::Session& session_;
    KeyFile keyFile_;
    Options options_;
    std::optional<Membership> membership_;
    bool isKept_ = true;
    bool isUnguarded_ = false;
    std::string holder_;
    std::unique_ptr<Running> running_;

    std::function<void()> changed_;
    std::function<void()> added_;
    Trouble told_ = Trouble::None;
    bool isSettleDue_ = false;
    bool isChangeDue_ = false;
    bool isAdditionDue_ = false;
    std::set<EventId> noted_;
    /// What is put off until later ends with this.
    QObject context_;
};

}  // namespace cinder::platform
