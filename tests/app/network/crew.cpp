#include "crew.h"

#include <algorithm>

namespace samples {

using platform::CrewNetwork;

Tablet::Tablet(const char* holder, std::uint16_t port)
    : Device(kMorning), holder_(holder), port_(port) {
    openNetwork();
}

void Tablet::openNetwork() {
    network = std::make_unique<CrewNetwork>(
        *store, *session, keyFile(), CrewNetwork::Options{port_, std::chrono::milliseconds{100}});
    network->setHolder(holder_);
    network->tell([this] { ++changes; }, [this] { ++additions; });
}

std::size_t Tablet::inReach() const {
    const auto all = network->others();
    return static_cast<std::size_t>(
        std::count_if(all.begin(), all.end(), [](const auto& one) { return one.isInReach; }));
}

bool Tablet::isUpToDate(std::size_t others) const {
    const auto all = network->others();
    return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const auto& one) {
               return one.isInReach && one.peer.standing == sync::Standing::UpToDate;
           })) == others;
}

std::size_t Tablet::operations() const {
    std::size_t count = 0;
    const auto events = store->events();
    for (const EventId& event : events.value())
        count += store->read(event).value().size();
    return count;
}

void pair(Tablet& one, Tablet& other) {
    REQUIRE(one.network->begin());
    REQUIRE(other.network->join(one.network->code()));
    REQUIRE(waitFor([&] { return one.isUpToDate(1) && other.isUpToDate(1); }));
}

live::TaskState stateOf(const Device& device, const TaskId& task) {
    for (const auto& card : device.session->look()->tasks)
        if (card.id == task) return card.state;
    FAIL("no task " << task.text());
    return {};
}

}  // namespace samples
