#pragma once

/// A project as numbers between bounds and what follows from them; internal to the exact arm.

#include "plan/search/cumulative.h"
#include "plan/search/pair_orders.h"

namespace cinder::plan::search {

class ExactModel {
  public:
    /// Nothing may end after `deadline`.
    ExactModel(const Project& project, Slot deadline);

    /// The links and windows contradict each other.
    [[nodiscard]] bool isRefuted() const { return isRefuted_; }
    [[nodiscard]] BoundsStore& store() { return store_; }
    [[nodiscard]] Side start(Member j) const { return 2 * j; }
    [[nodiscard]] Side makespan() const { return 2 * project_.size(); }

    /// Follows everything to its end. False on a contradiction.
    bool propagate();

  private:
    void addNumbers(Slot deadline);
    void addResources();
    void addTeams();
    void addCumulative(const Lanes& lanes, Row<std::uint64_t> free, std::vector<Use> uses);
    void orderForcedPairs();
    void note(std::int32_t number);
    bool giveUp();

    const Project& project_;
    BoundsStore store_;
    PairOrders pairs_;
    std::vector<Cumulative> cumulatives_;
    std::vector<bool> isToDo_;                        ///< per cumulative
    std::vector<std::vector<std::size_t>> ofNumber_;  ///< number -> cumulatives
    std::vector<Side> moved_;
    std::vector<std::int32_t> waiting_;  ///< numbers whose pairs are to be looked at
    Row<std::uint8_t> isWaiting_;
    bool isRefuted_ = false;
};

}  // namespace cinder::plan::search
