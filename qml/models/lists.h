#pragma once

/// Everything about quantities, line and van that a page may show.

#include "figures.h"
#include "line_view.h"
#include "load.h"
#include "papers.h"

namespace cinder::face {

class Lists : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(cinder::face::Figures* figures READ figures CONSTANT)
    Q_PROPERTY(cinder::face::Load* load READ load CONSTANT)
    Q_PROPERTY(cinder::face::LineView* line READ line CONSTANT)
    Q_PROPERTY(cinder::face::Papers* papers READ papers CONSTANT)

  public:
    /// All must outlive this; `printer` may be null.
    Lists(ListsDoor& door, Day& day, const Settings& settings, Printer* printer,
          QObject* parent = nullptr);

    /// Looks whether anything was recorded; nothing is done when not.
    void beat();
    /// Everything anew: language or units changed.
    void retell();

    [[nodiscard]] Figures* figures() { return &figures_; }
    [[nodiscard]] Load* load() { return &load_; }
    [[nodiscard]] LineView* line() { return &line_; }
    [[nodiscard]] Papers* papers() { return &papers_; }

  private:
    ListsDoor& door_;
    Listed seen_;
    Figures figures_;
    Load load_;
    LineView line_;
    Papers papers_;
};

}  // namespace cinder::face
