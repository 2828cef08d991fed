#pragma once

/// The demo events, a store in a folder of its own, and a clock that moves when told to.

#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "../journal/samples.h"
#include "app/rehearsal_crew.h"
#include "app/session.h"
#include "journal/sqlite/sqlite_store.h"

namespace samples {

inline std::string demo(const char* name) {
    std::ifstream file(std::string(CINDER_SOURCE) + "/demo-data/" + name);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

inline std::string orchard() {
    return demo("orchard-harvest-lunch.json");
}

/// A device that can be switched off and on again.
class Device {
  public:
    explicit Device(Instant start) : clock(start) { restart(); }

    void restart() {
        session.reset();
        store.reset();
        store = journal::SqliteStore::open(folder.file("day.journal")).value();
        session = std::make_unique<app::Session>(*store, clock);
    }

    Folder folder;
    SimulatedClock clock;
    std::unique_ptr<journal::SqliteStore> store;
    std::unique_ptr<app::Session> session;
};

}  // namespace samples
