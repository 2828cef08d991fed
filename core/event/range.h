#pragma once

namespace cinder::event {

/// Lowest and highest allowed value, both included.
template <class Number>
struct Range {
    Number low;
    Number high;
};

}  // namespace cinder::event
