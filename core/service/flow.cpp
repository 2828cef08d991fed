#include "service/flow.h"

#include <algorithm>
#include <cmath>

namespace cinder::service {

namespace {

double millis(Duration length) {
    return static_cast<double>(length.count());
}

/// The value below which `part` of the sorted list lies.
Duration quantile(const std::vector<Duration>& sorted, double part) {
    const auto last = static_cast<double>(sorted.size() - 1);
    return sorted[static_cast<std::size_t>(std::lround(last * part))];
}

/// Adds up services.
class Gathering {
  public:
    Gathering(const Buffet& buffet, std::int32_t guests)
        : buffet_(buffet),
          pools_(poolsOf(buffet)),
          guests_(guests),
          load_(buffet.stops.size(), 0.0) {}

    void add(const Service& service) {
        lengths_.push_back(service.length);
        Duration longest{0};
        for (const Pass& pass : service.guests) {
            const Duration wait = pass.started - pass.joined;
            waits_ += millis(wait);
            longest = std::max(longest, wait);
            count(pass.joined, 1.0);
            count(pass.started, -1.0);
        }
        longest_.push_back(longest);
        if (service.length <= Duration{0}) return;
        for (std::size_t stop = 0; stop < load_.size(); ++stop)
            load_[pools_[stop]] +=
                millis(service.busy[stop]) / millis(service.length) / placesAt(buffet_, stop);
    }

    Flow flow() {
        const auto services = static_cast<double>(lengths_.size());
        std::sort(lengths_.begin(), lengths_.end());
        std::sort(longest_.begin(), longest_.end());
        Flow flow;
        flow.usual = quantile(lengths_, 0.5);
        flow.early = quantile(lengths_, 0.1);
        flow.late = quantile(lengths_, 0.9);
        flow.longestWait = quantile(longest_, 0.5);
        flow.meanWait = Duration{
            static_cast<Duration::rep>(waits_ / (services * static_cast<double>(guests_)))};
        double standing = 0;
        for (const double change : changes_) {
            standing += change;
            // What is left of a sum that should be nothing is the noise of adding.
            flow.queue.push_back(std::max(0.0, standing) < 1e-9 ? 0.0 : standing / services);
        }
        for (double& load : load_)
            load /= services;
        for (std::size_t stop = 0; stop < load_.size(); ++stop)
            load_[stop] = load_[pools_[stop]];
        flow.load = load_;
        if (!load_.empty())
            flow.bottleneck = static_cast<std::size_t>(
                std::max_element(load_.begin(), load_.end()) - load_.begin());
        return flow;
    }

  private:
    /// A guest who comes or goes is seen at the next point of the grid.
    void count(Duration at, double change) {
        const auto point = static_cast<std::size_t>((at + kQueueEvery - Duration{1}) / kQueueEvery);
        if (changes_.size() <= point) changes_.resize(point + 1, 0.0);
        changes_[point] += change;
    }

    const Buffet& buffet_;
    std::vector<std::size_t> pools_;
    std::int32_t guests_;
    std::vector<double> load_;
    std::vector<double> changes_;
    std::vector<Duration> lengths_;
    std::vector<Duration> longest_;
    double waits_ = 0;
};

}  // namespace

std::int32_t placesAt(const Buffet& buffet, std::size_t stop) {
    const std::int32_t servers = buffet.stops[stop].servers;
    return servers > 0 ? servers : std::max(1, buffet.sides);
}

Flow flowOf(const Buffet& buffet, const Crowd& crowd, std::uint64_t seed, std::int32_t services) {
    if (crowd.guests <= 0 || buffet.stops.empty() || services <= 0) return {};
    Gathering gathering(buffet, crowd.guests);
    for (std::int32_t i = 0; i < services; ++i)
        gathering.add(playService(buffet, crowd, seed + static_cast<std::uint64_t>(i)));
    return gathering.flow();
}

}  // namespace cinder::service
