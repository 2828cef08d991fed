#include "event/words.h"

namespace cinder::event {

std::span<const Word<StepKind>> wordsOf(StepKind) {
    static constexpr std::array<Word<StepKind>, 13> kWords{{{StepKind::SetUp, "setUp"},
                                                            {StepKind::Fire, "fire"},
                                                            {StepKind::Prep, "prep"},
                                                            {StepKind::Cook, "cook"},
                                                            {StepKind::Rest, "rest"},
                                                            {StepKind::Slice, "slice"},
                                                            {StepKind::Finish, "finish"},
                                                            {StepKind::Warm, "warm"},
                                                            {StepKind::Hold, "hold"},
                                                            {StepKind::Load, "load"},
                                                            {StepKind::Serve, "serve"},
                                                            {StepKind::Strike, "strike"},
                                                            {StepKind::Check, "check"}}};
    return kWords;
}

std::span<const Word<StepEnd>> wordsOf(StepEnd) {
    static constexpr std::array<Word<StepEnd>, 2> kWords{
        {{StepEnd::Start, "start"}, {StepEnd::Finish, "finish"}}};
    return kWords;
}

std::span<const Word<StepLean>> wordsOf(StepLean) {
    static constexpr std::array<Word<StepLean>, 2> kWords{
        {{StepLean::Early, "early"}, {StepLean::Late, "late"}}};
    return kWords;
}

std::span<const Word<Moment::Anchor>> wordsOf(Moment::Anchor) {
    static constexpr std::array<Word<Moment::Anchor>, 2> kWords{
        {{Moment::Anchor::Serve, "serve"}, {Moment::Anchor::Arrival, "arrival"}}};
    return kWords;
}

std::span<const Word<HandsMode>> wordsOf(HandsMode) {
    static constexpr std::array<Word<HandsMode>, 4> kWords{{{HandsMode::None, "none"},
                                                            {HandsMode::Whole, "whole"},
                                                            {HandsMode::Start, "start"},
                                                            {HandsMode::Tended, "tended"}}};
    return kWords;
}

std::span<const Word<EquipmentKind>> wordsOf(EquipmentKind) {
    static constexpr std::array<Word<EquipmentKind>, 9> kWords{
        {{EquipmentKind::HotBox, "hotBox"},
         {EquipmentKind::ColdBox, "coldBox"},
         {EquipmentKind::Chafer, "chafer"},
         {EquipmentKind::Burner, "burner"},
         {EquipmentKind::HandWash, "handWash"},
         {EquipmentKind::Extinguisher, "extinguisher"},
         {EquipmentKind::Thermometer, "thermometer"},
         {EquipmentKind::WorkTop, "workTop"},
         {EquipmentKind::Other, "other"}}};
    return kWords;
}

std::span<const Word<Diet>> wordsOf(Diet) {
    static constexpr std::array<Word<Diet>, 6> kWords{{{Diet::Vegetarian, "vegetarian"},
                                                       {Diet::Vegan, "vegan"},
                                                       {Diet::GlutenFree, "glutenFree"},
                                                       {Diet::DairyFree, "dairyFree"},
                                                       {Diet::Halal, "halal"},
                                                       {Diet::Kosher, "kosher"}}};
    return kWords;
}

std::span<const Word<Allergen>> wordsOf(Allergen) {
    static constexpr std::array<Word<Allergen>, 15> kWords{{{Allergen::Milk, "milk"},
                                                            {Allergen::Egg, "egg"},
                                                            {Allergen::Fish, "fish"},
                                                            {Allergen::Crustaceans, "crustaceans"},
                                                            {Allergen::TreeNuts, "treeNuts"},
                                                            {Allergen::Peanuts, "peanuts"},
                                                            {Allergen::Wheat, "wheat"},
                                                            {Allergen::Soybeans, "soybeans"},
                                                            {Allergen::Sesame, "sesame"},
                                                            {Allergen::Gluten, "gluten"},
                                                            {Allergen::Celery, "celery"},
                                                            {Allergen::Mustard, "mustard"},
                                                            {Allergen::Sulphites, "sulphites"},
                                                            {Allergen::Lupin, "lupin"},
                                                            {Allergen::Molluscs, "molluscs"}}};
    return kWords;
}

std::span<const Word<Course>> wordsOf(Course) {
    static constexpr std::array<Word<Course>, 5> kWords{{{Course::Cold, "cold"},
                                                         {Course::Bread, "bread"},
                                                         {Course::Side, "side"},
                                                         {Course::Main, "main"},
                                                         {Course::Sauce, "sauce"}}};
    return kWords;
}

std::span<const Word<Food>> wordsOf(Food) {
    static constexpr std::array<Word<Food>, 8> kWords{{{Food::WholeMeat, "wholeMeat"},
                                                       {Food::GroundMeat, "groundMeat"},
                                                       {Food::Poultry, "poultry"},
                                                       {Food::Fish, "fish"},
                                                       {Food::Egg, "egg"},
                                                       {Food::Plant, "plant"},
                                                       {Food::Dairy, "dairy"},
                                                       {Food::Grain, "grain"}}};
    return kWords;
}

std::span<const Word<Meat>> wordsOf(Meat) {
    static constexpr std::array<Word<Meat>, 3> kWords{
        {{Meat::Beef, "beef"}, {Meat::Lamb, "lamb"}, {Meat::Pork, "pork"}}};
    return kWords;
}

std::span<const Word<Doneness>> wordsOf(Doneness) {
    static constexpr std::array<Word<Doneness>, 5> kWords{{{Doneness::Rare, "rare"},
                                                           {Doneness::MediumRare, "mediumRare"},
                                                           {Doneness::Medium, "medium"},
                                                           {Doneness::MediumWell, "mediumWell"},
                                                           {Doneness::WellDone, "wellDone"}}};
    return kWords;
}

std::span<const Word<Vessel>> wordsOf(Vessel) {
    static constexpr std::array<Word<Vessel>, 6> kWords{{{Vessel::Chafer, "chafer"},
                                                         {Vessel::ColdPan, "coldPan"},
                                                         {Vessel::Bowl, "bowl"},
                                                         {Vessel::Basket, "basket"},
                                                         {Vessel::Board, "board"},
                                                         {Vessel::SauceBowl, "sauceBowl"}}};
    return kWords;
}

std::span<const Word<PanSize>> wordsOf(PanSize) {
    static constexpr std::array<Word<PanSize>, 6> kWords{{{PanSize::Full, "full"},
                                                          {PanSize::TwoThirds, "twoThirds"},
                                                          {PanSize::Half, "half"},
                                                          {PanSize::Third, "third"},
                                                          {PanSize::Quarter, "quarter"},
                                                          {PanSize::Sixth, "sixth"}}};
    return kWords;
}

std::span<const Word<PanDepth>> wordsOf(PanDepth) {
    static constexpr std::array<Word<PanDepth>, 3> kWords{
        {{PanDepth::Shallow, "shallow"}, {PanDepth::Medium, "medium"}, {PanDepth::Deep, "deep"}}};
    return kWords;
}

std::span<const Word<Keeping>> wordsOf(Keeping) {
    static constexpr std::array<Word<Keeping>, 4> kWords{{{Keeping::Chill, "chill"},
                                                          {Keeping::Cold, "cold"},
                                                          {Keeping::HoldHot, "holdHot"},
                                                          {Keeping::Dry, "dry"}}};
    return kWords;
}

}  // namespace cinder::event
