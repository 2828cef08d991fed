#include "safety/history.h"

#include <algorithm>
#include <cmath>

#include "safety/thermometer.h"

namespace cinder::safety {

namespace {

/// No food goes through more pans than a crew numbers; a ring of them ends here.
constexpr int kMostMoves = 99;

bool isBefore(const Moment& a, const Moment& b) {
    return a.at != b.at ? a.at < b.at : a.entry < b.entry;
}

bool isOf(const Pan& pan, const Entry& entry) {
    const auto of = [&](const auto& fact) -> bool {
        if constexpr (requires { fact.pan; }) return fact.pan == pan;
        return false;
    };
    return std::visit(of, entry.fact);
}

/// The first entry of a pan that counts by `now`; null when there is none.
const Entry* firstOf(const Pan& pan, std::span<const Entry> entries, Instant now) {
    const Entry* first = nullptr;
    for (const Entry& entry : entries) {
        if (entry.isTakenBack || !isOf(pan, entry)) continue;
        const Instant at = instantOf(entry.fact);
        if (at > now) continue;
        if (first && std::pair(instantOf(first->fact), first->id) < std::pair(at, entry.id))
            continue;
        first = &entry;
    }
    return first;
}

std::optional<Pan> saidOrigin(const Entry& entry) {
    const auto of = [](const auto& fact) -> std::optional<Pan> {
        if constexpr (requires { fact.from; })
            if (fact.from && *fact.from > 0 && *fact.from != fact.pan.number)
                return Pan{fact.pan.dish, *fact.from};
        return std::nullopt;
    };
    return std::visit(of, entry.fact);
}

/// Puts the history of one pan together, its origin left aside.
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
        if (const Entry* first = firstOf(pan, entries, now)) ownSince_ = instantOf(first->fact);
    }

    History run() {
        for (const Entry* entry : counting_) {
            entry_ = entry;
            std::visit(*this, entry->fact);
        }
        std::stable_sort(history_.moments.begin(), history_.moments.end(), isBefore);
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

/// What is said of a pan after its first entry, and of its origin before.
History gather(const Pan& pan, std::span<const Entry> entries, Instant now, int moves) {
    History own = Gathering(pan, entries, now).run();
    const Entry* first = firstOf(pan, entries, now);
    const auto origin = first ? saidOrigin(*first) : std::nullopt;
    if (!origin || moves == 0) return own;
    const Moment from{instantOf(first->fact), first->id, {}};
    History history = gather(*origin, entries, now, moves - 1);
    std::erase_if(history.moments, [&](const Moment& moment) {
        // The empty pan may be put away; what was in it goes on. A dish thrown away does not.
        const auto* discarded = std::get_if<PanDiscarded>(&moment.step);
        return !isBefore(moment, from) || (discarded && discarded->pan.number > 0);
    });
    for (Moment& moment : own.moments)
        if (!isBefore(moment, from)) history.moments.push_back(std::move(moment));
    return history;
}

}  // namespace

std::optional<Pan> originOf(const Pan& pan, std::span<const Entry> entries, Instant now) {
    const Entry* first = firstOf(pan, entries, now);
    return first ? saidOrigin(*first) : std::nullopt;
}

History historyOf(const Pan& pan, std::span<const Entry> entries, Instant now) {
    return gather(pan, entries, now, kMostMoves);
}

}  // namespace cinder::safety
