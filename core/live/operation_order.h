#pragma once

/// Which operations of a journal count, and in which order they are folded.

#include <span>
#include <vector>

#include "journal/operation.h"

namespace cinder::live {

/// Each operation once, in the order of the fold, whatever order they came in.
[[nodiscard]] std::vector<const journal::Operation*> inOrder(
    std::span<const journal::Operation> operations);

/// Of operations in order, those that no later one takes back, and none that takes back.
[[nodiscard]] std::vector<const journal::Operation*> withoutUndone(
    const std::vector<const journal::Operation*>& order);

}  // namespace cinder::live
