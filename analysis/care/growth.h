// New growth in millimetres turned into weeks and back, as ranges: hair of one head grows faster than that of another.
#pragma once

#include <string>
#include <vector>

#include "core/result.h"

namespace kempt::care {

// As the studies name their groups (by descent); unknown: nobody asked, or mixed.
enum class HairGroup { african, asian, caucasian, unknown };

// How fast hair grows: mean and standard deviation between people (published), or of the estimate (a client's own).
struct GrowthRate {
    double um_per_day = 0, sd_um_per_day = 0;
    std::string source;
};

// One row of a published study.
struct PublishedRate {
    HairGroup group;
    double um_per_day, sd_um_per_day;
    const char* study;
};
// Loussouarn 2001 (Br J Dermatol 145:294-297, pages from memory) and Loussouarn, El Rawadi & Genain 2005 (Int J
// Dermatol 44(S1):6-9), phototrichograms, mean and SD between people.
[[nodiscard]] const std::vector<PublishedRate>& published_rates();

// What to expect of a client before her own rate is known: the 2005 row of her group (the larger study); unknown: the
// three 2005 groups mixed in equal parts, with the spread between them.
[[nodiscard]] GrowthRate expected_rate(HairGroup group);

// Rates of single people that can be believed, um/day. african: the range that the 2001 study prints (150-363); the
// others print none, so theirs reaches as many SD from the mean as that one does (2.43).
struct RateWindow {
    double least = 0, most = 0;
    [[nodiscard]] bool holds(double um_per_day) const { return um_per_day >= least && um_per_day <= most; }
};
[[nodiscard]] RateWindow plausible_rates(HairGroup group);

// A value with its 95 % range.
struct GrowthRange {
    double value = 0, low = 0, high = 0;
};

// Weeks that `new_growth_mm` (its 95 % range from the photo) took. Length and rate are taken as normal and
// independent; the range is then exact (Fieller 1954, J R Stat Soc B 16:175-185). Errors: invalid (negative or no
// number, low above high, rate not above 0 or so uncertain that it may be 0).
[[nodiscard]] Result<GrowthRange> weeks_of_growth(const GrowthRange& new_growth_mm, const GrowthRate& rate);
// Millimetres to expect after so many weeks (0..520) at that rate, over 95 % of such people. Errors: invalid.
[[nodiscard]] Result<GrowthRange> growth_of_weeks(double weeks, const GrowthRate& rate);

// A client's own rate, from new growth measured a known number of weeks (4..104) after the colour or relaxer was put
// on. Errors: invalid; refused (outside plausible_rates of her group by more than its own uncertainty: the line then is
// not the one of that service).
[[nodiscard]] Result<GrowthRate> own_rate(const GrowthRange& new_growth_mm, double weeks, HairGroup group);
// The expected rate and a client's own ones, weighted by their precision (normal prior, normal measurements). The SD
// never falls below 5 % of the rate: one head does not grow evenly over its places and the year (own choice).
[[nodiscard]] GrowthRate with_own_rates(const GrowthRate& expected, const std::vector<GrowthRate>& own);

}  // namespace kempt::care
