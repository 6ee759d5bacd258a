#include "care/dates.h"

#include <algorithm>
#include <cmath>

#include "care/history.h"
#include "care/rules.h"

namespace kempt::care {
namespace {

Day whole_days(double weeks) {
    return static_cast<Day>(std::lround(7 * weeks));
}

std::optional<DateRange> retouch(const ClientState& state, const DateOptions& options) {
    const PastService* last = last_at_roots(state, *find_family("texture"));
    if (!last) return std::nullopt;
    const auto days = days_of_growth(*last, options.retouch_from_mm, rate_of(state));
    if (!days) return std::nullopt;
    const Day earliest = last->day + 7 * options.retouch_from_weeks;
    const auto clamp = [&](Day day) { return std::max(day, earliest); };
    return DateRange{
        DateSort::retouch,
        clamp(days->first),
        clamp(days->last),
        clamp(days->expected),
        "New growth since the last straightening or perm reaches what a retouch needs, and two months have "
        "passed.",
        "dermatologists' public tips on curled and relaxed hair; " + rate_of(state).source +
            "; the length of 12 mm common practice, no source"};
}

// Straightened, lightened or weak hair is trimmed sooner; hair that has been through nothing of the kind and sees no
// heat later.
std::optional<DateRange> trim(const ClientState& state, const DateOptions& options) {
    const PastService* cut = nullptr;
    for (const PastService& service : state.history.services)
        if (service.kind == Kind::cut && !service.unsure && service.day <= state.today &&
            (!cut || service.day > cut->day))
            cut = &service;
    if (!cut) return std::nullopt;
    const bool low_grade = std::any_of(state.grades.begin(), state.grades.end(), [](const Graded& grade) {
        return (grade.quality == "breakage" || grade.quality == "elasticity" || grade.quality == "porosity") &&
               grade.value <= 2;
    });
    const Span hair{0, state.length_mm.value_or(1e6)};
    const Truth straightened = has_been_through(state, *find_family("texture"), hair),
                lightened = has_been_through(state, *find_family("lightening"), hair);
    const bool no_heat = state.daily.heat && state.daily.heat->empty();
    int from = options.trim_from_weeks, to = options.trim_to_weeks;
    std::string what = "Ends are trimmed every two to three months.";
    if (low_grade || straightened == Truth::yes || lightened == Truth::yes) {
        from = options.weak_trim_from_weeks;
        to = options.weak_trim_to_weeks;
        what = "Straightened, lightened or weak hair is trimmed every six to eight weeks.";
    } else if (straightened == Truth::no && lightened == Truth::no && no_heat) {
        from = options.sound_trim_from_weeks;
        to = options.sound_trim_to_weeks;
        what = "Natural hair that sees no heat is trimmed every three to four months.";
    }
    return DateRange{DateSort::trim, cut->day + 7 * from, cut->day + 7 * to, {}, what, std::string(common_practice)};
}

std::optional<DateRange> photographs(const ClientState& state, Day photographed, const DateOptions& options) {
    PastService start;
    start.day = photographed;
    const auto days = days_of_growth(start, options.photographs_mm, rate_of(state));
    if (!days) return std::nullopt;
    const Day earliest = photographed + 7 * options.photographs_from_weeks;
    const auto clamp = [&](Day day) { return std::max(day, earliest); };
    return DateRange{DateSort::photographs,
                     clamp(days->first),
                     clamp(days->last),
                     clamp(days->expected),
                     "The first centimetre of the edges has then grown anew.",
                     rate_of(state).source};
}

}  // namespace

std::string_view word_of(DateSort sort) {
    constexpr std::string_view words[] = {"retouch", "trim", "photographs", "patch test"};
    return words[static_cast<std::size_t>(sort)];
}

std::optional<GrowthDays> days_of_growth(const PastService& service, double mm, const GrowthRate& rate) {
    GrowthRange missing{mm, mm, mm};
    Day start = service.day;
    if (service.line_mm) {
        missing = {std::max(0.0, mm - service.line_mm->value), std::max(0.0, mm - service.line_mm->high),
                   std::max(0.0, mm - service.line_mm->low)};
        start = service.line_day;
    }
    const auto weeks = weeks_of_growth(missing, rate);
    if (!weeks) return std::nullopt;
    if (service.line_mm && service.line_mm->value >= mm && service.line_day > service.day) {
        // Already beyond it when it was measured: it grew there evenly since the service.
        const GrowthRange& line = *service.line_mm;
        const auto passed = [&](double at_mm) {
            return service.day + static_cast<Day>(std::lround((service.line_day - service.day) * mm / at_mm));
        };
        return GrowthDays{passed(line.high), passed(line.value),
                          line.low >= mm ? passed(line.low) : start + whole_days(weeks->high)};
    }
    return GrowthDays{start + whole_days(weeks->low), start + whole_days(weeks->value),
                      start + whole_days(weeks->high)};
}

std::vector<DateRange> next_dates(const ClientState& state, const std::optional<Day>& photographed,
                                  const std::optional<Day>& dye_day, const DateOptions& options) {
    std::vector<DateRange> dates;
    const auto add = [&](const std::optional<DateRange>& date) {
        if (date) dates.push_back(*date);
    };
    add(retouch(state, options));
    add(trim(state, options));
    if (photographed) add(photographs(state, *photographed, options));
    if (dye_day)
        dates.push_back({DateSort::patch_test,
                         *dye_day - options.patch_test_oldest_days,
                         *dye_day - options.patch_test_days,
                         {},
                         "The patch test is put on at least 48 hours before the dye, and anew for every use.",
                         "US Food and Drug Administration, consumer pages on hair dyes (archived 2004 and 2012); the "
                         "rest common practice, no source"});
    return dates;
}

}  // namespace kempt::care
