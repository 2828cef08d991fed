#include "sync/exchange.h"

#include <algorithm>
#include <iterator>

namespace cinder::sync {

namespace {

using journal::ChainHead;
using journal::Entry;

/// Bodies in one message: enough that a long absence is few messages, and no more than a touch that
/// comes meanwhile can wait for. Our choice.
constexpr std::size_t kAtOnce = std::size_t{256} << 10U;

/// Cut before the letter that would go over the longest name.
std::string shortened(std::string holder) {
    if (holder.size() <= kLongestHolder) return holder;
    std::size_t end = kLongestHolder;
    while (end > 0 && (static_cast<unsigned char>(holder[end]) & 0xC0U) == 0x80U)
        --end;
    holder.resize(end);
    return holder;
}

/// Whether they are of one chain and follow each other.
bool isOneChain(const std::vector<Entry>& entries) {
    return std::adjacent_find(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) {
               return a.operation.event != b.operation.event ||
                      a.operation.id.device != b.operation.id.device ||
                      a.operation.id.sequence + 1 != b.operation.id.sequence;
           }) == entries.end();
}

}  // namespace

Exchange::Exchange(journal::Store& store, std::string holder, Ways ways)
    : store_(store), holder_(shortened(std::move(holder))), ways_(std::move(ways)) {}

// --- what this device begins ---------------------------------------------------------------------

void Exchange::begin() {
    hasBegun_ = true;
    greet();
    ask();
}

void Exchange::noteAdded(const EventId& event) {
    if (ours_) lookAgain(event);
    goOn();
}

void Exchange::setHolder(const std::string& holder) {
    std::string name = shortened(holder);
    if (name == holder_) return;
    holder_ = std::move(name);
    if (hasBegun_) greet();
}

void Exchange::beat() {
    if (!hasBegun_ || isOtherVersion_) return;
    ask();
    // A store that takes nothing at all is not asked again.
    const bool canNoteAgain = cannotNote_ && store_.access() == journal::Access::Full;
    if (clocksAgree() && (cannotRead_ || canNoteAgain)) sayHeads();
    goOn();
}

void Exchange::greet() {
    send(Greet{kVersion, store_.device(), holder_});
}

void Exchange::ask() {
    ++asksOpen_;
    send(Ask{ways_.now()});
}

// --- what the other one says ---------------------------------------------------------------------

bool Exchange::receive(std::string_view bytes) {
    // What another version says may mean anything; the connection stays, so that it can be named.
    if (isOtherVersion_) return true;
    const auto message = read(bytes);
    if (!message) return false;
    if (!peer_.device && !std::holds_alternative<Greet>(*message)) return false;
    if (!std::visit([this](const auto& said) { return take(said); }, *message)) return false;
    goOn();
    return true;
}

bool Exchange::take(const Greet& said) {
    // A copied folder: two devices that number the same chains would part every record.
    if (said.device == store_.device()) return false;
    if (peer_.device && *peer_.device != said.device) return false;
    peer_.device = said.device;
    peer_.holder = said.holder;
    isOtherVersion_ = said.version != kVersion;
    return true;
}

bool Exchange::take(const Ask& said) {
    const Instant received = ways_.now();
    send(Answer{said.asked, received, ways_.now()});
    return true;
}

bool Exchange::take(const Answer& said) {
    if (asksOpen_ == 0) return false;
    --asksOpen_;
    clocks_.add(offsetOf({said.asked, said.received, said.answered, ways_.now()}));
    peer_.clock = clocks_.best();
    if (!clocksAgree()) {
        ours_.reset();
    } else if (!ours_) {
        sayHeads();
    }
    return true;
}

bool Exchange::take(const Heads& said) {
    theirs_ = endsOf(said.heads);
    // What is on the way may have been passed over there. If it was not, it comes twice, and no
    // harm.
    onTheWay_.reset();
    theyCannotNote_ = false;
    if (ours_) compare();
    return true;
}

bool Exchange::take(const Entries& said) {
    if (!theirs_ || said.entries.empty() || !isOneChain(said.entries)) return false;
    // Not kept while the clocks are apart or the store cannot be read: when that is over, our heads
    // tell the other side to send it again.
    if (!ours_) return true;
    const journal::Operation& last = said.entries.back().operation;
    const Chain chain{last.event, last.id.device};
    if (peer_.parted.count(last.event) > 0) {
        send(Refused{last.event, Refused::Why::Parted});
        return true;
    }
    // A third device may have brought some of it just now.
    if (!lookAgain(last.event)) return true;
    const std::uint64_t before = reached(*ours_, chain);
    if (const auto taken = store_.take(said.entries); !taken) {
        refuse(last.event, taken.error().why);
        return true;
    }
    cannotNote_ = false;
    advance(*ours_, chain, {last.id.sequence, said.entries.back().seal});
    advance(*theirs_, chain, {last.id.sequence, said.entries.back().seal});
    const End& here = ours_->at(chain);
    send(TakenOver{{ChainHead{chain.first, {chain.second, here.sequence}, here.seal}}});
    std::vector<Entry> added;
    std::copy_if(said.entries.begin(), said.entries.end(), std::back_inserter(added),
                 [&](const Entry& entry) { return entry.operation.id.sequence > before; });
    if (!added.empty()) ways_.arrived(added);
    return true;
}

bool Exchange::take(const TakenOver& said) {
    if (!theirs_) return false;
    for (const ChainHead& head : said.heads)
        advance(*theirs_, {head.event, head.last.device}, {head.last.sequence, head.seal});
    // The answer to something that was sent twice must not make the next one be sent twice as well.
    if (onTheWay_ && reached(*theirs_, onTheWay_->chain) >= onTheWay_->last) onTheWay_.reset();
    theyCannotNote_ = false;
    return true;
}

