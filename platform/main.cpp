#include <QGuiApplication>

#include "application.h"
#include "face.h"

int main(int argc, char** argv) {
    cinder::face::Face::prepareApplication();
    const QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("cinderbell"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Cinderbell"));
    QGuiApplication::setDesktopFileName(QStringLiteral("cinderbell"));
    QGuiApplication::setApplicationVersion(QStringLiteral(CINDER_VERSION));
    return cinder::platform::runApplication(
        cinder::platform::readLaunch(QCoreApplication::arguments()));
}
