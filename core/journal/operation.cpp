#include "journal/operation.h"

#include <tuple>

namespace cinder::journal {

bool comesBefore(const Operation& a, const Operation& b) {
    return std::tie(a.stamp, a.id.device, a.id.sequence) <
           std::tie(b.stamp, b.id.device, b.id.sequence);
}

}  // namespace cinder::journal
