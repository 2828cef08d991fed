#pragma once

/// Takes the connections that other devices begin, on any free port.

#include <functional>

#include <QTcpServer>

namespace cinder::platform {

class Listener final : public QTcpServer {
  public:
    /// Is handed the number the system gave each connection.
    explicit Listener(std::function<void(qintptr descriptor)> came);

    /// False when the system has no port to give.
    [[nodiscard]] bool begin();

  protected:
    void incomingConnection(qintptr descriptor) override { came_(descriptor); }

  private:
    std::function<void(qintptr descriptor)> came_;
};

}  // namespace cinder::platform
