#pragma once

/// What the fields of one dish have in common; internal to the editor.

#include <algorithm>

#include "fields.h"

namespace cinder::face {

class DishFields {
  protected:
    using Dish = event::Dish;
    using Event = event::Event;
    using Kind = NumberEntry::Kind;

    explicit DishFields(FieldList& fields) : list(fields) {}

    /// False when the dish is not on the menu.
    bool find(const DishId& id) {
        const auto& menu = list.draft.menu;
        const auto at =
            std::find_if(menu.begin(), menu.end(), [&](const Dish& one) { return one.id == id; });
        if (at == menu.end()) return false;
        path = pointer("/menu", static_cast<std::size_t>(at - menu.begin()));
        now = *at;
        return true;
    }

    template <class Change>
    [[nodiscard]] app::Edit changed(Change change) const {
        return [dish = now, change](Event e) mutable {
            change(dish);
            return event::withDish(std::move(e), dish);
        };
    }

    template <class Set>
    Field& figure(const std::string& member, const QString& name, Kind kind, double value,
                  double least, double most, Set set) {
        return list.number(path + member, name, kind, value, least, most,
                           [this_ = *this, set](double v) {
                               return this_.changed([set, v](Dish& d) { set(d, v); });
                           });
    }

    FieldList& list;
    std::string path;
    Dish now;
};

}  // namespace cinder::face
