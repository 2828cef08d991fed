#pragma once

/// Everything about quantities, line and van that a page may show.

#include "figures.h"
#include "load.h"

namespace cinder::face {

class Lists : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::Figures* figures READ figures CONSTANT)
    Q_PROPERTY(cinder::face::Load* load READ load CONSTANT)

  public:
    /// All must outlive this.
    Lists(ListsDoor& door, Day& day, const Settings& settings, QObject* parent = nullptr);

    /// Looks whether anything was recorded; nothing is done when not.
    void beat();
    /// Everything anew: language or units changed.
    void retell();

    [[nodiscard]] Figures* figures() { return &figures_; }
    [[nodiscard]] Load* load() { return &load_; }

  private:
    ListsDoor& door_;
    Listed seen_;
    Figures figures_;
    Load load_;
};

}  // namespace cinder::face
