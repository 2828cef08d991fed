#include "quantity/worked.h"

#include <string>
#include <vector>

namespace cinder::quantity {

namespace {

constexpr const char* kUp = "rounded up";
constexpr const char* kUpSpanish = "hacia arriba";

std::string summed(std::size_t count) {
    std::string sum = "{0}";
    for (std::size_t i = 1; i < count; ++i)
        sum += " + {" + std::to_string(i) + "}";
    return sum;
}

/// `up` is how the language says that it is rounded up.
std::string portionsIn(const event::Guests& guests, const event::Serving& serving,
                       const std::string& up) {
    const bool isPart = serving.takePercent != 100;
    const bool isMore = serving.secondsPercent.value_or(0) != 0;
    const bool isSmaller = serving.childPercent.value_or(100) != 100 && guests.children > 0;
    const bool areBoth = guests.adults > 0 && guests.children > 0;
    // Either sort of guest is rounded by itself, because half a guest takes nothing.
    const auto takers = [&](const char* who, bool isLast) {
        if (!isPart) return std::string(who);
        const std::string some = std::string(who) + " x {2}";
        return isLast ? some : '(' + some + ", " + up + ')';
    };
    std::string all;
    if (guests.children == 0 || areBoth) all = takers("{0}", !areBoth && !isMore);
    if (areBoth) all += " + ";
    if (guests.children > 0) all += takers("{1}", !areBoth && !isMore && !isSmaller);
    if (isSmaller) all += " x {3}";
    if (isMore) all = (areBoth ? '(' + all + ')' : all) + " x (1 + {4})";
    const bool isExact = !isMore && !isSmaller && (!isPart || areBoth);
    return isExact ? all : all + ", " + up;
}

std::string larger(const LocalText& of, const char* language, const char* before,
                   const char* after) {
    const std::string first(of.in(language));
    return before + (first.find(',') == std::string::npos ? first : '(' + first + ')') + after;
}

}  // namespace

LocalText sumOf(std::size_t count) {
    return count < 2 ? LocalText{} : LocalText(summed(count));
}

LocalText withSpares(std::size_t places) {
    const std::string sum = places == 1 ? summed(1) : '(' + summed(places) + ')';
    const std::string all = sum + " x (1 + {" + std::to_string(places) + "}), ";
    return both(all + kUp, all + kUpSpanish);
}

LocalText workedPortions(const event::Guests& guests, const event::Serving& serving) {
    const std::string all = portionsIn(guests, serving, kUp);
    if (all == "{0}" || all == "{1}") return {};
    return both(all, portionsIn(guests, serving, kUpSpanish));
}

LocalText workedBought(const std::vector<Figure>& inputs) {
    std::string worked = "{0}";
    for (std::size_t i = 1; i < inputs.size(); ++i) {
        const Amount& amount = inputs[i].amount;
        if (amount == Amount{100, Unit::Percent} || amount == Amount{1, Unit::Ratio}) continue;
        worked += (i == 1 ? " x {" : " / {") + std::to_string(i) + '}';
    }
    return worked == "{0}" ? LocalText{} : LocalText(worked);
}

LocalText orCounted(const LocalText& needed) {
    return both(larger(needed, "en", "the larger of ", " and {2}"),
                larger(needed, "es", "lo mayor de ", " y {2}"));
}

}  // namespace cinder::quantity
