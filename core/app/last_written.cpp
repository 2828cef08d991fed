#include "app/last_written.h"

#include <algorithm>
#include <type_traits>

namespace cinder::app {

namespace {

/// When a body says that something happened; nothing where it says none.
std::optional<Instant> momentOf(const journal::Body& body) {
    return std::visit(
        [](const auto& said) -> std::optional<Instant> {
            if constexpr (std::is_same_v<std::decay_t<decltype(said)>, safety::Fact>)
                return safety::instantOf(said);
            else if constexpr (requires { said.at; })
                return said.at;
            else
                return std::nullopt;
        },
        body);
}

}  // namespace

Instant lastWritten(const std::vector<journal::Operation>& operations, const DeviceId& device) {
    const bool isAnyOurs =
        std::any_of(operations.begin(), operations.end(),
                    [&](const journal::Operation& op) { return op.id.device == device; });
    // What is said in a rehearsal is said in its simulated time.
    const bool isRehearsed =
        std::any_of(operations.begin(), operations.end(), [](const journal::Operation& op) {
            return std::holds_alternative<journal::RehearsalSet>(op.body);
        });
    Instant last;
    for (const journal::Operation& op : operations) {
        if (isAnyOurs && op.id.device != device) continue;
        if (const auto* followed = std::get_if<journal::ClockFollowed>(&op.body))
            last = followed->at;
        else if (op.stamp.counter == 0)
            last = std::max(last, op.stamp.wall);
        else if (const auto said = momentOf(op.body); said && !isRehearsed)
            last = std::max(last, *said);
    }
    return last;
}

}  // namespace cinder::app
