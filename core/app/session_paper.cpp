// The sheets of the open event (session.h).

#include <algorithm>

#include "app/session.h"
#include "app/session_state.h"
#include "live/food_day.h"
#include "live/progress.h"
#include "report/record_sheet.h"
#include "report/sheets.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;

const char* wordOf(Sheet sheet) {
    switch (sheet) {
        case Sheet::Purchase:
            return "purchase";
        case Sheet::Pack:
            return "pack";
        case Sheet::Kitchen:
            return "kitchen";
        case Sheet::Run:
            return "run-sheet";
        case Sheet::Buffet:
            return "buffet";
        case Sheet::Cards:
            return "cards";
        case Sheet::Record:
            break;
    }
    return "record";
}

/// An id may hold what a file name may not.
std::string stemOf(const EventId& event, Sheet sheet, const report::Style& style) {
    std::string stem = event.text() + "-" + wordOf(sheet) + "-" + style.language;
    for (char& letter : stem) {
        const bool isPlain = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                             (letter >= '0' && letter <= '9') || letter == '.' || letter == '-' ||
                             letter == '_';
        if (!isPlain) letter = '_';
    }
    return stem;
}

/// What nobody will put out has no card …
event::Event withoutLeftOut(const live::Day& day, event::Event event) {
    std::erase_if(event.menu,
                  [&](const event::Dish& dish) { return day.leftOut.contains(dish.id); });
    return event;
}

/// … and no place on the line; the others keep theirs, for they may stand there already.
quantity::Reckoning withoutLeftOut(const live::Day& day, quantity::Reckoning all) {
    std::erase_if(all.line.stands,
                  [&](const quantity::Stand& stand) { return day.leftOut.contains(stand.dish); });
    std::erase_if(all.line.waiting, [&](const DishId& dish) { return day.leftOut.contains(dish); });
    return all;
}

}  // namespace

Result<Paper, Refusal> Session::paper(Sheet sheet, const report::Style& style) {
    const auto reckoned = state_->reckon();
    if (!reckoned) return refuse(Why::NoEvent);
    const live::Day& day = state_->open->day;
    const bool needsPlan = sheet == Sheet::Run || sheet == Sheet::Record;
    if (needsPlan && !day.sheet) return refuse(Why::NoPlan);
    Paper paper{stemOf(*state_->event, sheet, style), {}, {}};
    const event::Event& event = reckoned->event;
    switch (sheet) {
        case Sheet::Purchase:
            paper.document = report::purchaseList(event, reckoned->all, style);
            break;
        case Sheet::Pack:
            paper.document = report::packSheet(event, reckoned->all, style);
            paper.tables.push_back(report::packTable(reckoned->all, style));
            break;
        case Sheet::Kitchen:
            paper.document = report::kitchenSheet(event, reckoned->all, style);
            break;
        case Sheet::Run:
            paper.document =
                report::runSheet(event, *day.sheet, style, live::skippedIn(day, *day.sheet));
            break;
        case Sheet::Buffet:
            paper.document = report::buffetPlan(event, withoutLeftOut(day, reckoned->all), style);
            break;
        case Sheet::Cards:
            paper.document = report::dishCards(withoutLeftOut(day, event), style);
            break;
        case Sheet::Record:
            paper.document = report::recordSheet(day, live::foodPlans(day, state_->outlook()),
                                                 state_->now(), style);
            paper.tables.push_back(report::recordTable(day));
            break;
    }
    if (paper.tables.empty())
        for (const report::Table* table : report::tablesOf(paper.document))
            paper.tables.push_back(*table);
    return paper;
}

}  // namespace cinder::app
