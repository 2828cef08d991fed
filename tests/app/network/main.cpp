#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QNetworkProxy>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    // For the sockets of the tests themselves: Qt would ask the desktop for one, on threads of its
    // own. What is tested has none by itself.
    QNetworkProxy::setApplicationProxy(QNetworkProxy::NoProxy);
    return Catch::Session().run(argc, argv);
}
