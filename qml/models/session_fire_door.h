#pragma once

/// The session's fire as a door.

#include "fire_door.h"

namespace cinder::face {

class SessionFireDoor final : public FireDoor {
  public:
    explicit SessionFireDoor(app::Session& session) : session_(session) {}

    [[nodiscard]] Taken layPieces(const TaskId& task, Temperature start) override {
        return session_.layPieces(task, start);
    }
    [[nodiscard]] Taken testByHand(const ResourceId& grate, Duration held) override {
        return session_.testByHand(grate, held);
    }
    [[nodiscard]] Taken readGrate(const ResourceId& grate, Temperature shown) override {
        return session_.readGrate(grate, shown);
    }
    [[nodiscard]] Taken addCoal(const ResourceId& grate, Mass mass) override {
        return session_.addCoal(grate, mass);
    }
    [[nodiscard]] Taken readPiece(const TaskId& task, std::int32_t piece,
                                  Temperature shown) override {
        return session_.readPiece(task, piece, shown);
    }
    [[nodiscard]] Taken judgePiece(const TaskId& task, std::int32_t piece, bool isDone) override {
        return session_.judgePiece(task, piece, isDone);
    }
    [[nodiscard]] Taken pullPieces(const TaskId& task, const std::vector<std::int32_t>& pieces,
                                   std::int32_t pan) override {
        return session_.pullPieces(task, pieces, pan);
    }
    [[nodiscard]] Taken movePieces(const TaskId& task, const std::vector<std::int32_t>& pieces,
                                   bool isToCoolSide) override {
        return session_.movePieces(task, pieces, isToCoolSide);
    }

  private:
    app::Session& session_;
};

}  // namespace cinder::face
