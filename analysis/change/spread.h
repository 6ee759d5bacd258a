// Repeat shots: how far readings scatter with no change at all, and the smallest change that stands out from that.
#pragma once

#include <string>
#include <vector>

#include "change/scale.h"

namespace kempt::change {

struct Spread {
    double sd = 0;        // standard deviation of one shot within a visit, on the reading's scale
    double df = 0;        // degrees of freedom behind it; infinity when it is known beyond doubt; 0: nothing is known
    double setup_sd = 0;  // SD between visits that repeat shots cannot show; taken as known
    Scale scale{};        // both SDs are on it
};

// Pooled within-group SD of groups of repeat shots (groups of one add nothing, values that are not finite are left
// out). df 0 when no group has two.
[[nodiscard]] Spread pooled_within_sd(const std::vector<std::vector<double>>& groups);

// The same for a reading by name, on its scale (values that the scale does not hold are left out).
[[nodiscard]] Spread pooled_for(const std::string& reading, std::vector<std::vector<double>> groups);

// The spread to judge one client by. Her own repeats count in full; once 30 df stand behind them, or when they are
// clearly wider than what the book and the default expect, they stand alone. Else an expected variance worth at most
// default_df degrees of freedom is pooled in: the book's (at most default_df of its df), topped up to default_df by
// the documented default. docs/reliability.md says why, and what false-call rate it holds.
// default_sd <= 0: no default. df 0 in the result: nothing is known.
[[nodiscard]] Spread combine_spread(const Spread& client, const Spread& book, double default_sd, double default_df = 8);

// A shot's reading with the 95 % interval that the photo itself states.
struct Stated {
    double value = 0, low = 0, high = 0;
};
// Root mean square of the SDs that shots state, on the reading's scale: the wider side of each interval over 1.96, for
// the other may end where the reading does. Values that the scale does not hold are left out; 0 when none is left.
[[nodiscard]] double stated_sd(const std::string& reading, const std::vector<Stated>& shots);

// The spread to judge by of a reading by name (spreads by pooled_for), with both of its documented defaults:
// within-visit SD and set-up SD.
[[nodiscard]] Spread spread_for(const std::string& reading, const Spread& client, const Spread& book);

// The same where shots state `stated` (stated_sd of those that are judged): what that holds beyond the part that is the
// same at every visit of the same hair (same_sd) is the set-up SD where it is more.
[[nodiscard]] Spread allowing_for(double stated, const std::string& reading, const Spread& spread);

// Smallest detectable change at 95 % between means of n1 and n2 shots:
// t(0.975, df) * sqrt(sd^2 (1/n1 + 1/n2) + 2 setup_sd^2), on the spread's own scale. NaN when the spread is not known
// or n1 or n2 < 1.
[[nodiscard]] double smallest_detectable_change(const Spread& spread, int n1, int n2);

}  // namespace kempt::change
