// What a person counts and sees at the line (session.h).

#include <algorithm>

#include "app/session.h"
#include "app/session_state.h"

namespace cinder::app {

namespace {

using Why = Refusal::Why;
using Taken = Result<void, Refusal>;

/// More guests than any event may have; a slip of the finger. See event/limits.h.
constexpr std::int32_t kMostGuests = 10'000;

/// The number of the pan of `dish` that is on the line; a refusal when it has no pan there.
Result<std::int32_t, Refusal> panOnLine(Session::State& state, const DishId& dish) {
    if (auto no = state.objection()) return fail(std::move(*no));
    const auto& plan = state.service();
    const bool isThere = plan && std::any_of(plan->pans.begin(), plan->pans.end(),
                                             [&](const auto& pan) { return pan.dish == dish; });
    if (!isThere) return fail(Refusal{Why::UnknownTask, "no pan of " + dish.text(), {}, {}, {}});
    const auto& pans = state.open->day.service.pans;
    const auto found = pans.find(dish);
    if (found == pans.end() || found->second.set.empty()) return 1;
    return found->second.set.rbegin()->first;
}

}  // namespace

const std::shared_ptr<const ServicePlan>& Session::State::service() {
    if (!open->service && open->day.event)
        open->service = std::make_shared<const ServicePlan>(planService(*open->day.event));
    return open->service;
}

Taken Session::countGuests(std::int32_t guests) {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const auto& line = state_->open->day.service;
    if (guests < 0 || guests > kMostGuests)
        return refuse(Why::NotNow, "count from 0 to 10000 guests");
    if (line.last) return refuse(Why::NotNow, "the last guest has passed; take that back first");
    if (!line.counts.empty() && guests <= line.counts.rbegin()->first)
        return refuse(Why::NotNow, "so many are counted already");
    return state_->record(journal::GuestsPassed{guests, state_->now()});
}

Taken Session::lastGuest() {
    if (auto no = state_->objection()) return fail(std::move(*no));
    const auto& line = state_->open->day.service;
    if (line.last) return refuse(Why::NotNow, "the last guest has passed already");
    if (line.counts.empty()) return refuse(Why::NotNow, "nobody has stepped up yet");
    return state_->record(journal::LastGuestPassed{state_->now()});
}

Taken Session::tapPan(const DishId& dish, std::int32_t percent) {
    const auto pan = panOnLine(*state_, dish);
    if (!pan) return fail(pan.error());
    if (percent < 0 || percent > 100) return refuse(Why::NotNow, "a level is 0 to 100 percent");
    return state_->record(journal::PanLevelTapped{dish, *pan, percent, state_->now()});
}

Taken Session::setNextPan(const DishId& dish) {
    const auto pan = panOnLine(*state_, dish);
    if (!pan) return fail(pan.error());
    if (*pan >= kMostPans) return refuse(Why::NotNow, "pans are numbered from 1 to 99");
    return state_->record(journal::NextPanSet{dish, *pan + 1, state_->now()});
}

}  // namespace cinder::app
