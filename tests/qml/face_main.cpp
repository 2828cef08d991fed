/// Runs the cases of one test program inside a Qt application with no screen of its own.

#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <cstdio>
#include <string>
#include <utility>
#include <vector>

#include <QGuiApplication>

#include "real_day.h"

namespace {

std::vector<std::string>& complaints() {
    static std::vector<std::string> all;
    return all;
}

void listen(QtMsgType type, const QMessageLogContext&, const QString& text) {
    std::fprintf(stderr, "%s\n", qPrintable(text));
    // A build machine without a session has no runtime directory; that is not the face's affair.
    if (type != QtDebugMsg && type != QtInfoMsg &&
        !text.startsWith(QLatin1String("QStandardPaths")))
        complaints().push_back(text.toStdString());
}

}  // namespace

std::vector<std::string> cinder::face::scene::takeComplaints() {
    return std::exchange(complaints(), {});
}

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("LC_ALL", "C.UTF-8");
    qputenv("TZ", "UTC");
    qInstallMessageHandler(listen);
    cinder::face::Face::prepareApplication();
    const QGuiApplication app(argc, argv);
    return Catch::Session().run(argc, argv);
}
