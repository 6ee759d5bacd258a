#include "care/history.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kempt::care {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();
constexpr double z95 = 1.959964;

GrowthRange growth_in(double days, const GrowthRate& rate) {
    const double mm = std::max(0.0, days) / 1000;
    return {rate.um_per_day * mm, std::max(0.0, rate.um_per_day - z95 * rate.sd_um_per_day) * mm,
            (rate.um_per_day + z95 * rate.sd_um_per_day) * mm};
}

// Today's length of hair as cuts and the tape say: surely no shorter than low, no longer than high.
struct Length {
    double low = endless, high = endless;
};
Length length_today(const ChemicalHistory& history, Day today, const GrowthRate& rate,
                    const std::optional<double>& measured_mm) {
    if (measured_mm) return {*measured_mm, *measured_mm};
    Length length;
    for (const PastService& cut : history.services) {
        // A cut of some sections says nothing of the others.
        if (cut.kind != Kind::cut || cut.unsure || !cut.to_mm || cut.day > today || !cut.sections.empty()) continue;
        const GrowthRange grown = growth_in(today - cut.day, rate);
        length.low = std::min(length.low, *cut.to_mm + grown.low);
        length.high = std::min(length.high, *cut.to_mm + grown.high);
    }
    return length;
}

// Empty sections mean the whole head.
bool share_a_section(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    if (a.empty() || b.empty()) return true;
    return std::any_of(a.begin(), a.end(),
                       [&](const std::string& name) { return std::find(b.begin(), b.end(), name) != b.end(); });
}

// Does the complete part of the record reach back to when the oldest hair of this span left the scalp?
bool record_covers(const ClientState& state, const Span& span) {
    const auto& since = state.history.complete_since;
    if (!since) return false;
    if (*since <= whole_life) return true;
    double oldest = span.to_mm;
    const Length length = length_today(state.history, state.today, rate_of(state), state.length_mm);
    oldest = std::min(oldest, length.high);
    return oldest <= growth_in(state.today - *since, rate_of(state)).low;
}

}  // namespace

GrowthRange new_growth_since(const PastService& service, Day today, const GrowthRate& rate) {
    if (!service.line_mm || service.line_day > today) return growth_in(today - service.day, rate);
    const GrowthRange after = growth_in(today - service.line_day, rate);
    return {service.line_mm->value + after.value, service.line_mm->low + after.low, service.line_mm->high + after.high};
}

std::vector<Carried> carry(const ChemicalHistory& history, Day today, const GrowthRate& rate,
                           const std::optional<double>& length_mm) {
    const Length length = length_today(history, today, rate, length_mm);
    std::vector<Carried> all;
    for (std::size_t i = 0; i < history.services.size(); ++i) {
        const PastService& service = history.services[i];
        if (service.kind == Kind::cut || service.day > today) continue;
        Carried carried{i, new_growth_since(service, today, rate), {}, {}};
        // A measured line is where the treated hair begins: the place that was `from` on that day.
        const double from = service.line_mm ? 0 : service.from_mm;
        const double to = service.to_mm ? *service.to_mm - (service.from_mm - from) : endless;
        if (!service.unsure)
            carried.surely = {from + carried.moved_mm.high, std::min(to + carried.moved_mm.low, length.low)};
        carried.perhaps = {from + carried.moved_mm.low, std::min(to + carried.moved_mm.high, length.high)};
        all.push_back(carried);
    }
    return all;
}

std::vector<Passed> what_has_this_hair_been_through(const ChemicalHistory& history, double mm_from_scalp, Day today,
                                                    const GrowthRate& rate) {
    std::vector<Passed> passed;
    if (!(mm_from_scalp >= 0) || mm_from_scalp > length_today(history, today, rate, {}).high) return passed;
    for (const Carried& carried : carry(history, today, rate)) {
        const auto holds = [&](const Span& span) {
            return mm_from_scalp >= span.from_mm && mm_from_scalp <= span.to_mm;
        };
        if (holds(carried.surely))
            passed.push_back({carried.service, Truth::yes});
        else if (holds(carried.perhaps))
            passed.push_back({carried.service, Truth::unknown});
    }
    std::stable_sort(passed.begin(), passed.end(), [&](const Passed& a, const Passed& b) {
        return history.services[a.service].day > history.services[b.service].day;
    });
    return passed;
}

Truth has_been_through(const ClientState& state, const Family& family, const Span& span,
                       const std::vector<std::string>& sections) {
    if (span.empty()) return Truth::no;
    bool perhaps = !record_covers(state, span);
    for (const Carried& carried : carry(state.history, state.today, rate_of(state), state.length_mm)) {
        const PastService& service = state.history.services[carried.service];
        if (!belongs(family, service.kind) || !share_a_section(service.sections, sections)) continue;
        if (!meet(carried.surely, span).empty()) return Truth::yes;
        perhaps = perhaps || !meet(carried.perhaps, span).empty();
    }
    return perhaps ? Truth::unknown : Truth::no;
}

DaysSince days_since(const ClientState& state, const Family& family, const Span& span,
                     const std::vector<std::string>& sections) {
    if (span.empty()) return {true, false, 0, 0};
    double sure = endless, possible = endless;
    for (const Carried& carried : carry(state.history, state.today, rate_of(state), state.length_mm)) {
        const PastService& service = state.history.services[carried.service];
        if (!belongs(family, service.kind) || !share_a_section(service.sections, sections)) continue;
        const double days = state.today - service.day;
        if (!meet(carried.surely, span).empty()) sure = std::min(sure, days);
        if (!meet(carried.perhaps, span).empty()) possible = std::min(possible, days);
    }
    // A service that the record does not hold can only lie before its complete part.
    if (!record_covers(state, span)) {
        const double unrecorded =
            state.history.complete_since ? std::max(0, state.today - *state.history.complete_since) : 0;
        possible = std::min(possible, unrecorded);
    }
    if (possible == endless && sure == endless) return {true, false, 0, 0};
    return {false, sure == endless, std::min(possible, sure), sure};
}

namespace {
const PastService* last_from(const ClientState& state, const Family& family, double most_from_mm) {
    const PastService* last = nullptr;
    for (const Carried& carried : carry(state.history, state.today, rate_of(state), state.length_mm)) {
        const PastService& service = state.history.services[carried.service];
        if (service.unsure || !belongs(family, service.kind) || carried.perhaps.empty() ||
            service.from_mm > most_from_mm)
            continue;
        if (!last || service.day > last->day) last = &service;
    }
    return last;
}
}  // namespace

const PastService* last_of(const ClientState& state, const Family& family) {
    return last_from(state, family, endless);
}

const PastService* last_at_roots(const ClientState& state, const Family& family) {
    return last_from(state, family, roots_mm);
}

}  // namespace kempt::care
