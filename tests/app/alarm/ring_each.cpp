// Rings one alarm through the real player: kind and loudness on the command line. Run by
// test_alarm_heard.py against a sound server of its own.

#include <cstdio>
#include <string>

#include <QCoreApplication>
#include <QTimer>

#include "sound/alarm_player.h"
#include "sound/tones.h"

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    cinder::platform::AlarmPlayer player;
    player.prepare();
    std::printf("audible %d\n", player.isAudible() ? 1 : 0);
    std::fflush(stdout);
    const int loudness = argc > 2 ? std::stoi(argv[2]) : 1;
    const auto kind = static_cast<cinder::live::TimerKind>(argc > 1 ? std::stoi(argv[1]) : 0);
    // Even deaf, a ring must return at once and do no harm.
    player.ring(kind, loudness);
    // Time for a slow machine to connect, load and play it out.
    const auto length = cinder::tones::recipe(kind, loudness).length();
    QTimer::singleShot(length + std::chrono::milliseconds{3000}, &app, &QCoreApplication::quit);
    return QCoreApplication::exec();
}
