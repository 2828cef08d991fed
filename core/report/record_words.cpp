#include "report/record_sheet.h"

namespace cinder::report {

std::string word(safety::Purpose purpose, const Style& style) {
    using safety::Purpose;
    switch (purpose) {
        case Purpose::ArriveCold:
            return style.say("arrived cold", "llegó frío");
        case Purpose::ArriveHot:
            return style.say("arrived hot", "llegó caliente");
        case Purpose::Cook:
            return style.say("cooked", "cocido");
        case Purpose::Reheat:
            return style.say("reheated", "recalentado");
        case Purpose::ReheatPacked:
            return style.say("heated from the pack", "calentado del paquete");
        case Purpose::HoldHot:
            return style.say("held hot", "mantenido caliente");
        case Purpose::HoldCold:
            return style.say("held cold", "mantenido frío");
        case Purpose::Cooling:
            return style.say("cooling", "enfriando");
    }
    return {};
}

std::string word(safety::Action action, const Style& style) {
    using safety::Action;
    switch (action) {
        case Action::CookOn:
            return style.say("cook on", "dejar más tiempo al fuego");
        case Action::Reheat:
            return style.say("reheat", "recalentar");
        case Action::Chill:
            return style.say("chill", "enfriar");
        case Action::Discard:
            return style.say("discard", "desechar");
    }
    return {};
}

std::string word(safety::Leftover leftover, const Style& style) {
    using safety::Leftover;
    switch (leftover) {
        case Leftover::Keep:
            return style.say("keep cold", "guardar frío");
        case Leftover::Cool:
            return style.say("cool, then keep", "enfriar y guardar");
        case Leftover::Discard:
            return style.say("discard", "desechar");
    }
    return {};
}

std::string word(safety::Lost::Why why, const Style& style) {
    using Why = safety::Lost::Why;
    switch (why) {
        case Why::Gap:
            return style.say("not measured for too long", "demasiado tiempo sin medir");
        case Why::OutOfControl:
            return style.say("out of limit for too long", "demasiado tiempo fuera del límite");
        case Why::TimeOver:
            return style.say("the time is over", "se acabó el tiempo");
        case Why::TooWarm:
            return style.say("too warm under time control",
                             "demasiado tibio bajo control de tiempo");
        case Why::CoolingSlow:
            return style.say("cooled too slowly", "se enfrió demasiado lento");
        case Why::CookUnrecorded:
            return style.say("no reading shows it was cooked",
                             "ninguna lectura muestra la cocción");
        case Why::CoolingUnrecorded:
            return style.say("no record of the cooling", "sin registro del enfriado");
        case Why::ReheatUnrecorded:
            return style.say("no record of the reheating", "sin registro del recalentado");
    }
    return {};
}

std::string word(safety::FireItem item, const Style& style) {
    using safety::FireItem;
    switch (item) {
        case FireItem::Extinguisher:
            return style.say("extinguisher at hand", "extintor a la mano");
        case FireItem::Clearance:
            return style.say("clear of everything that burns", "lejos de todo lo que arde");
        case FireItem::OpenAir:
            return style.say("in the open air", "al aire libre");
    }
    return {};
}

}  // namespace cinder::report
