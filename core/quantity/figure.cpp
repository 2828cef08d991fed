#include "quantity/figure.h"

#include <cmath>

namespace cinder::quantity {

LocalText both(std::string_view english, std::string_view spanish) {
    return LocalText(std::map<std::string, std::string>{{"en", std::string(english)},
                                                        {"es", std::string(spanish)}});
}

const Figure* findFigure(const std::vector<Figure>& figures, std::string_view key) {
    for (const Figure& figure : figures) {
        if (figure.key == key) return &figure;
        if (const Figure* input = findFigure(figure.inputs, key)) return input;
    }
    return nullptr;
}

Tally::Tally(const event::Event& event) : event_(event) {
    if (!event.quantities) return;
    const auto& overrides = event.quantities->overrides;
    for (std::size_t i = 0; i < overrides.size(); ++i)
        overrides_.emplace(overrides[i].figure, i);
}

Figure Tally::reckoned(Figure figure) {
    const auto own = overrides_.find(figure.key);
    if (own == overrides_.end()) return figure;
    const event::Override& override = event_.quantities->overrides[own->second];
    used_[figure.key] = true;
    figure.reckoned = figure.amount.value;
    figure.amount.value = override.value;
    figure.note = override.note;
    return figure;
}

Figure Tally::field(LocalText name, Amount amount, std::string path) {
    Figure figure;
    figure.name = std::move(name);
    figure.amount = amount;
    figure.source = {Origin::Field, std::move(path)};
    return figure;
}

void Tally::blame(event::Fault::What what, std::string path, std::string found,
                  std::string allowed) {
    event::Fault fault{what, std::move(path), std::move(found), std::move(allowed), {}};
    for (const event::Fault& known : faults_)
        if (known == fault) return;
    faults_.push_back(std::move(fault));
}

void Tally::missing(std::string path) {
    blame(event::Fault::What::Missing, std::move(path));
}

event::Faults Tally::faults() const {
    event::Faults all = faults_;
    for (const auto& [key, index] : overrides_)
        if (!used_.contains(key))
            all.push_back({event::Fault::What::Dangling,
                           "/quantities/overrides/" + std::to_string(index) + "/figure",
                           '"' + key + '"',
                           "the figures of this event",
                           {}});
    return all;
}

std::int64_t roundedUp(double value) {
    if (!(value < static_cast<double>(kMostCounted))) return kMostCounted;
    const double slack = 1e-9 * std::fmax(1.0, std::fabs(value));
    return static_cast<std::int64_t>(std::ceil(value - slack));
}

std::int64_t roundedUpTo(double value, std::int64_t step) {
    return roundedUp(value / static_cast<double>(step)) * step;
}

}  // namespace cinder::quantity
