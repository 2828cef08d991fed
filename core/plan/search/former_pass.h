#pragma once

/// The last pass over a plain project, and which of its starts a new pass must come to again: where
/// orders differ little, most starts need not be sought anew.
///
/// A member starts as it did when links let it start no earlier than they did, when its room is
/// still free, and when no room before that has become free: there, whoever was laid before it is
/// laid again where it was.

#include "plan/search/project.h"
#include "plan/search/slot_set.h"

namespace cinder::plan::search {

class FormerPass {
  public:
    /// `project` must be plain and outlive this.
    explicit FormerPass(const Project& project);

    /// A new pass begins; it may leave members out.
    void begin();
    /// The earliest start of `j` that links (`ready`) and `timeline`, with all that were laid in
    /// this pass, allow.
    Slot lay(Member j, Slot ready, const Timeline& timeline);
    /// The pass is whole: the next one is held against it. A pass that never ends changes nothing.
    void end();

    /// Starts sought so far, over all passes. One that is kept counts for nothing, but every pass
    /// counts for one at least, so that no search goes on for ever over passes that change nothing.
    [[nodiscard]] std::int64_t sought() const { return sought_; }

  private:
    struct Laying {
        std::int32_t place = -1;  ///< in the order of its pass; negative when not laid
        Slot ready = 0;
        Slot start = 0;
    };
    [[nodiscard]] bool keepsStart(Member j, Slot ready, const Timeline& timeline);

    const Project& project_;
    Row<Laying> former_;
    Row<Laying> laid_;
    Row<Member> formerOrder_;
    Row<Member> order_;
    SlotSet freed_;                 ///< where those laid again were and are no more
    std::int32_t firstMissed_ = 0;  ///< place in the former order; all before it are laid again
    std::int64_t sought_ = 0;
};

}  // namespace cinder::plan::search
