#include <algorithm>
#include <numeric>

#include "quantity/line.h"

namespace cinder::quantity {

namespace {

int rank(event::Course course) {
    switch (course) {
        case event::Course::Cold:
            return 0;
        case event::Course::Bread:
            return 1;
        case event::Course::Side:
            return 2;
        case event::Course::Sauce:
            return 3;
        case event::Course::Main:
            return 4;
    }
    return 5;
}

}  // namespace

std::vector<std::size_t> servingOrder(const event::Event& event) {
    std::vector<std::size_t> order(event.menu.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&event](std::size_t a, std::size_t b) {
        const event::Dish& left = event.menu[a];
        const event::Dish& right = event.menu[b];
        if (rank(left.course) != rank(right.course)) return rank(left.course) < rank(right.course);
        return left.order < right.order;
    });
    if (!event.quantities) return order;
    // The wanted ones come first, in their order; a stable partition keeps the rest as it was.
    const auto& wanted = event.quantities->lineOrder;
    const auto place = [&](std::size_t i) {
        return std::find(wanted.begin(), wanted.end(), event.menu[i].id) - wanted.begin();
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return place(a) < place(b); });
    return order;
}

}  // namespace cinder::quantity
