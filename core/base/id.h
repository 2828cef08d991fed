#pragma once

/// Names of things that must not be confused with each other: a `TaskId` cannot be passed where a
/// `DishId` is wanted. An id is short text chosen once and never shown as is.

#include <functional>
#include <string>
#include <utility>

namespace cinder {

template <class Tag>
class Id {
  public:
    Id() = default;
    explicit Id(std::string text) : text_(std::move(text)) {}

    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] bool empty() const { return text_.empty(); }

    friend bool operator==(const Id& a, const Id& b) { return a.text_ == b.text_; }
    friend bool operator!=(const Id& a, const Id& b) { return a.text_ != b.text_; }
    friend bool operator<(const Id& a, const Id& b) { return a.text_ < b.text_; }

  private:
    std::string text_;
};

using EventId = Id<struct EventTag>;
using DishId = Id<struct DishTag>;
using StepId = Id<struct StepTag>;
using PersonId = Id<struct PersonTag>;
using SkillId = Id<struct SkillTag>;
using StationId = Id<struct StationTag>;
/// A thing with a capacity: a grate, the hot box, the chafers.
using ResourceId = Id<struct ResourceTag>;
using TaskId = Id<struct TaskTag>;
using DeviceId = Id<struct DeviceTag>;

}  // namespace cinder

template <class Tag>
struct std::hash<cinder::Id<Tag>> {
    std::size_t operator()(const cinder::Id<Tag>& id) const noexcept {
        return std::hash<std::string>{}(id.text());
    }
};
