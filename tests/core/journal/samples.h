#pragma once

/// Operations of an invented day, and a folder that goes away with the test.

#include <filesystem>
#include <random>
#include <string>
#include <vector>

#include "journal/operation.h"

namespace samples {

using namespace cinder;
using namespace cinder::journal;

inline Instant at(int second) {
    return Instant{std::chrono::seconds{1'821'000'000 + second}};
}

inline Operation operation(std::uint64_t sequence, Body body, std::string device = "tablet") {
    Operation op;
    op.event = EventId{"orchard"};
    op.id = {DeviceId{std::move(device)}, sequence};
    op.stamp = {at(static_cast<int>(sequence)), 0};
    op.person = PersonId{"nora"};
    op.body = std::move(body);
    return op;
}

/// One of every kind.
inline std::vector<Body> everyKind() {
    const TaskId lamb{"lamb/cook/1"};
    return {EventDescribed{R"({"name":"Gr\u00fc\u00dfe, \"orchard\""})"},
            PlanPublished{"{}"},
            TaskStarted{lamb, at(1)},
            TaskFinished{lamb, at(2)},
            TaskSkipped{lamb, at(3)},
            LineTicked{lamb, 4, at(5)},
            Turned{lamb, 3, at(6)},
            ServeTimeMoved{at(7), at(8)},
            AlarmAcknowledged{"turn:lamb/cook/1:3", at(9)},
            TemperatureRead{lamb, 57250, at(10)},
            RehearsalSet{{at(11), at(12), 60}},
            Undone{{DeviceId{"phone"}, 7}},
            Unknown{"of-a-later-year", "{\"anything\": [1, 2]}"}};
}

class Folder {
  public:
    Folder() {
        std::random_device seed;
        path_ = std::filesystem::temp_directory_path() /
                ("cinderbell-test-" + std::to_string(seed()) + std::to_string(seed()));
        std::filesystem::create_directories(path_);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    [[nodiscard]] std::filesystem::path file(const char* name) const { return path_ / name; }

  private:
    std::filesystem::path path_;
};

}  // namespace samples
