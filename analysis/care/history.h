// The record moves outward with growth: what has this place of today's hair been through?
#pragma once

#include <optional>
#include <vector>

#include "care/client_state.h"

namespace kempt::care {

enum class Truth { no, yes, unknown };

// Where one service of the record lies on today's hair. The rate of growth is known as mean and SD only, so there is a
// stretch that it surely covers and one that it perhaps covers (95 % range of the rate). Both may be empty: cut off.
struct Carried {
    std::size_t service = 0;  // index into the record
    GrowthRange moved_mm;     // how far it has grown out since
    Span surely, perhaps;
};

// Every chemical, colouring, treating and styling service, in the record's order; cuts are not listed but shorten what
// lies beyond the length they left. Services after `today` are left out; an unsure one covers nothing surely.
[[nodiscard]] std::vector<Carried> carry(const ChemicalHistory& history, Day today, const GrowthRate& rate,
                                         const std::optional<double>& length_mm = {});

struct Passed {
    std::size_t service = 0;
    Truth truth = Truth::unknown;  // yes or unknown; what surely missed the place is not listed
};
// What the hair at mm_from_scalp has been through, newest first. Beyond the cut length there is no hair: an empty list.
[[nodiscard]] std::vector<Passed> what_has_this_hair_been_through(const ChemicalHistory& history, double mm_from_scalp,
                                                                  Day today, const GrowthRate& rate);

// New growth since that service: from its line of demarcation where one was measured, else from the rate.
[[nodiscard]] GrowthRange new_growth_since(const PastService& service, Day today, const GrowthRate& rate);

// Has any hair of this span (and of these head sections; empty: any) been through the family? A hair that grew out
// before the record is complete may have been through anything: unknown.
[[nodiscard]] Truth has_been_through(const ClientState& state, const Family& family, const Span& span,
                                     const std::vector<std::string>& sections = {});

// Days since the family was last put on hair of this span. None in a complete record: absent.
struct DaysSince {
    bool absent = false;         // surely never
    bool may_be_absent = false;  // perhaps never
    double low = 0, high = 0;    // high may be infinity
};
[[nodiscard]] DaysSince days_since(const ClientState& state, const Family& family, const Span& span,
                                   const std::vector<std::string>& sections = {});

// The last service of the family on hair that is still there, of those that were surely done; null when the record
// holds none.
[[nodiscard]] const PastService* last_of(const ClientState& state, const Family& family);
// The same of those that began at the roots (within roots_mm): new growth is counted from one of them.
[[nodiscard]] const PastService* last_at_roots(const ClientState& state, const Family& family);

}  // namespace kempt::care
