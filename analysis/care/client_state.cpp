#include "care/client_state.h"

#include <algorithm>
#include <limits>

#include "care/history.h"

namespace kempt::care {
namespace {
constexpr double endless = std::numeric_limits<double>::infinity();
}

GrowthRate rate_of(const ClientState& state) {
    return state.own_rate ? *state.own_rate : expected_rate(state.group);
}

Span meet(const Span& a, const Span& b) {
    return {std::max(a.from_mm, b.from_mm), std::min(a.to_mm, b.to_mm)};
}

Span span_of(Part part, const std::optional<double>& length_mm) {
    if (!length_mm) return part == Part::roots ? Span{0, roots_mm} : Span{roots_mm, endless};
    const double ends_from = *length_mm - std::min(ends_mm, ends_share * *length_mm);
    const double roots_to = std::min(roots_mm, ends_from);
    if (part == Part::roots) return {0, roots_to};
    if (part == Part::mid_shaft) return {roots_to, ends_from};
    return {ends_from, *length_mm};
}

const PastService* grown_from(Kind kind, const ClientState& state) {
    if (const Family& texture = *find_family("texture"); belongs(texture, kind)) return last_at_roots(state, texture);
    const PastService* last = nullptr;
    for (const char* name : {"oxidative", "henna", "metallic-dye"}) {
        const PastService* stays = last_at_roots(state, *find_family(name));
        if (stays && (!last || stays->day > last->day)) last = stays;
    }
    for (const char* name : {"oxidative", "henna", "metallic-dye"})
        if (belongs(*find_family(name), kind)) return last;
    const Family& colour = *find_family("colour");
    return belongs(colour, kind) ? last_at_roots(state, colour) : nullptr;
}

Span span_of(const PlannedService& service, const ClientState& state) {
    const double length = state.length_mm.value_or(endless);
    if (!service.new_growth_only) return {service.from_mm, std::min(length, service.to_mm.value_or(endless))};
    const PastService* before = grown_from(service.kind, state);
    const double line = before ? new_growth_since(*before, state.today, rate_of(state)).low : roots_mm;
    return {0, std::min(length, line)};
}

}  // namespace kempt::care
