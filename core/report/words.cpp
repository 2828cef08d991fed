#include "report/style.h"

namespace cinder::report {

std::string word(event::Allergen allergen, const Style& style) {
    using event::Allergen;
    switch (allergen) {
        case Allergen::Milk:
            return style.say("milk", "leche");
        case Allergen::Egg:
            return style.say("egg", "huevo");
        case Allergen::Fish:
            return style.say("fish", "pescado");
        case Allergen::Crustaceans:
            return style.say("crustacean shellfish", "crustáceos");
        case Allergen::TreeNuts:
            return style.say("tree nuts", "frutos secos de árbol");
        case Allergen::Peanuts:
            return style.say("peanuts", "cacahuates");
        case Allergen::Wheat:
            return style.say("wheat", "trigo");
        case Allergen::Soybeans:
            return style.say("soybeans", "soya");
        case Allergen::Sesame:
            return style.say("sesame", "ajonjolí");
        case Allergen::Gluten:
            return style.say("gluten", "gluten");
        case Allergen::Celery:
            return style.say("celery", "apio");
        case Allergen::Mustard:
            return style.say("mustard", "mostaza");
        case Allergen::Sulphites:
            return style.say("sulphites", "sulfitos");
        case Allergen::Lupin:
            return style.say("lupin", "altramuz");
        case Allergen::Molluscs:
            return style.say("molluscs", "moluscos");
    }
    return {};
}

std::string word(event::Diet diet, const Style& style) {
    using event::Diet;
    switch (diet) {
        case Diet::Vegetarian:
            return style.say("vegetarian", "vegetariano");
        case Diet::Vegan:
            return style.say("vegan", "vegano");
        case Diet::GlutenFree:
            return style.say("without gluten", "sin gluten");
        case Diet::DairyFree:
            return style.say("without dairy", "sin lácteos");
        case Diet::Halal:
            return style.say("halal", "halal");
        case Diet::Kosher:
            return style.say("kosher", "kósher");
    }
    return {};
}

std::string word(event::Vessel vessel, const Style& style) {
    using event::Vessel;
    switch (vessel) {
        case Vessel::Chafer:
            return style.say("chafer", "calientaplatos");
        case Vessel::ColdPan:
            return style.say("pan on ice", "charola sobre hielo");
        case Vessel::Bowl:
            return style.say("bowl", "tazón");
        case Vessel::Basket:
            return style.say("basket", "canasta");
        case Vessel::Board:
            return style.say("board", "tabla");
        case Vessel::SauceBowl:
            return style.say("sauce bowl", "salsera");
    }
    return {};
}

std::string word(event::Keeping keeping, const Style& style) {
    using event::Keeping;
    switch (keeping) {
        case Keeping::Chill:
            return style.say("cool, then keep cold", "enfriar y guardar frío");
        case Keeping::Cold:
            return style.say("keep cold", "guardar frío");
        case Keeping::HoldHot:
            return style.say("hold hot", "mantener caliente");
        case Keeping::Dry:
            return style.say("keep dry", "guardar en seco");
    }
    return {};
}

std::string word(quantity::Ride ride, const Style& style) {
    using quantity::Ride;
    switch (ride) {
        case Ride::ColdBoxReady:
            return style.say("Cold box, ready food", "Hielera, comida lista");
        case Ride::ColdBoxRaw:
            return style.say("Cold box, raw food only", "Hielera, solo crudo");
        case Ride::HotBox:
            return style.say("Hot box", "Caja caliente");
        case Ride::FoodCrate:
            return style.say("Dry food crate", "Caja de comida seca");
        case Ride::LineCrate:
            return style.say("Line crates", "Cajas de la línea");
        case Ride::KitCrate:
            return style.say("Kit crate", "Caja de herramientas");
        case Ride::FireCrate:
            return style.say("Fire crate, away from food", "Caja del fuego, lejos de la comida");
        case Ride::Floor:
            return style.say("On the floor", "En el piso");
    }
    return {};
}

}  // namespace cinder::report
