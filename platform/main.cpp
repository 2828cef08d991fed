#include <QGuiApplication>
#include <clocale>

#include "application.h"
#include "face.h"

int main(int argc, char** argv) {
    cinder::face::Face::prepareApplication();
    const QGuiApplication application(argc, argv);
    // Qt has taken over the device's locale. Numbers have a point in every language here, so that
    // nobody takes a comma for the start of a thousand.
    std::setlocale(LC_NUMERIC, "C");
    QGuiApplication::setApplicationName(QStringLiteral("cinderbell"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Cinderbell"));
    QGuiApplication::setDesktopFileName(QStringLiteral("cinderbell"));
    QGuiApplication::setApplicationVersion(QStringLiteral(CINDER_VERSION));
    return cinder::platform::runApplication(
        cinder::platform::readLaunch(QCoreApplication::arguments()));
}
