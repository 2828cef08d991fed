#include "network/listener.h"

#include <utility>

#include <QHostAddress>
#include <QNetworkProxy>

namespace cinder::platform {

Listener::Listener(std::function<void(qintptr descriptor)> came) : came_(std::move(came)) {
    setProxy(QNetworkProxy::NoProxy);
}

bool Listener::begin() {
    // What calls out where this port is (beacon.h) reaches IPv4 only.
    return listen(QHostAddress::AnyIPv4);
}

}  // namespace cinder::platform
