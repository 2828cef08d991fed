#pragma once

/// A project as numbers between bounds and what follows from them; internal to the exact arm.

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
    void addCumulative(std::int64_t capacity, std::vector<Use> uses, std::vector<FixedLoad> loads);
    void orderForcedPairs();
    [[nodiscard]] std::vector<FixedLoad> loadsOf(std::int32_t lane, std::int64_t most) const;
    [[nodiscard]] std::vector<FixedLoad> workOf(People team) const;

    const Project& project_;
    BoundsStore store_;
    PairOrders pairs_;
    std::vector<Cumulative> cumulatives_;
    std::vector<bool> isToDo_;                        ///< per cumulative
    std::vector<std::vector<std::size_t>> ofNumber_;  ///< number -> cumulatives
    std::vector<Side> moved_;
    bool isRefuted_ = false;
};

}  // namespace cinder::plan::search
