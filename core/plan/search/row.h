#pragma once

#include <cstdint>
#include <vector>

namespace cinder::plan::search {

/// A plain array addressed by a signed position, as slots and tasks are. Unchecked.
template <class T>
class Row {
  public:
    Row() = default;
    explicit Row(std::int32_t size, T value = T{})
        : cells_(static_cast<std::size_t>(size), value) {}

    [[nodiscard]] std::int32_t size() const { return static_cast<std::int32_t>(cells_.size()); }
    [[nodiscard]] T& operator[](std::int32_t i) { return cells_[static_cast<std::size_t>(i)]; }
    [[nodiscard]] const T& operator[](std::int32_t i) const {
        return cells_[static_cast<std::size_t>(i)];
    }
    /// Where cell `i` lies.
    [[nodiscard]] T* from(std::int32_t i) { return cells_.data() + i; }
    [[nodiscard]] const T* from(std::int32_t i) const { return cells_.data() + i; }
    void assign(std::int32_t size, const T& value) {
        cells_.assign(static_cast<std::size_t>(size), value);
    }
    void add(T value) { cells_.push_back(value); }
    void clear() { cells_.clear(); }
    [[nodiscard]] T* data() { return cells_.data(); }
    [[nodiscard]] const T* data() const { return cells_.data(); }
    auto begin() { return cells_.begin(); }
    auto end() { return cells_.end(); }
    [[nodiscard]] auto begin() const { return cells_.begin(); }
    [[nodiscard]] auto end() const { return cells_.end(); }
    friend bool operator==(const Row&, const Row&) = default;

  private:
    std::vector<T> cells_;
};

}  // namespace cinder::plan::search
