/// Renders every board and page from a day that stands still, in both sizes, themes and languages.
/// Usage:
///   cinder_pictures                 only looks; fails on any QML warning
///   cinder_pictures FOLDER          writes the pictures there
///   cinder_pictures --eyes FOLDER   the same as seen by eyes that lack one kind of cone, three a
///                                   picture: no red, no green, no blue; English, tablet
///   cinder_pictures --compare FOLDER [OUT]   fails where one no longer looks like the approved one
///                                   of FOLDER; writes the new one into OUT
///   cinder_pictures --approve FOLDER   after looking at them all: these are right from now on

#include <cstdio>
#include <string_view>
#include <utility>

#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QQuickWindow>

#include "eyes.h"
#include "face.h"
#include "likeness.h"
#include "places.h"
#include "stage.h"

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

enum class Errand { Look, Write, Eyes, Compare, Approve };

struct Order {
    Errand errand = Errand::Look;
    QString folder;
    QString out;
};

Order orderOf(const QStringList& words) {
    if (words.value(1) == QLatin1String("--compare"))
        return {Errand::Compare, words.value(2), words.value(3)};
    if (words.value(1) == QLatin1String("--approve")) return {Errand::Approve, words.value(2), {}};
    if (words.value(1) == QLatin1String("--eyes")) return {Errand::Eyes, words.value(2), {}};
    return words.size() > 1 ? Order{Errand::Write, words[1], {}} : Order{};
}

// A word that is set anew is about a two-thousandth of a board; a plate that is gone, a fiftieth.
constexpr double kMostUnlike = 0.004;

void compare(const QImage& picture, const QString& name, const Order& order) {
    const QImage approved(QStringLiteral("%1/%2").arg(order.folder, name));
    const double unlike =
        face::unlikeness(face::reduced(picture), approved.convertToFormat(QImage::Format_RGB888));
    if (unlike <= kMostUnlike) return;
    std::fprintf(stderr, "%s: %.2f %% of it looks unlike the approved picture%s\n",
                 qPrintable(name), 100 * unlike, approved.isNull() ? ", which is not there" : "");
    if (!order.out.isEmpty()) picture.save(QStringLiteral("%1/%2").arg(order.out, name));
    ++complaints;
}

void writeAsSeen(const QImage& picture, const QString& file) {
    using face::Eyes;
    const std::pair<Eyes, const char*> kinds[] = {
        {Eyes::Protan, "protan"}, {Eyes::Deutan, "deutan"}, {Eyes::Tritan, "tritan"}};
    for (const auto& [eyes, name] : kinds) {
        QString seen = file;
        seen.replace(QStringLiteral(".png"), QStringLiteral("-%1.png").arg(QLatin1String(name)));
        face::seenBy(eyes, picture).save(seen);
    }
}

void fulfil(const QImage& picture, const QString& name, const Order& order) {
    const QString file = QStringLiteral("%1/%2").arg(order.folder, name);
    switch (order.errand) {
        case Errand::Look:
            return;
        case Errand::Write:
            picture.save(file);
            return;
        case Errand::Eyes:
            writeAsSeen(picture, file);
            return;
        case Errand::Compare:
            compare(picture, name, order);
            return;
        case Errand::Approve:
            face::reduced(picture).save(file, "PNG", 0);
            return;
    }
}

void shoot(const QString& place, const Size& size, const QString& theme, const QString& language,
           const Order& order) {
    Silence sound;
    Still haptics;
    Asleep wake;
    SimulatedClock clock{Instant{}};
    const auto others = face::scene::crewDevicesOf(place);
    face::Face shown(face::scene::doorOf(place), clock,
                     {sound, haptics, wake, nullptr, nullptr, others.get()}, {});
    if (!shown.show()) {
        ++complaints;
        return;
    }
    const QSize pixels(size.width, size.height);
    face::scene::prepare(shown, place);
    const QImage picture =
        shown.draw({face::scene::boardOf(place), pixels, size.ppi, theme, language});
    if (picture.size() != pixels) ++complaints;
    QString name =
        QStringLiteral("%1-%2-%3-%4.png").arg(place, QLatin1String(size.name), theme, language);
    name.replace(u'/', u'-').replace(u':', u'-');
    fulfil(picture, name, order);
}

}  // namespace

int main(int argc, char** argv) {
    qInstallMessageHandler(complain);
    face::Face::prepareApplication();
    QGuiApplication app(argc, argv);
    const Order order = orderOf(QGuiApplication::arguments());
    for (const QString& folder : {order.folder, order.out})
        if (!folder.isEmpty()) QDir().mkpath(folder);
    const Size sizes[] = {{"tablet", 1280, 800, 149}, {"phone", 412, 915, 161}};
    int count = 0;
    for (const char* place : face::scene::kPlaces)
        for (const auto& size : sizes)
            for (const char* theme : {"noon", "dusk"})
                for (const char* language : {"en", "es"}) {
                    if (order.errand == Errand::Eyes &&
                        (size.width < size.height || language != std::string_view("en")))
                        continue;
                    shoot(QLatin1String(place), size, QLatin1String(theme), QLatin1String(language),
                          order);
                    ++count;
                }
    std::printf("%d pictures, %d complaints\n", count, complaints);
    return complaints == 0 ? 0 : 1;
}
