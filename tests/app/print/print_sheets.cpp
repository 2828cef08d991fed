/// Writes every sheet of an event into a folder, on both papers and in both languages, with the
/// food-safety record of a day on which something was read out of limit and corrected:
/// print_sheets EVENT FOLDER FONTS

#include <algorithm>
#include <iostream>

#include <QFile>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QTemporaryDir>

#include "app/from_plan.h"
#include "app/session.h"
#include "event/json.h"
#include "journal/sqlite/sqlite_store.h"
#include "plan/build/build.h"
#include "plan/planner.h"
#include "print/pdf.h"
#include "quantity/build/reckon.h"
#include "report/sheets.h"

namespace {

using namespace cinder;

struct Sheet {
    const char* name;
    report::Document document;
};

std::vector<Sheet> sheets(const event::Event& event, const report::Style& style) {
    quantity::FromPlan fromPlan;
    std::vector<Sheet> all;
    const auto problem = plan::build(event);
    if (problem) {
        const auto made = plan::makePlan(*problem, {{2000, std::nullopt}});
        if (made) {
            fromPlan = app::fromPlan(event, *problem, made->schedule);
            all.push_back({"run", report::runSheet(
                                      event, {*problem, made->schedule, event.serve.at}, style)});
        }
    }
    const auto reckoned = quantity::reckon(event, fromPlan);
    all.push_back({"purchase", report::purchaseList(event, reckoned, style)});
    all.push_back({"pack", report::packSheet(event, reckoned, style)});
    all.push_back({"kitchen", report::kitchenSheet(event, reckoned, style)});
    all.push_back({"buffet", report::buffetPlan(event, reckoned, style)});
    all.push_back({"cards", report::dishCards(event, style)});
    all.push_back({"quantities", report::quantitySheet(event, reckoned, style)});
    return all;
}

/// The day of the record: everybody has arrived, and one hot pan is too cold, was misread, and goes
/// into the bin.
class PlayedDay {
  public:
    explicit PlayedDay(const std::string& document, Instant serve)
        : clock_(serve - std::chrono::hours{8}),
          store_(journal::SqliteStore::open(
                     folder_.filePath(QStringLiteral("day.journal")).toStdString())
                     .value()),
          session_(*store_, clock_) {
        isPlayed_ = session_.importEvent(document) && play();
    }
    /// Nothing when the day could not be played.
    [[nodiscard]] std::optional<report::Document> record(const report::Style& style) {
        if (!isPlayed_) return std::nullopt;
        auto paper = session_.paper(app::Sheet::Record, style);
        if (!paper) return std::nullopt;
        return std::move(paper->document);
    }

  private:
    bool play() {
        using safety::Purpose;
        clock_.advance(session_.look()->arrival - clock_.wall());
        // A name with no place to break a line at, as somebody may well write on a handle.
        const safety::ThermometerId probe{"thermometer-of-the-second-hot-box"};
        const auto checks = session_.look()->food.checks;
        const auto hot = std::find_if(checks.begin(), checks.end(), [](const auto& check) {
            return check.purpose == Purpose::HoldHot && !check.missing.empty();
        });
        if (hot == checks.end()) return false;
        const safety::Pan pan = hot->missing.front();
        if (!session_.testThermometer(probe, safety::inCelsius(0.5)) ||
            !session_.measureFood(pan, Purpose::HoldHot, safety::inCelsius(40), probe))
            return false;
        const auto open = [&] {
            for (const auto& card : session_.look()->food.pans)
                if (card.pan == pan && !card.standing.open.empty())
                    return std::optional(card.standing.open.front().entry);
            return std::optional<safety::EntryId>();
        };
        const auto misread = open();
        if (!misread || !session_.correctFood(*misread, safety::inCelsius(45), "read upside down"))
            return false;
        const auto left = open();
        return left && session_.takeAction(*left, safety::Action::Discard) &&
               session_.signRecord("Inés Robledo", "CFPM 12");
    }

    QTemporaryDir folder_;
    SimulatedClock clock_;
    std::unique_ptr<journal::SqliteStore> store_;
    app::Session session_;
    bool isPlayed_ = false;
};

platform::Faces loadFaces(const QString& folder) {
    platform::Faces faces;
    const auto load = [&](const char* file, QString& family) {
        const int id =
            QFontDatabase::addApplicationFont(folder + QLatin1Char('/') + QLatin1String(file));
        const auto families = QFontDatabase::applicationFontFamilies(id);
        if (!families.isEmpty()) family = families.back();
    };
    load("Lato-Medium.ttf", faces.text);
    load("Lato-Heavy.ttf", faces.strong);
    return faces;
}

}  // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    if (argc != 4) return 2;
    QFile file(QString::fromLocal8Bit(argv[1]));
    if (!file.open(QIODevice::ReadOnly)) return 3;
    const std::string document = file.readAll().toStdString();
    const auto event = event::parse(document);
    if (!event) return 3;
    PlayedDay played(document, event->serve.at);
    const auto faces = loadFaces(QString::fromLocal8Bit(argv[3]));
    for (const char* language : {"en", "es"}) {
        report::Style style;
        style.language = language;
        auto all = sheets(*event, style);
        auto record = played.record(style);
        if (!record) {
            std::cerr << "the day of the record could not be played\n";
            return 5;
        }
        all.push_back({"record", *std::move(record)});
        for (const Sheet& sheet : all) {
            for (const bool isLetter : {true, false}) {
                QFile out(QStringLiteral("%1/%2-%3-%4.pdf")
                              .arg(QString::fromLocal8Bit(argv[2]), QLatin1String(sheet.name),
                                   QLatin1String(language),
                                   QLatin1String(isLetter ? "letter" : "a4")));
                if (!out.open(QIODevice::WriteOnly)) return 4;
                out.write(platform::pdf(sheet.document,
                                        isLetter ? platform::Paper::Letter : platform::Paper::A4,
                                        faces));
            }
        }
    }
    return 0;
}
