#pragma once

/// What the tests of the network share: waiting for what the event loop brings, and a cable that
/// can be cut.

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <vector>

#include <QTcpServer>
#include <QTcpSocket>

namespace samples {

/// Runs the event loop until `isSo`. False when it is not after `most`, which is far more than it
/// takes.
[[nodiscard]] bool waitFor(const std::function<bool()>& isSo,
                           std::chrono::seconds most = std::chrono::seconds{20});

/// A UDP port of this process's own, as far as there are any: tests run side by side.
[[nodiscard]] std::uint16_t ownPort();

/// Whether a datagram to everybody on this machine comes back; says "skipped: " when it does not.
[[nodiscard]] bool canCallOut();

/// Passes on what comes in to a port of this machine, both ways, until it is cut.
class Cable {
  public:
    explicit Cable(std::uint16_t to);
    [[nodiscard]] std::uint16_t port() const { return server_.serverPort(); }
    /// Ends every connection that goes through.
    void cut();
    /// Bytes that went through, both ways.
    [[nodiscard]] std::int64_t bytes() const { return bytes_; }

  private:
    struct Pair {
        std::unique_ptr<QTcpSocket> in;
        std::unique_ptr<QTcpSocket> out;
    };
    void join();
    void pass(QTcpSocket& from, QTcpSocket& to);

    std::uint16_t to_;
    std::int64_t bytes_ = 0;
    QTcpServer server_;
    std::vector<Pair> pairs_;
};

}  // namespace samples
