#include "psplib.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <map>
#include <sstream>

namespace cinder::plan::bench {

namespace {

namespace fs = std::filesystem;

Task plainTask(std::size_t number, int duration) {
    Task task;
    task.id = TaskId(std::to_string(number));
    const HalfMinutes length{duration};
    task.duration = {length, length, length};
    task.latestFinish = FromBell{0};
    return task;
}

Problem plainProblem() {
    Problem problem;
    problem.stations.push_back({StationId("site"), LocalText("Site")});
    problem.walk = {{HalfMinutes{0}}};
    return problem;
}

void addUses(Task& task, std::istream& in, std::size_t resources) {
    for (std::size_t r = 0; r < resources; ++r) {
        int units = 0;
        in >> units;
        if (units > 0) task.uses.push_back({static_cast<ResourceIndex>(r), units});
    }
}

void addResources(Problem& problem, std::istream& in, std::size_t resources) {
    for (std::size_t r = 0; r < resources; ++r) {
        Resource resource;
        resource.id = ResourceId(std::to_string(r + 1));
        in >> resource.capacity;
        problem.resources.push_back(resource);
    }
}

/// The value after the colon of the first line that starts with `label`.
std::optional<int> labelled(const std::string& text, const std::string& label) {
    const auto at = text.find(label);
    if (at == std::string::npos) return std::nullopt;
    return std::atoi(text.c_str() + text.find(':', at) + 1);
}

/// What follows the line that holds `heading`.
std::istringstream after(const std::string& text, const std::string& heading, int lines) {
    auto at = text.find(heading);
    for (int k = 0; k < lines && at != std::string::npos; ++k)
        at = text.find('\n', at + 1);
    return std::istringstream(at == std::string::npos ? "" : text.substr(at + 1));
}

std::string readAll(const fs::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

/// The makespan with no limit on resources: the longest chain of links.
std::int32_t longestChain(const Problem& problem) {
    std::vector<std::int32_t> start(problem.tasks.size(), 0);
    std::int32_t longest = 0;
    for (std::size_t round = 0; round <= problem.tasks.size(); ++round)
        for (const Link& link : problem.links) {
            const auto from = static_cast<std::size_t>(link.from);
            const auto to = static_cast<std::size_t>(link.to);
            const auto length =
                link.fromEnd == End::Finish ? problem.tasks[from].duration.usual.count() : 0;
            start[to] = std::max(start[to], start[from] + length + link.minLag.count());
        }
    for (std::size_t i = 0; i < start.size(); ++i)
        longest = std::max(longest, start[i] + problem.tasks[i].duration.usual.count());
    return longest;
}

fs::path unpack(const fs::path& shared, const std::string& archive) {
    const fs::path source = shared / "datasets" / "psplib" / (archive + ".tar.xz");
    if (!fs::exists(source)) return {};
    const fs::path target = fs::temp_directory_path() / ("cinderbell-psplib-" + archive);
    if (fs::exists(target / "complete")) return target;
    fs::create_directories(target);
    const std::string command = "tar -xf '" + source.string() + "' -C '" + target.string() + "'";
    if (std::system(command.c_str()) != 0) return {};
    std::ofstream(target / "complete") << "unpacked\n";
    return target;
}

void readBounds(const fs::path& shared, const std::string& set,
                std::map<std::string, Instance>& in) {
    std::ifstream csv(shared / "datasets" / "psplib" / "bounds.csv");
    std::string line;
    while (std::getline(csv, line)) {
        std::stringstream row(line);
        std::string cell;
        std::vector<std::string> cells;
        while (std::getline(row, cell, ','))
            cells.push_back(cell);
        if (cells.size() < 5 || cells[0] != set) continue;
        const auto found = in.find(cells[1]);
        if (found == in.end()) continue;
        found->second.criticalPath = std::atoi(cells[2].c_str());
        found->second.lower = std::atoi(cells[3].c_str());
        found->second.upper = std::atoi(cells[4].c_str());
    }
}

void readOptima(const fs::path& folder, std::map<std::string, Instance>& in) {
    std::ifstream csv(folder / "optimum" / "optimum.csv");
    std::string line;
    while (std::getline(csv, line)) {
        const auto comma = line.find(',');
        if (comma == std::string::npos) continue;
        const auto found = in.find(line.substr(0, comma));
        if (found == in.end()) continue;
        const std::string value = line.substr(comma + 1);
        if (value.rfind("unsat", 0) == 0) {
            found->second.isInfeasible = true;
            continue;
        }
        const auto dots = value.find("..");
        found->second.lower = std::atoi(value.c_str());
        found->second.upper =
            dots == std::string::npos ? found->second.lower : std::atoi(value.c_str() + dots + 2);
    }
}

}  // namespace

std::optional<Problem> readSm(const fs::path& file) {
    const std::string text = readAll(file);
    const auto jobs = labelled(text, "jobs (incl.");
    const auto renewable = labelled(text, "- renewable");
    if (!jobs || !renewable) return std::nullopt;
    Problem problem = plainProblem();
    auto in = after(text, "REQUESTS/DURATIONS", 3);
    for (int j = 0; j < *jobs; ++j) {
        int number = 0;
        int mode = 0;
        int duration = 0;
        in >> number >> mode >> duration;
        problem.tasks.push_back(plainTask(static_cast<std::size_t>(number), duration));
        addUses(problem.tasks.back(), in, static_cast<std::size_t>(*renewable));
    }
    in = after(text, "PRECEDENCE RELATIONS", 2);
    for (int j = 0; j < *jobs; ++j) {
        int number = 0;
        int modes = 0;
        int count = 0;
        in >> number >> modes >> count;
        for (int k = 0; k < count; ++k) {
            int successor = 0;
            in >> successor;
            problem.links.push_back(
                {number - 1, successor - 1, End::Finish, End::Start, HalfMinutes{0}, std::nullopt});
        }
    }
    in = after(text, "RESOURCEAVAILABILITIES", 2);
    addResources(problem, in, static_cast<std::size_t>(*renewable));
    return problem;
}

std::optional<Problem> readSch(const fs::path& file) {
    std::ifstream in(file);
    int activities = 0;
    std::size_t resources = 0;
    int skipped = 0;
    if (!(in >> activities >> resources >> skipped >> skipped)) return std::nullopt;
    Problem problem = plainProblem();
    for (int j = 0; j < activities + 2; ++j) {
        int number = 0;
        int modes = 0;
        int count = 0;
        in >> number >> modes >> count;
        std::vector<int> to(static_cast<std::size_t>(count));
        for (int& other : to)
            in >> other;
        for (const int other : to) {
            char bracket = 0;
            int lag = 0;
            in >> bracket >> lag >> bracket;
            problem.links.push_back(
                {number, other, End::Start, End::Start, HalfMinutes{lag}, std::nullopt});
        }
    }
    for (int j = 0; j < activities + 2; ++j) {
        int number = 0;
        int mode = 0;
        int duration = 0;
        in >> number >> mode >> duration;
        problem.tasks.push_back(plainTask(static_cast<std::size_t>(number), duration));
        addUses(problem.tasks.back(), in, resources);
    }
    addResources(problem, in, resources);
    if (!in) return std::nullopt;
    return problem;
}

std::vector<Instance> readSet(const fs::path& shared, const std::string& set) {
    const bool isClassic = set.front() == 'j';
    const fs::path unpacked = unpack(shared, isClassic ? set : "rcpsp_max");
    if (unpacked.empty()) {
        std::cout << "skipped " << set << ": no data under " << shared << "\n";
        return {};
    }
    const fs::path folder = isClassic ? unpacked : unpacked / set;
    std::map<std::string, Instance> byName;
    for (const auto& entry : fs::directory_iterator(folder)) {
        std::string ending = entry.path().extension().string();
        std::transform(ending.begin(), ending.end(), ending.begin(),
                       [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        if (ending != (isClassic ? ".sm" : ".sch")) continue;
        auto problem = isClassic ? readSm(entry.path()) : readSch(entry.path());
        if (!problem) continue;
        Instance instance;
        instance.name = entry.path().filename().string();
        instance.problem = std::move(*problem);
        instance.criticalPath = longestChain(instance.problem);
        byName.emplace(instance.name, std::move(instance));
    }
    if (isClassic)
        readBounds(shared, set, byName);
    else
        readOptima(folder, byName);
    std::vector<Instance> result;
    for (auto& [name, instance] : byName)
        result.push_back(std::move(instance));
    return result;
}

}  // namespace cinder::plan::bench
