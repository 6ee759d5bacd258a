// Trend over visits and what it foretells.
#pragma once

#include <optional>
#include <vector>

namespace kempt::change {

struct Trend {
    // Theil-Sen, per unit of t. The interval: Sen's (1968) ranks of the pairwise slopes; up to n = 10 without ties the
    // exact ranks, else M1 = (N - C) / 2 and M2 + 1 = (N + C) / 2 + 1 with C = z sqrt(var_S) (Gilbert 1987),
    // interpolated linearly between slopes. A two-sided p >= 0.05 and an interval that holds 0 mean: no trend shown.
    double slope = 0, slope_low = 0, slope_high = 0;
    double intercept = 0;         // median(y) - slope * median(t)
    int S = 0;                    // Mann-Kendall
    double p = 1;                 // two-sided, exact to n = 10 without ties, else normal with tie correction
    double var_S = 0, z = 0;      // z with continuity correction
    double tau = 0;               // S over the number of pairs (tau-a)
    bool interval_known = false;  // false where n is too small for the confidence asked for (n = 4 at 95 %): low and
                                  // high are then the extreme slopes, which hold less than that
};

// confidence 0.5..0.999; needs two points or more with distinct t, all finite; nullopt otherwise.
[[nodiscard]] std::optional<Trend> theil_sen(const std::vector<double>& t, const std::vector<double>& y,
                                             double confidence = 0.95);
// A trend is shown from this many visits on.
inline constexpr int visits_for_trend = 4;

struct Forecast {                                    // in the unit of t
    std::optional<double> earliest, middle, latest;  // a missing one means: not reached within the horizon
};
// Five years of days: beyond that a slope over some visits says nothing (common practice).
inline constexpr double forecast_horizon_days = 5 * 365.25;

// When y reaches the target from y_now (best taken from the trend line at t_now) at the slopes of the trend. t in days,
// or another unit with its own horizon. All three missing when the trend leads away from the target.
[[nodiscard]] Forecast forecast(const Trend& trend, double t_now, double y_now, double target,
                                double horizon = forecast_horizon_days);

}  // namespace kempt::change
