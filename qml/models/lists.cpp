#include "lists.h"

#include "day.h"
#include "settings.h"

namespace cinder::face {

Lists::Lists(ListsDoor& door, Day& day, const Settings& settings, Printer* printer, QObject* parent)
    : QObject(parent),
      door_(door),
      figures_(door, day, settings),
      load_(door, day, settings),
      line_(door, day, settings),
      papers_(door, settings, printer) {
    connect(&settings, &Settings::changed, this, [this] { retell(); });
    connect(&day, &Day::touched, this, [this] { beat(); });
}

void Lists::beat() {
    auto lists = door_.lists();
    if (lists == seen_) return;
    seen_ = std::move(lists);
    retell();
}

void Lists::retell() {
    figures_.show(seen_);
    load_.show(seen_);
    line_.show(seen_);
    papers_.retell();
}

}  // namespace cinder::face