bool Exchange::take(const Refused& said) {
    if (!theirs_) return false;
    if (said.why == Refused::Why::Storage) {
        theyCannotNote_ = true;
        onTheWay_.reset();
        return true;
    }
    peer_.parted.insert(said.event);
    if (onTheWay_ && onTheWay_->chain.first == said.event) onTheWay_.reset();
    return true;
}

// --- how far everything goes ---------------------------------------------------------------------

Exchange::Ends Exchange::endsOf(const std::vector<ChainHead>& heads) {
    Ends ends;
    for (const ChainHead& head : heads)
        advance(ends, {head.event, head.last.device}, {head.last.sequence, head.seal});
    return ends;
}

std::uint64_t Exchange::reached(const Ends& ends, const Chain& chain) {
    const auto found = ends.find(chain);
    return found == ends.end() ? 0 : found->second.sequence;
}

void Exchange::advance(Ends& ends, const Chain& chain, const End& end) {
    End& known = ends[chain];
    if (known.sequence < end.sequence) known = end;
}

bool Exchange::clocksAgree() const {
    return peer_.clock && std::chrono::abs(peer_.clock->ahead) <= kMostApart;
}

void Exchange::sayHeads() {
    setAside_.clear();
    const auto heads = store_.heads();
    cannotRead_ = !heads;
    if (!heads) {
        ours_.reset();
        return;
    }
    ours_ = endsOf(*heads);
    send(Heads{*heads});
    if (!theirs_) return;
    compare();
    countMissing();
    // They forgot that something was refused when they heard this; with nothing to come there is
    // nothing that could be refused again.
    if (peer_.toCome == 0) cannotNote_ = false;
}

bool Exchange::lookAgain(const EventId& event) {
    const auto heads = store_.heads(event);
    if (!heads) {
        cannotRead_ = true;
        ours_.reset();
        return false;
    }
    for (const auto& [chain, end] : endsOf(*heads))
        advance(*ours_, chain, end);
    return true;
}

void Exchange::compare() {
    for (const auto& [chain, end] : *theirs_) {
        // Where they are further than we, they compare.
        const auto here = ours_->find(chain);
        if (here == ours_->end() || here->second.sequence < end.sequence) continue;
        if (peer_.parted.count(chain.first) > 0) continue;
        if (here->second.sequence == end.sequence) {
            if (here->second.seal != end.seal) part(chain.first);
            continue;
        }
        const auto seal = store_.sealOf(chain.first, {chain.second, end.sequence});
        if (!seal) {
            cannotRead_ = true;
            setAside_.insert(chain);
        } else if (*seal != end.seal) {
            part(chain.first);
        }
    }
}

void Exchange::part(const EventId& event) {
    peer_.parted.insert(event);
    send(Refused{event, Refused::Why::Parted});
}

void Exchange::refuse(const EventId& event, journal::StoreError::Why why) {
    using Why = journal::StoreError::Why;
    if (why == Why::OutOfOrder || why == Why::BadSeal) {
        part(event);
        return;
    }
    cannotNote_ = true;
    send(Refused{event, Refused::Why::Storage});
}

// --- what goes to the other one ------------------------------------------------------------------

void Exchange::goOn() {
    giveNext();
    countMissing();
    peer_.standing = standing();
}

void Exchange::giveNext() {
    if (!ours_ || !theirs_ || theyCannotNote_ || onTheWay_) return;
    for (const auto& [chain, end] : *ours_) {
        if (peer_.parted.count(chain.first) > 0 || setAside_.count(chain) > 0) continue;
        const std::uint64_t there = reached(*theirs_, chain);
        if (there >= end.sequence) continue;
        if (give(chain, there)) return;
        cannotRead_ = true;
        setAside_.insert(chain);
    }
}

bool Exchange::give(const Chain& chain, std::uint64_t after) {
    auto entries = store_.entriesAfter(chain.first, {chain.second, after}, kAtOnce);
    if (!entries || entries->empty()) return false;
    const std::uint64_t last = entries->back().operation.id.sequence;
    std::string bytes = write(Entries{std::move(*entries)});
    if (bytes.size() > kMostBytes) return false;
    onTheWay_ = Sent{chain, last};
    ways_.send(std::move(bytes));
    return true;
}

void Exchange::countMissing() {
    peer_.toCome = 0;
    peer_.toGo = 0;
    if (!ours_ || !theirs_) return;
    const auto lacking = [this](const Ends& of, const Ends& in) {
        std::uint64_t sum = 0;
        for (const auto& [chain, end] : of) {
            const std::uint64_t there = reached(in, chain);
            if (there < end.sequence && peer_.parted.count(chain.first) == 0)
                sum += end.sequence - there;
        }
        return sum;
    };
    peer_.toCome = lacking(*theirs_, *ours_);
    peer_.toGo = lacking(*ours_, *theirs_);
}

Standing Exchange::standing() const {
    if (isOtherVersion_) return Standing::OtherVersion;
    if (!peer_.clock) return Standing::Greeting;
    if (!clocksAgree()) return Standing::ClocksApart;
    if (cannotRead_ || cannotNote_ || theyCannotNote_) return Standing::NotNoted;
    if (!ours_ || !theirs_) return Standing::Greeting;
    const bool isAllThere = peer_.toCome == 0 && peer_.toGo == 0 && !onTheWay_;
    return isAllThere ? Standing::UpToDate : Standing::Exchanging;
}

}  // namespace cinder::sync
