/// Feeds arbitrary bytes to the event reader. Whatever comes in, it must answer; whatever it takes
/// for an event must be free of faults, come back unchanged from writing, be buildable, and be
/// reckoned.

#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "event/json.h"
#include "plan/build/build.h"
#include "quantity/build/reckon.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view document(reinterpret_cast<const char*>(bytes), size);
    const auto event = cinder::event::parse(document);
    if (!event) {
        for (const auto& fault : event.error())
            if (cinder::event::describe(fault).empty()) std::abort();
        if (event.error().empty()) std::abort();
        return 0;
    }
    if (!cinder::event::findFaults(*event).empty()) std::abort();
    if (cinder::event::parse(cinder::event::write(*event)) != event) std::abort();
    const auto all = cinder::quantity::reckon(*event);
    if (!all.dishes.empty() && all.dishes.size() != event->menu.size()) std::abort();
    const auto problem = cinder::plan::build(*event);
    if (!problem && problem.error().empty()) std::abort();
    return 0;
}
