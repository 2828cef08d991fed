/// Renders every board and page from a day that stands still, in both sizes, themes and languages.
/// Usage: cinder_pictures [folder]. Fails on any QML warning; without a folder it only looks.

#include <cstdio>

#include <QDir>
#include <QGuiApplication>
#include <QImage>

#include "face.h"
#include "fixed_day.h"

namespace {

using namespace cinder;

struct Silence final : face::AlarmSound {
    void ring(live::TimerKind, int) override {}
    void silence() override {}
    [[nodiscard]] bool isAudible() const override { return true; }
};
struct Still final : face::Haptics {
    void buzz(live::TimerKind, int) override {}
    [[nodiscard]] bool isAvailable() const override { return false; }
};
struct Asleep final : face::Wake {
    void hold(bool) override {}
};

int complaints = 0;

void complain(QtMsgType type, const QMessageLogContext&, const QString& text) {
    std::fprintf(stderr, "%s\n", qPrintable(text));
    // A build machine without a session has no runtime directory; that is not the face's affair.
    if (type != QtDebugMsg && type != QtInfoMsg &&
        !text.startsWith(QLatin1String("QStandardPaths")))
        ++complaints;
}

struct Size {
    const char* name;
    int width, height;
    double ppi;
};

void shoot(const QString& place, const Size& size, const QString& theme, const QString& language,
           const QString& folder) {
    Silence sound;
    Still haptics;
    Asleep wake;
    SimulatedClock clock{Instant{}};
    const bool rings = place == QLatin1String("call");
    auto door = std::make_unique<face::fixed::FixedDoor>(face::fixed::orchardLunch(rings));
    face::Face shown(std::move(door), clock, {sound, haptics, wake}, {});
    if (!shown.show()) {
        ++complaints;
        return;
    }
    const QSize pixels(size.width, size.height);
    const QImage picture =
        shown.draw({rings ? QStringLiteral("fire") : place, pixels, size.ppi, theme, language});
    if (picture.size() != pixels) ++complaints;
    if (!folder.isEmpty())
        picture.save(QStringLiteral("%1/%2-%3-%4-%5.png")
                         .arg(folder, place, QLatin1String(size.name), theme, language));
}

}  // namespace

int main(int argc, char** argv) {
    qInstallMessageHandler(complain);
    face::Face::prepareApplication();
    QGuiApplication app(argc, argv);
    const QString folder = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    if (!folder.isEmpty()) QDir().mkpath(folder);
    const Size sizes[] = {{"tablet", 1280, 800, 149}, {"phone", 412, 915, 161}};
    int count = 0;
    for (const char* place :
         {"start", "holder", "lead", "fire", "buffet", "sheet", "more", "settings", "parts", "lock",
          "call", "bell", "speed", "record", "measure", "pan", "limit", "serve"})
        for (const auto& size : sizes)
            for (const char* theme : {"noon", "dusk"})
                for (const char* language : {"en", "es"}) {
                    shoot(QLatin1String(place), size, QLatin1String(theme), QLatin1String(language),
                          folder);
                    ++count;
                }
    std::printf("%d pictures, %d complaints\n", count, complaints);
    return complaints == 0 ? 0 : 1;
}
