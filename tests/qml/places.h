#pragma once

/// Every board, page and sheet that can be shown, one a line: what is looked at, measured and
/// compared. What follows a dash or a colon is understood by `Face::draw`.

namespace cinder::face::scene {

inline constexpr const char* kPlaces[] = {
    "start",
    "holder",
    "lead",
    "fire",
    "firePiece",
    "fireProbe",
    "fireSeveral",
    "buffet",
    "sheet",
    "more",
    "settings",
    "parts",
    "lock",
    "call",
    "bell",
    "speed",
    "record",
    "measure",
    "pan",
    "limit",
    "cautions",
    "asked",
    "serve",
    "strike",
    "debrief",
    "new",
    "make",
    "make-when",
    "make-guests",
    "make-menu",
    "make-library",
    "make-method:0",
    "make-dish:lamb",
    "make-step:lamb/cook",
    "make-after:lamb/rest",
    "make-site",
    "make-crew",
    "make-person:ines",
    "make-kit",
    "make-kit:grate",
    "lists",
    "quantities",
    "figure",
    "load",
    "kitchen",
    "line",
    "paper",
};

}  // namespace cinder::face::scene
