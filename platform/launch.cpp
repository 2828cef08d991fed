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
    const QCommandLineOption board(
        QStringLiteral("board"),
        QStringLiteral("Begin on this board: lead, fire, buffet or sheet."),
        QStringLiteral("name"));
    const QCommandLineOption announce(QStringLiteral("announce"),
                                      QStringLiteral("Print a line when the first board stands."));
    parser.addOptions({event, store, rehearse, pictures, board, announce});
    parser.process(arguments);

    const auto leave = [](const char* words) {
        std::fprintf(stderr, "cinderbell: %s\n", words);
        std::exit(2);
    };
    if (!parser.positionalArguments().isEmpty())
        leave("name an event with --event; a file alone is not opened");
    if (parser.isSet(rehearse) && !parser.isSet(event))
        leave("--rehearse wants an event to rehearse: name it with --event");

    Launch launch;
    launch.eventFile = parser.value(event);
    launch.storeFolder = parser.value(store);
    launch.pictureFolder = parser.value(pictures);
    launch.board = parser.value(board);
    launch.announces = parser.isSet(announce);
    const QStringList boards = {QStringLiteral("lead"), QStringLiteral("fire"),
                                QStringLiteral("buffet"), QStringLiteral("sheet")};
    if (!launch.board.isEmpty() && !boards.contains(launch.board))
        leave("--board takes lead, fire, buffet or sheet");
    if (parser.isSet(rehearse)) {
        bool isNumber = false;
        const int speed = parser.value(rehearse).toInt(&isNumber);
        if (!isNumber || speed < 1 || speed > 120)
            leave("--rehearse takes a whole number from 1 to 120");
        launch.rehearsal = speed;
    }
    return launch;
}

}  // namespace cinder::platform
