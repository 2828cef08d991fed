#pragma once

/// What the Fire board asks of the core. Behind it stands `app::Session`; tests and pictures write
/// down what was touched instead.

#include <optional>
#include <vector>

#include "app/session.h"

namespace cinder::face {

using Taken = Result<void, app::Refusal>;

class FireDoor {
  public:
    FireDoor() = default;
    FireDoor(const FireDoor&) = delete;
    FireDoor& operator=(const FireDoor&) = delete;
    virtual ~FireDoor() = default;

    /// `start`: in the middle of the meat when it was laid.
    [[nodiscard]] virtual Taken layPieces(const TaskId& task, Temperature start) = 0;
    [[nodiscard]] virtual Taken testByHand(const ResourceId& grate, Duration held) = 0;
    [[nodiscard]] virtual Taken readGrate(const ResourceId& grate, Temperature shown) = 0;
    [[nodiscard]] virtual Taken addCoal(const ResourceId& grate, Mass mass) = 0;
    [[nodiscard]] virtual Taken readPiece(const TaskId& task, std::int32_t piece,
                                          Temperature shown) = 0;
    [[nodiscard]] virtual Taken judgePiece(const TaskId& task, std::int32_t piece, bool isDone) = 0;
    [[nodiscard]] virtual Taken pullPieces(const TaskId& task,
                                           const std::vector<std::int32_t>& pieces,
                                           std::int32_t pan) = 0;
    [[nodiscard]] virtual Taken movePieces(const TaskId& task,
                                           const std::vector<std::int32_t>& pieces,
                                           bool isToCoolSide) = 0;
};

}  // namespace cinder::face
