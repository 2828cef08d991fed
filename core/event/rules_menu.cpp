#include <algorithm>
#include <array>

#include "event/limits.h"
#include "event/reader.h"
#include "event/rules.h"
#include "event/words.h"

namespace cinder::event {

namespace {

std::string inQuotes(std::string_view word) {
    return '"' + std::string(word) + '"';
}

/// What a diet leaves out, by definition of the diet. Halal and kosher depend on more than
/// ingredients and are taken on the caterer's word.
bool forbids(Diet diet, Allergen allergen) {
    const bool isOfAnimal = allergen == Allergen::Fish || allergen == Allergen::Crustaceans ||
                            allergen == Allergen::Molluscs;
    switch (diet) {
        case Diet::Vegetarian:
            return isOfAnimal;
        case Diet::Vegan:
            return isOfAnimal || allergen == Allergen::Milk || allergen == Allergen::Egg;
        case Diet::GlutenFree:
            return allergen == Allergen::Wheat || allergen == Allergen::Gluten;
        case Diet::DairyFree:
            return allergen == Allergen::Milk;
        case Diet::Halal:
        case Diet::Kosher:
            return false;
    }
    return false;
}

bool isMeatOrFish(Food food) {
    return food == Food::WholeMeat || food == Food::GroundMeat || food == Food::Poultry ||
           food == Food::Fish;
}

bool forbids(Diet diet, Food food) {
    if (diet == Diet::Vegetarian) return isMeatOrFish(food);
    if (diet == Diet::Vegan) return isMeatOrFish(food) || food == Food::Egg || food == Food::Dairy;
    return diet == Diet::DairyFree && food == Food::Dairy;
}

void checkDiets(const Dish& dish, const std::string& path, Faults& faults) {
    for (std::size_t i = 0; i < dish.suits.size(); ++i) {
        const Diet diet = dish.suits[i];
        const std::string here = joinPath(path + "/suits", i);
        if (forbids(diet, dish.food))
            faults.push_back(
                {Fault::What::Contradiction, here, inQuotes(wordFor(diet)), path + "/food", {}});
        for (std::size_t k = 0; k < dish.contains.size(); ++k)
            if (forbids(diet, dish.contains[k]))
                faults.push_back({Fault::What::Contradiction,
                                  here,
                                  inQuotes(wordFor(diet)),
                                  joinPath(path + "/contains", k),
                                  {}});
    }
}

void checkDoneness(const Dish& dish, const std::string& path, Faults& faults) {
    const auto against = [&](const char* member, std::string_view word, const char* other) {
        faults.push_back(
            {Fault::What::Contradiction, path + member, inQuotes(word), path + other, {}});
    };
    if (dish.meat && dish.food != Food::WholeMeat) against("/meat", wordFor(*dish.meat), "/food");
    if (!dish.doneness) return;
    if (!isMeatOrFish(dish.food)) against("/doneness", wordFor(*dish.doneness), "/food");
    if (dish.pullAt) against("/doneness", wordFor(*dish.doneness), "/pullAtCelsius");
}

void checkPieces(const Pieces& pieces, const std::string& path, Faults& faults) {
    if (!pieces.total && !pieces.perHundredGuests)
        faults.push_back({Fault::What::Missing, path + "/perHundredGuests", {}, {}, {}});
    if (pieces.total && pieces.perHundredGuests)
        faults.push_back({Fault::What::Contradiction,
                          path + "/perHundredGuests",
                          std::to_string(*pieces.perHundredGuests),
                          path + "/total",
                          {}});
    if (pieces.width > pieces.length)
        faults.push_back({Fault::What::Contradiction,
                          path + "/widthMm",
                          plainNumber(pieces.width.millimetres()),
                          path + "/lengthMm",
                          {}});
    if (pieces.narrowWidth > pieces.width)
        faults.push_back({Fault::What::Contradiction,
                          path + "/narrowWidthMm",
                          plainNumber(pieces.narrowWidth.millimetres()),
                          path + "/widthMm",
                          {}});
    std::int32_t percent = 0;
    for (const auto& thickness : pieces.thickness)
        percent += thickness.percent;
    if (!pieces.thickness.empty() && percent != 100)
        faults.push_back({Fault::What::OutOfRange,
                          path + "/thickness",
                          std::to_string(percent),
                          "100..100",
                          {}});
}

}  // namespace

void checkTimes(const Event& event, Faults& faults) {
    if (!event.site.arrival) return;
    const std::string found = inQuotes(formatRfc3339(*event.site.arrival));
    if (event.site.arrival->at >= event.serve.at) {
        faults.push_back({Fault::What::Contradiction, "/site/arrival", found, "/serve", {}});
    } else if (event.serve.at - event.site.arrival->at > std::chrono::hours{24}) {
        const ZonedInstant earliest{event.serve.at - std::chrono::hours{24}, event.serve.offset};
        faults.push_back({Fault::What::OutOfRange,
                          "/site/arrival",
                          found,
                          formatRfc3339(earliest) + ".." + formatRfc3339(event.serve),
                          {}});
    }
}

void checkGuests(const Guests& guests, Faults& faults) {
    const std::int32_t heads = headCount(guests);
    if (heads < 1)
        faults.push_back({Fault::What::OutOfRange,
                          "/guests/adults",
                          std::to_string(guests.adults),
                          "1.." + std::to_string(kGuestRange.high),
                          {}});
    const auto checkCount = [&](std::int32_t count, const std::string& path) {
        if (count > heads)
            faults.push_back({Fault::What::OutOfRange,
                              path + "/count",
                              std::to_string(count),
                              "0.." + std::to_string(heads),
                              {}});
    };
    for (std::size_t i = 0; i < guests.diets.size(); ++i)
        checkCount(guests.diets[i].count, joinPath("/guests/diets", i));
    for (std::size_t i = 0; i < guests.allergens.size(); ++i)
        checkCount(guests.allergens[i].count, joinPath("/guests/allergens", i));
}

void checkKit(const Kit& kit, const Defined& defined, Faults& faults) {
    const auto checkStation = [&](const StationId& id, const std::string& path) {
        if (!id.empty() && !defined.stations.contains(id))
            faults.push_back({Fault::What::Dangling,
                              path + "/station",
                              inQuotes(id.text()),
                              "/site/stations",
                              {}});
    };
    for (std::size_t i = 0; i < kit.grates.size(); ++i) {
        const auto& grate = kit.grates[i];
        const std::string path = joinPath("/kit/grates", i);
        checkStation(grate.station, path);
        if (grate.width > grate.length)
            faults.push_back({Fault::What::Contradiction,
                              path + "/widthMm",
                              plainNumber(grate.width.millimetres()),
                              path + "/lengthMm",
                              {}});
        if (grate.coolSide >= grate.length)
            faults.push_back({Fault::What::Contradiction,
                              path + "/coolSideMm",
                              plainNumber(grate.coolSide.millimetres()),
                              path + "/lengthMm",
                              {}});
    }
    for (std::size_t i = 0; i < kit.equipment.size(); ++i)
        if (kit.equipment[i].station)
            checkStation(*kit.equipment[i].station, joinPath("/kit/equipment", i));
    for (std::size_t i = 0; i < kit.tables.size(); ++i)
        if (kit.tables[i].station) checkStation(*kit.tables[i].station, joinPath("/kit/tables", i));
}

void checkDish(const Dish& dish, const std::string& path, const Event& event,
               const Defined& defined, Faults& faults) {
    checkDiets(dish, path, faults);
    checkDoneness(dish, path, faults);
    if (dish.pieces) checkPieces(*dish.pieces, path + "/pieces", faults);
    checkServing(dish, path, faults);
    for (std::size_t s = 0; s < dish.method.size(); ++s)
        checkStep(dish.method[s], &dish, joinPath(path + "/method", s), event, defined, faults);
}

void checkCard(const Dish& dish, Faults& faults) {
    checkDiets(dish, {}, faults);
    checkDoneness(dish, {}, faults);
    if (dish.pieces) checkPieces(*dish.pieces, "/pieces", faults);
    checkServing(dish, {}, faults);
    std::map<StepId, std::string> steps;
    for (std::size_t s = 0; s < dish.method.size(); ++s)
        claimId(steps, dish.method[s].id, joinPath("/method", s) + "/id", faults);
    const std::string own = dish.id.text() + "/";
    for (std::size_t s = 0; s < dish.method.size(); ++s) {
        const auto& after = dish.method[s].after;
        for (std::size_t k = 0; k < after.size(); ++k) {
            const std::string& name = after[k].step.text();
            if (name.starts_with(own) && !steps.contains(StepId(name.substr(own.size()))))
                faults.push_back({Fault::What::Dangling,
                                  joinPath(joinPath("/method", s) + "/after", k) + "/step",
                                  inQuotes(name),
                                  "/method",
                                  {}});
        }
    }
}

}  // namespace cinder::event
