#include "safety/history.h"

#include <algorithm>
#include <cmath>

#include "safety/thermometer.h"

namespace cinder::safety {

namespace {

/// Puts one history together.
class Gathering {
  public:
    Gathering(const Pan& pan, std::span<const Entry> entries, Instant now) : pan_(pan), now_(now) {
        for (const Entry& entry : entries)
            if (!entry.isTakenBack && instantOf(entry.fact) <= now) counting_.push_back(&entry);
        std::sort(counting_.begin(), counting_.end(), [](const Entry* a, const Entry* b) {
            const Instant first = instantOf(a->fact);
            const Instant second = instantOf(b->fact);
            return first != second ? first < second : a->id < b->id;
        });
        for (const Entry* entry : counting_)
            byId_.emplace(entry->id, entry);
        for (const Entry* entry : counting_)
            if (isOwn(*entry)) {
                ownSince_ = instantOf(entry->fact);
                break;
            }
    }

    History run() {
        for (const Entry* entry : counting_) {
            entry_ = entry;
            std::visit(*this, entry->fact);
        }
        std::stable_sort(history_.moments.begin(), history_.moments.end(),
                         [](const Moment& a, const Moment& b) {
                             return a.at != b.at ? a.at < b.at : a.entry < b.entry;
                         });
        return std::move(history_);
    }

    void operator()(const FoodMeasured& o) {
        if (!concerns(o.pan)) return;
        const Entry* root = rootOf(*entry_);
        if (!root) return;  // corrects something nobody has: speaks for nothing
        const auto& first = std::get<FoodMeasured>(root->fact);
        if (first.pan != o.pan) return;
        const auto known = measuredAt_.find(root->id);
        if (known == measuredAt_.end()) {
            Measured measured{
                root->id,      first.at,
                first.purpose, {o.reading},
                o.held,        isTrusted(o.thermometer, o.at) && speaksFor(o.pan, first.at)};
            measuredAt_.emplace(root->id, history_.moments.size());
            history_.moments.push_back({first.at, root->id, std::move(measured)});
            return;
        }
        auto& measured = std::get<Measured>(history_.moments[known->second].step);
        measured.values.push_back(o.reading);
        measured.isTrusted = measured.isTrusted && isTrusted(o.thermometer, o.at);
        // Watched for the shorter of two times; not at all when one of them was not watched.
        measured.held = o.held && measured.held ? std::min(measured.held, o.held) : std::nullopt;
    }
    void operator()(const ControlLeft& o) {
        if (concerns(o.pan)) add(o.at, TimeStart{entry_->id, o, isTrusted(o.thermometer, o.at)});
    }
    void operator()(const CoolingBegun& o) {
        if (concerns(o.pan) && speaksFor(o.pan, o.at)) add(o.at, o);
    }
    void operator()(const PanDiscarded& o) {
        if (concerns(o.pan)) add(o.at, o);
    }
    void operator()(const ActionTaken& o) { history_.actions.emplace(o.entry, o); }
    template <class Other>
    void operator()(const Other&) {}

  private:
    void add(Instant at, Step step) {
        history_.moments.push_back({at, entry_->id, std::move(step)});
    }

    bool isOwn(const Entry& entry) const {
        const auto of = [&](const auto& fact) -> bool {
            if constexpr (requires { fact.pan; }) return fact.pan == pan_;
            return false;
        };
        return std::visit(of, entry.fact);
    }

    /// What is said of the dish as a whole is said of every pan of it.
    bool concerns(const Pan& other) const {
        return other.dish == pan_.dish && (other.number == pan_.number || other.number == 0);
    }
    /// But it speaks for a pan only until the pan has a record of its own.
    bool speaksFor(const Pan& other, Instant at) const {
        return other.number == pan_.number || !ownSince_ || at <= *ownSince_;
    }

    /// The first entry of a chain of corrections; null when a link is missing or it goes round.
    const Entry* rootOf(const Entry& entry) const {
        const Entry* root = &entry;
        for (std::size_t steps = 0; steps <= counting_.size(); ++steps) {
            const auto* measured = std::get_if<FoodMeasured>(&root->fact);
            if (!measured) return nullptr;
            if (!measured->corrects) return root;
            const auto found = byId_.find(*measured->corrects);
            if (found == byId_.end()) return nullptr;
            root = found->second;
        }
        return nullptr;
    }

    /// The test before a reading and the one after it must not have failed.
    bool isTrusted(const ThermometerId& thermometer, Instant at) const {
        const ThermometerTested* before = nullptr;
        for (const Entry* entry : counting_) {
            const auto* test = std::get_if<ThermometerTested>(&entry->fact);
            if (!test || test->thermometer != thermometer) continue;
            if (test->at > at) return (!before || isAccurate(*before)) && isAccurate(*test);
            before = test;
        }
        return !before || isAccurate(*before);
    }

    const Pan& pan_;
    Instant now_;
    std::vector<const Entry*> counting_;
    std::map<EntryId, const Entry*> byId_;
    std::optional<Instant> ownSince_;
    std::map<EntryId, std::size_t> measuredAt_;
    const Entry* entry_ = nullptr;
    History history_;
};

}  // namespace

History historyOf(const Pan& pan, std::span<const Entry> entries, Instant now) {
    return Gathering(pan, entries, now).run();
}

}  // namespace cinder::safety
