#include "care/coverage.h"

#include <algorithm>

namespace kempt::care {
namespace {

// What is left of the spans when one is taken out.
std::vector<Span> without(const std::vector<Span>& spans, const Span& out) {
    std::vector<Span> left;
    for (const Span& span : spans) {
        if (meet(span, out).empty()) {
            left.push_back(span);
            continue;
        }
        for (const Span& piece : {Span{span.from_mm, out.from_mm}, Span{out.to_mm, span.to_mm}})
            if (!piece.empty()) left.push_back(piece);
    }
    return left;
}

void by_part(const std::vector<Span>& spans, const ClientState& state, std::vector<Stretch>& into) {
    for (const Part part : {Part::roots, Part::mid_shaft, Part::ends}) {
        if (part == Part::ends && !state.length_mm) continue;
        for (const Span& span : spans)
            if (const Span piece = meet(span, span_of(part, state.length_mm)); !piece.empty())
                into.push_back({part, piece});
    }
}

}  // namespace

Coverage coverage_of(const PlannedService& service, const ClientState& state) {
    const Family& texture = *find_family("texture");
    const Span planned = span_of(service, state);
    Coverage coverage;
    if (planned.empty()) return coverage;
    std::vector<Span> on = {planned};
    if (belongs(texture, service.kind)) {
        for (const Carried& carried : carry(state.history, state.today, rate_of(state), state.length_mm)) {
            if (!belongs(texture, state.history.services[carried.service].kind) || carried.perhaps.empty()) continue;
            on = without(on, carried.perhaps);
        }
        std::vector<Span> off = {planned};
        for (const Span& span : on) off = without(off, span);
        by_part(off, state, coverage.keep_off);
        coverage.unsure = std::any_of(on.begin(), on.end(), [&](const Span& span) {
            return has_been_through(state, texture, span) == Truth::unknown;
        });
    }
    // A retouch of which nobody knows what it grows away from is only taken as the roots.
    if (service.new_growth_only && !grown_from(service.kind, state)) coverage.unsure = true;
    by_part(on, state, coverage.put_on);
    return coverage;
}

}  // namespace kempt::care
