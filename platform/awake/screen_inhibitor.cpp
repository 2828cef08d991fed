#include "screen_inhibitor.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace cinder::platform {

namespace {

QDBusMessage call(const QString& method) {
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
                                          QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          QStringLiteral("org.freedesktop.ScreenSaver"), method);
}

}  // namespace

ScreenInhibitor::~ScreenInhibitor() {
    letGo();
}

void ScreenInhibitor::hold(bool on) {
    if (on == isWanted_) return;
    isWanted_ = on;
    if (on)
        ask();
    else
        letGo();
}

void ScreenInhibitor::ask() {
    if (cookie_) return;
    isWantedAgain_ = isAsked_;
    if (isAsked_) return;
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) return;
    QDBusMessage inhibit = call(QStringLiteral("Inhibit"));
    inhibit << QStringLiteral("Cinderbell") << QStringLiteral("A day at the fire is running");
    isAsked_ = true;
    auto* watcher = new QDBusPendingCallWatcher(bus.asyncCall(inhibit), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher] {
        const QDBusPendingReply<quint32> reply = *watcher;
        watcher->deleteLater();
        isAsked_ = false;
        if (!reply.isError()) cookie_ = reply.value();
        if (!isWanted_) letGo();  // no longer wanted when the answer came
        // Refused what was asked first: what was asked since has had no answer yet.
        if (isWanted_ && isWantedAgain_) ask();
    });
}

void ScreenInhibitor::letGo() {
    if (!cookie_) return;
    QDBusMessage release = call(QStringLiteral("UnInhibit"));
    release << *cookie_;
    QDBusConnection::sessionBus().send(release);
    cookie_.reset();
}

}  // namespace cinder::platform
