// The next dates as ranges: retouch, trim, photographs, patch test.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "care/client_state.h"

namespace kempt::care {

enum class DateSort { retouch, trim, photographs, patch_test };
[[nodiscard]] std::string_view word_of(DateSort sort);  // "patch test"

struct DateRange {
    DateSort sort = DateSort::retouch;
    Day from = 0, to = 0;         // both days included; may lie before today when it is overdue
    std::optional<Day> expected;  // inside, where one day is likelier than others
    std::string reason, source;   // full sentence; source as the rules print it
};

struct DateOptions {
    // New growth at which a retouch is usual: 12 to 25 mm (common practice, no source); not before 8 weeks
    // (dermatologists' public tips: every two to three months).
    double retouch_from_mm = 12;
    int retouch_from_weeks = 8;
    // The edges' readings look at the first 10 mm: after that much growth the band holds only hair grown since. Not
    // before 4 weeks (own choice: less growth than that is near what the line can be drawn to).
    double photographs_mm = 10;
    int photographs_from_weeks = 4;
    // Common practice, no source.
    int trim_from_weeks = 8, trim_to_weeks = 12;
    int weak_trim_from_weeks = 6, weak_trim_to_weeks = 8;
    int sound_trim_from_weeks = 12, sound_trim_to_weeks = 16;
    // On the skin for 48 hours (FDA's consumer pages on hair dyes); not older than a week (common practice).
    int patch_test_days = 2, patch_test_oldest_days = 7;
};

// In the order of DateSort. Retouch only after a recorded straightening or perm whose line is still on the hair; trim
// only after a recorded cut. Photographs count from `photographed` (the last visit with photos). A patch test is due
// before `dye_day`, the day of a dye that is being planned.
[[nodiscard]] std::vector<DateRange> next_dates(const ClientState& state, const std::optional<Day>& photographed,
                                                const std::optional<Day>& dye_day, const DateOptions& options = {});

// The days on which new growth reaches mm: fast, expected and slow growth at 95 %, counted from the service or from its
// measured line; where the line was beyond mm already, the day on which it passed there. Nullopt: the rate is too
// uncertain.
struct GrowthDays {
    Day first = 0, expected = 0, last = 0;
};
[[nodiscard]] std::optional<GrowthDays> days_of_growth(const PastService& service, double mm, const GrowthRate& rate);

}  // namespace kempt::care
