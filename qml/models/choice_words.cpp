// The words of the choices an event offers; those that paper needs too are in core/report.

#include "fields.h"

namespace cinder::face {

QString ChoiceWords::of(event::Course course) {
    switch (course) {
        case event::Course::Cold:
            return tr("Cold dishes");
        case event::Course::Bread:
            return tr("Bread");
        case event::Course::Side:
            return tr("Hot sides");
        case event::Course::Main:
            return tr("Mains");
        case event::Course::Sauce:
            return tr("Sauces");
    }
    return {};
}

QString ChoiceWords::of(event::Food food) {
    switch (food) {
        case event::Food::WholeMeat:
            return tr("Whole meat");
        case event::Food::GroundMeat:
            return tr("Ground, injected, tenderized");
        case event::Food::Poultry:
            return tr("Poultry, game, stuffed");
        case event::Food::Fish:
            return tr("Fish");
        case event::Food::Egg:
            return tr("Egg");
        case event::Food::Plant:
            return tr("Plants");
        case event::Food::Dairy:
            return tr("Dairy");
        case event::Food::Grain:
            return tr("Grain");
    }
    return {};
}

QString ChoiceWords::of(event::Meat meat) {
    switch (meat) {
        case event::Meat::Beef:
            return tr("Beef");
        case event::Meat::Lamb:
            return tr("Lamb");
        case event::Meat::Pork:
            return tr("Pork");
    }
    return {};
}

QString ChoiceWords::of(event::Doneness doneness) {
    switch (doneness) {
        case event::Doneness::Rare:
            return tr("Rare");
        case event::Doneness::MediumRare:
            return tr("Medium rare");
        case event::Doneness::Medium:
            return tr("Medium");
        case event::Doneness::MediumWell:
            return tr("Medium well");
        case event::Doneness::WellDone:
            return tr("Well done");
    }
    return {};
}

QString ChoiceWords::of(event::StepKind kind) {
    using event::StepKind;
    switch (kind) {
        case StepKind::SetUp:
            return tr("Set up");
        case StepKind::Fire:
            return tr("Make fire");
        case StepKind::Prep:
            return tr("Prepare");
        case StepKind::Cook:
            return tr("Cook on the grate");
        case StepKind::Rest:
            return tr("Rest");
        case StepKind::Slice:
            return tr("Slice");
        case StepKind::Finish:
            return tr("Finish");
        case StepKind::Warm:
            return tr("Warm");
        case StepKind::Hold:
            return tr("Hold");
        case StepKind::Load:
            return tr("Load the line");
        case StepKind::Serve:
            return tr("Serve");
        case StepKind::Strike:
            return tr("Strike");
        case StepKind::Check:
            return tr("Check");
    }
    return {};
}

QString ChoiceWords::of(event::HandsMode mode) {
    switch (mode) {
        case event::HandsMode::None:
            return tr("Not at all");
        case event::HandsMode::Whole:
            return tr("All the time");
        case event::HandsMode::Start:
            return tr("At the start");
        case event::HandsMode::Tended:
            return tr("At every turn");
    }
    return {};
}

QString ChoiceWords::of(event::EquipmentKind kind) {
    using event::EquipmentKind;
    switch (kind) {
        case EquipmentKind::HotBox:
            return tr("Hot box shelf");
        case EquipmentKind::ColdBox:
            return tr("Cold box");
        case EquipmentKind::Chafer:
            return tr("Chafer place");
        case EquipmentKind::Burner:
            return tr("Burner");
        case EquipmentKind::HandWash:
            return tr("Hand-wash stand");
        case EquipmentKind::Extinguisher:
            return tr("Extinguisher");
        case EquipmentKind::Thermometer:
            return tr("Thermometer");
        case EquipmentKind::WorkTop:
            return tr("Work top");
        case EquipmentKind::Other:
            return tr("Something else");
    }
    return {};
}

QString ChoiceWords::of(event::PanSize size) {
    switch (size) {
        case event::PanSize::Full:
            return tr("Full");
        case event::PanSize::TwoThirds:
            return tr("Two thirds");
        case event::PanSize::Half:
            return tr("Half");
        case event::PanSize::Third:
            return tr("Third");
        case event::PanSize::Quarter:
            return tr("Quarter");
        case event::PanSize::Sixth:
            return tr("Sixth");
    }
    return {};
}

QString ChoiceWords::of(event::PanDepth depth) {
    switch (depth) {
        case event::PanDepth::Shallow:
            return tr("2½ in");
        case event::PanDepth::Medium:
            return tr("4 in");
        case event::PanDepth::Deep:
            return tr("6 in");
    }
    return {};
}

}  // namespace cinder::face
