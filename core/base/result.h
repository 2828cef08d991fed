#pragma once

/// A value or the reason why there is none. Every function that returns one is [[nodiscard]].
/// Each library has its own error type; the words a person reads are made in the view models and
/// the command line, never here.

#include <tl/expected.hpp>

namespace cinder {

template <class T, class Error>
using Result = tl::expected<T, Error>;

template <class Error>
[[nodiscard]] tl::unexpected<Error> fail(Error error) {
    return tl::unexpected<Error>(std::move(error));
}

}  // namespace cinder
