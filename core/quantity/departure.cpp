#include "quantity/departure.h"

#include "quantity/worked.h"

namespace cinder::quantity {

namespace {

double minutes(Duration span) {
    return static_cast<double>(span.count()) / 60000.0;
}

}  // namespace

std::optional<Departure> reckonDeparture(Tally& tally, std::optional<Instant> arrival) {
    const event::Event& event = tally.event();
    if (event.site.arrival) arrival = event.site.arrival->at;
    if (!arrival) tally.missing("/site/arrival");
    if (!event.site.travel) tally.missing("/site/travelMinutes");
    const bool hasBuffer = event.quantities && event.quantities->buffer;
    if (!hasBuffer) tally.missing("/quantities/bufferMinutes");
    if (!arrival || !event.site.travel || !hasBuffer) return std::nullopt;

    const auto field = [](const char* english, const char* spanish, Duration span,
                          std::string path) {
        return Tally::field(both(english, spanish), {minutes(span), Unit::Minutes},
                            std::move(path));
    };
    const Duration ahead = event.serve.at - *arrival;
    const Duration travel = *event.site.travel;
    const Duration buffer = *event.quantities->buffer;
    Figure figure;
    figure.key = "leave-by";
    figure.name = both("Leave before the bell", "Salir antes de la campana");
    figure.amount = {minutes(ahead + travel + buffer), Unit::Minutes};
    figure.formula = both("arrival + travel + buffer", "llegada + viaje + margen");
    figure.worked = sumOf(3);
    figure.inputs = {
        field("Arrival before the bell", "Llegada antes de la campana", ahead, "/site/arrival"),
        field("Travel", "Viaje", travel, "/site/travelMinutes"),
        field("Kept for what goes wrong", "Margen para imprevistos", buffer,
              "/quantities/bufferMinutes")};
    figure = tally.reckoned(std::move(figure));
    const Duration before{static_cast<std::int64_t>(figure.amount.value * 60000.0)};
    return Departure{event.serve.at - before, std::move(figure)};
}

}  // namespace cinder::quantity
