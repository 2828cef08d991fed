#include <cstdio>
#include <cstdlib>

#include <QCommandLineParser>

#include "application.h"

namespace cinder::platform {

Launch readLaunch(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Cinderbell: a booked event, planned backwards and run live at the fire"));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption event(QStringLiteral("event"), QStringLiteral("Open this event."),
                                   QStringLiteral("file"));
    const QCommandLineOption store(QStringLiteral("store"),
                                   QStringLiteral("Keep the journal in this folder."),
                                   QStringLiteral("folder"));
    const QCommandLineOption rehearse(
        QStringLiteral("rehearse"),
        QStringLiteral("Play the event 1 to 120 times as fast as life."), QStringLiteral("speed"));
    const QCommandLineOption pictures(
        QStringLiteral("pictures"),
        QStringLiteral(
            "Play the event unseen, write pictures of its boards into this folder, leave."),
        QStringLiteral("folder"));
    parser.addOptions({event, store, rehearse, pictures});
    parser.process(arguments);

    Launch launch{parser.value(event), parser.value(store), {}, parser.value(pictures)};
    if (parser.isSet(rehearse)) {
        bool isNumber = false;
        const int speed = parser.value(rehearse).toInt(&isNumber);
        if (!isNumber || speed < 1 || speed > 120) {
            std::fputs("cinderbell: --rehearse takes a whole number from 1 to 120\n", stderr);
            std::exit(2);
        }
        launch.rehearsal = speed;
    }
    return launch;
}

}  // namespace cinder::platform
