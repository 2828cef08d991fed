#pragma once

/// The words of the food-safety record, in the language and scale of this device.

#include <QCoreApplication>
#include <QString>

#include "app/snapshot.h"
#include "words.h"

namespace cinder::face {

class FoodWords {
    Q_DECLARE_TR_FUNCTIONS(cinder::face::FoodWords)

  public:
    /// Both must outlive this.
    FoodWords(const Settings& settings, const Words& words) : settings_(settings), words_(words) {}

    // --- figures ---
    /// The scale this device shows figures in.
    [[nodiscard]] safety::Scale scale() const;
    /// To a tenth, on the scale it was read on: "141 °F", "4.5 °C".
    [[nodiscard]] static QString reading(const safety::Reading& reading);
    /// "135 °F or above"; "135 °F or above, local rule" when an authority made it stricter.
    [[nodiscard]] QString limit(safety::Degree degree, const safety::Limits& limits) const;
    [[nodiscard]] QString figure(safety::Degree degree, const safety::Limits& limits) const;

    // --- names ---
    /// "Beef stew", "Beef stew, pan 2".
    [[nodiscard]] QString pan(const safety::Pan& pan, const app::Snapshot& day) const;
    /// The same of all pans a check still waits for: "Beef stew, pans 2, 3".
    [[nodiscard]] QString pans(const safety::PlannedCheck& check, const app::Snapshot& day) const;
    /// "Pan 2", "Whole dish".
    [[nodiscard]] static QString panNumber(std::int32_t number);
    [[nodiscard]] static QString thermometer(const safety::ThermometerId& id);

    // --- words ---
    [[nodiscard]] static QString occasion(safety::Occasion occasion);
    [[nodiscard]] static QString purpose(safety::Purpose purpose);
    [[nodiscard]] static QString action(safety::Action action);
    [[nodiscard]] static QString rule(safety::TimeRule rule, const safety::Limits& limits);
    [[nodiscard]] static QString leftover(safety::Leftover leftover);
    [[nodiscard]] static QString lost(safety::Lost::Why why);
    [[nodiscard]] static QString fireItem(safety::FireItem item);
    /// How a pan stands, in one sentence.
    [[nodiscard]] QString standing(const safety::Standing& standing) const;
    /// "32 °F, at most 2 °F off".
    [[nodiscard]] QString icePoint() const;
    /// "ice point passed at 9:40", "not tested today".
    [[nodiscard]] QString tested(const safety::ThermometerId& id, const app::Snapshot& day) const;
    /// "to 70 °F within 2 h, to 41 °F within 6 h".
    [[nodiscard]] QString coolingSteps(const safety::Limits& limits) const;
    /// "reaches 135 °F in about 18 min, at the earliest 12:40: measure before".
    [[nodiscard]] QString forecast(const live::HoldingWarning& warning, Instant now) const;

  private:
    const Settings& settings_;
    const Words& words_;
};

}  // namespace cinder::face
