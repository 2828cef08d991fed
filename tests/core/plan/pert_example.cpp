#include "pert_example.h"

#include <algorithm>
#include <string>

namespace cinder::plan::test {

namespace {

struct Activity {
    const char* before;
    double low;
    double usual;
    double high;
};

constexpr std::array<Activity, 14> kActivities{{{"", 1, 2, 3},
                                                {"A", 2, 3.5, 8},
                                                {"B", 6, 9, 18},
                                                {"C", 4, 5.5, 10},
                                                {"C", 1, 4.5, 5},
                                                {"E", 4, 4, 10},
                                                {"D", 5, 6.5, 11},
                                                {"EG", 5, 8, 17},
                                                {"C", 3, 7.5, 9},
                                                {"FI", 3, 9, 9},
                                                {"J", 4, 4, 4},
                                                {"J", 1, 5.5, 7},
                                                {"H", 1, 2, 3},
                                                {"KL", 5, 5.5, 9}}};

}  // namespace

PertExample::PertExample() : problem(emptyKitchen(0)) {
    const auto span = [this](double weeks) {
        return HalfMinutes{static_cast<std::int32_t>(weeks * week.count())};
    };
    for (std::size_t i = 0; i < kActivities.size(); ++i) {
        const Activity& activity = kActivities[i];
        Task task = standing(std::string(1, static_cast<char>('A' + i)), span(activity.usual));
        task.duration = {span(activity.low), span(activity.usual), span(activity.high)};
        problem.tasks.push_back(task);
        FromBell start{0};
        for (const char* name = activity.before; *name != 0; ++name) {
            problem.links.push_back(after(*name - 'A', static_cast<TaskIndex>(i)));
            start = std::max(start, schedule.tasks[static_cast<std::size_t>(*name - 'A')].finish);
        }
        schedule.tasks.push_back({start, start + task.duration.usual, {}});
        means.push_back((Duration{task.duration.low} + 4 * Duration{task.duration.usual} +
                         Duration{task.duration.high}) /
                        6);
    }
}

}  // namespace cinder::plan::test
