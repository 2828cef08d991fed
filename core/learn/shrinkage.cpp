#include "learn/shrinkage.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace cinder::learn {

Learned learn(const Prior& prior, std::span<const Observed> events) {
    std::vector<double> values;
    for (const Observed& event : events)
        if (!event.isInterrupted) values.push_back(event.value);
    // Sorted, so that the last bit does not depend on the order of the events.
    std::sort(values.begin(), values.end());
    double sum = 0;
    for (const double value : values)
        sum += value;
    const double before = 1 / (prior.deviation * prior.deviation);
    const double each = 1 / (prior.spread * prior.spread);
    const double precision = before + static_cast<double>(values.size()) * each;
    Learned learned;
    learned.mean = (prior.mean * before + sum * each) / precision;
    learned.deviation = 1 / std::sqrt(precision);
    learned.events = static_cast<std::int32_t>(values.size());
    learned.interrupted = static_cast<std::int32_t>(events.size() - values.size());
    return learned;
}

bool isSuspect(const Prior& prior, double value) {
    return std::abs(value - prior.mean) > 3 * std::hypot(prior.deviation, prior.spread);
}

}  // namespace cinder::learn
