#pragma once

/// Makes stamps that never go back, whatever the wall clock does, and that lie after everything
/// this device has seen. Source: Kulkarni, Demirbas et al., "Logical Physical Clocks and
/// Consistent Snapshots in Globally Distributed Databases", OPODIS 2014, figure 5.

#include "journal/operation.h"

namespace cinder::journal {

class HybridClock {
  public:
    /// The stamp of a new operation made when the wall clock shows `wall`.
    Stamp tick(Instant wall) {
        if (wall > last_.wall) {
            last_ = {wall, 0};
        } else {
            ++last_.counter;
        }
        return last_;
    }

    /// Takes note of an operation read from the store or received from another device.
    void witness(Stamp seen) {
        if (last_ < seen) last_ = seen;
    }

    [[nodiscard]] Stamp last() const { return last_; }

  private:
    Stamp last_;
};

}  // namespace cinder::journal
