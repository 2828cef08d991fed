#include "service/pace.h"

#include <algorithm>
#include <cmath>

namespace cinder::service {

namespace {

/// The tenth on either side. Source: normal distribution, from memory.
constexpr double kTenth = 1.2816;

double millis(Duration length) {
    return static_cast<double>(length.count());
}

Duration rounded(double ms) {
    return Duration{static_cast<Duration::rep>(std::llround(ms))};
}

}  // namespace

Pace::Pace(const PacePlan& plan, std::vector<Count> counts, std::optional<Instant> last)
    : last_(last), guests_(plan.guests), through_(millis(plan.through)) {
    std::sort(counts.begin(), counts.end(), [](const Count& a, const Count& b) {
        return a.at != b.at ? a.at < b.at : a.guests < b.guests;
    });
    for (const Count& count : counts)
        if (counts_.empty() || count.guests > counts_.back().guests) counts_.push_back(count);
    isCounted_ = !counts_.empty();
    const double prior = std::max(1.0, millis(plan.each));
    if (counts_.empty() || counts_.front().guests > 0) {
        // Nobody said when the first guest stepped up: the plan's opening, or what the first count
        // would make of it.
        Instant opens = plan.opens;
        if (isCounted_) {
            const double taken = through_ + prior * counts_.front().guests;
            opens = std::max(opens, counts_.front().at - rounded(taken));
            opens = std::min(opens, counts_.front().at);
        }
        counts_.insert(counts_.begin(), {0, opens});
    }
    const Count& latest = counts_.back();
    guests_ = std::max(guests_, latest.guests);
    if (last_ && latest.guests < guests_ && *last_ >= latest.at) guests_ = latest.guests;
    const double time = std::max(0.0, millis(latest.at - counts_.front().at) - through_);
    if (latest.guests > 0) {
        each_ = (kPriorGuests * prior + time) / (kPriorGuests + latest.guests);
        weight_ = kPriorGuests + latest.guests;
    } else {
        each_ = prior;
    }
    each_ = std::max(1.0, each_);
}

double Pace::guestsAt(Instant at) const {
    if (at <= counts_.front().at) return 0;
    for (std::size_t i = 1; i < counts_.size(); ++i) {
        if (at > counts_[i].at) continue;
        const double span = millis(counts_[i].at - counts_[i - 1].at);
        const double part = span > 0 ? millis(at - counts_[i - 1].at) / span : 1.0;
        return counts_[i - 1].guests + part * (counts_[i].guests - counts_[i - 1].guests);
    }
    const Count& latest = counts_.back();
    double since = millis(at - latest.at);
    if (latest.guests == 0) since -= through_;
    if (last_ && at >= *last_) return guests_;
    return std::clamp(latest.guests + since / each_, static_cast<double>(latest.guests),
                      static_cast<double>(guests_));
}

Instant Pace::instantOf(double guests) const {
    for (std::size_t i = 1; i < counts_.size(); ++i) {
        if (guests > counts_[i].guests) continue;
        const double span = counts_[i].guests - counts_[i - 1].guests;
        const double part = (guests - counts_[i - 1].guests) / span;
        return counts_[i - 1].at +
               rounded(std::max(0.0, part) * millis(counts_[i].at - counts_[i - 1].at));
    }
    const Count& latest = counts_.back();
    const double lead = latest.guests == 0 ? through_ : 0;
    return latest.at + rounded(lead + (guests - latest.guests) * each_);
}

Duration Pace::doubt(double guests) const {
    // Predictive variance of the sum of n exponential gaps whose rate is gamma with weight k.
    return rounded(each_ * std::sqrt(guests + guests * guests / weight_));
}

Pace::End Pace::end() const {
    if (last_) return {*last_, *last_, *last_};
    const Instant usual = instantOf(guests_);
    const double left = guests_ - counts_.back().guests;
    const Duration edge = rounded(kTenth * millis(doubt(left)));
    return {std::max(counts_.back().at, usual - edge), usual, usual + edge};
}

}  // namespace cinder::service
