/// Writes every sheet of an event into a folder, on both papers and in both languages:
/// print_sheets EVENT FOLDER FONTS

#include <QFile>
#include <QFontDatabase>
#include <QGuiApplication>

#include "app/from_plan.h"
#include "event/json.h"
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
        const auto made = plan::makePlan(*problem, {{2000, std::nullopt}, 1, nullptr, nullptr});
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
    const auto event = event::parse(file.readAll().toStdString());
    if (!event) return 3;
    const auto faces = loadFaces(QString::fromLocal8Bit(argv[3]));
    for (const char* language : {"en", "es"}) {
        report::Style style;
        style.language = language;
        for (const Sheet& sheet : sheets(*event, style)) {
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
