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

Instant lastWritten(const std::vector<journal::Operation>& operations) {
    const auto followed =
        std::find_if(operations.rbegin(), operations.rend(), [](const journal::Operation& op) {
            return std::holds_alternative<journal::ClockFollowed>(op.body);
        });
    if (followed == operations.rend())
        return operations.empty() ? Instant{} : operations.back().stamp.wall;
    // What is said in a rehearsal is said in its simulated time.
    const bool isRehearsed =
        std::any_of(operations.begin(), operations.end(), [](const journal::Operation& op) {
            return std::holds_alternative<journal::RehearsalSet>(op.body);
        });
    Instant last = std::get<journal::ClockFollowed>(followed->body).at;
    for (auto op = followed.base(); op != operations.end(); ++op) {
        if (followed->stamp.wall < op->stamp.wall) return operations.back().stamp.wall;
        if (isRehearsed) continue;
        if (const auto said = momentOf(op->body)) last = std::max(last, *said);
    }
    return last;
}

}  // namespace cinder::app
