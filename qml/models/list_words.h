#pragma once

/// Words about quantities: what the sheets on paper say, the screen says alike.

#include <QCoreApplication>
#include <QString>

#include "app/list_cards.h"
#include "report/style.h"

namespace cinder::face {

class Settings;

class ListWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::ListWords)

  public:
    /// `settings` must outlive this.
    explicit ListWords(const Settings& settings) : settings_(settings) {}

    /// How this device writes numbers and names.
    [[nodiscard]] report::Style style() const;
    [[nodiscard]] QString name(const LocalText& text) const;
    [[nodiscard]] QString amount(const quantity::Amount& amount) const;
    /// How the figure was reckoned, with its own numbers, a line for each step.
    [[nodiscard]] QStringList worked(const quantity::Figure& figure) const;
    /// Where a figure comes from: a field of the event, a publication, common practice.
    [[nodiscard]] QString source(const quantity::Source& source, const event::Event& event) const;
    /// What is missing or contradicts, where, and what would be right.
    [[nodiscard]] QString fault(const event::Fault& fault, const event::Event& event) const;
    /// "96 guests, 8 of them children".
    [[nodiscard]] static QString guests(const event::Guests& guests);

  private:
    /// "Slaw" for "/menu/2/serving/vessel", "Tables" for "/kit/tables".
    [[nodiscard]] QString placeOf(const std::string& path, const event::Event& event) const;

    const Settings& settings_;
};

}  // namespace cinder::face
