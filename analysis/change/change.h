// Is the change real? Repeatability, smallest detectable change, verdicts, trend, share of the way, forecast.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity.h"

namespace kempt::change {

// ---- distributions -------------------------------------------------------------------------------------------------
// Quantile of Student's t: P(T <= t) = p, df > 0 (df may be infinite).
[[nodiscard]] double student_t_quantile(double p, double df);
[[nodiscard]] double normal_quantile(double p);
[[nodiscard]] double normal_cdf(double z);

// ---- repeat shots --------------------------------------------------------------------------------------------------
struct Spread {
    double sd = 0;  // standard deviation of one shot within a visit
    double df = 0;  // degrees of freedom behind it; infinity for a documented default
};
// Pooled within-group SD of groups of repeat shots (groups of one add nothing). df 0 when no group has two.
[[nodiscard]] Spread pooled_within_sd(const std::vector<std::vector<double>>& groups);
// Weighs the client's own spread, the book's and the documented default (each counts as default_df observations):
// the variance is pooled in this order until at least 30 df stand behind it.
[[nodiscard]] Spread combine_spread(const Spread& client, const Spread& book, double default_sd, double default_df = 8);
// Documented default within-visit SD for a reading (docs/reliability.md); 0 when unknown.
[[nodiscard]] double default_within_sd(const std::string& reading);

// Smallest detectable change at 95 % between means of n1 and n2 shots: t(0.975, df) * sd * sqrt(1/n1 + 1/n2).
[[nodiscard]] double smallest_detectable_change(const Spread& spread, int n1, int n2);

// ---- verdict -------------------------------------------------------------------------------------------------------
enum class Verdict { improved, worse, no_detectable_change, not_comparable };
enum class Better { higher, lower };
// Which direction is better for a reading; edge_coverage higher, bare_length lower, ...
[[nodiscard]] Better better_direction(const std::string& reading);

struct Judgement {
    Verdict verdict = Verdict::not_comparable;
    double difference = 0;           // to - from, in the reading's unit
    double smallest_detectable = 0;
    std::string reason;              // a full sentence with figures and unit
};
struct VisitValue {
    std::vector<double> shots;       // values of the comparable repeat shots
    std::vector<std::string> not_comparable;  // reasons that exclude this visit ("hair was wet"); empty when fine
    std::string unit;
};
[[nodiscard]] Judgement judge(const std::string& reading, const VisitValue& from, const VisitValue& to, const Spread& spread);

// ---- trend ---------------------------------------------------------------------------------------------------------
struct Trend {
    double slope = 0, slope_low = 0, slope_high = 0;  // Theil-Sen, per unit of t, 95 % interval (Sen's ranks, interpolated)
    double intercept = 0;                             // median(y) - slope * median(t)
    int S = 0;                                        // Mann-Kendall
    double p = 1;                                     // two-sided, exact to n = 10 without ties, else normal with ties
    double var_S = 0, z = 0, tau = 0;
    bool interval_known = false;                      // false where n is too small for 95 %
};
// confidence 0.5..0.999; needs two points or more with distinct t.
[[nodiscard]] std::optional<Trend> theil_sen(const std::vector<double>& t, const std::vector<double>& y, double confidence = 0.95);
// A trend is shown from this many visits on.
inline constexpr int visits_for_trend = 4;

struct Forecast {  // in the unit of t
    std::optional<double> earliest, middle, latest;  // a missing one means: not reached at that slope
};
[[nodiscard]] Forecast forecast(const Trend& trend, double t_now, double y_now, double target);

// Share of the way from baseline to target, 0..1 unclamped; nullopt when they are equal.
[[nodiscard]] std::optional<double> share_of_way(double baseline, double now, double target);

// ---- agreement -----------------------------------------------------------------------------------------------------
// Weighted kappa of a square table of counts; weights are disagreement weights v (0 on the diagonal).
struct Kappa { double kappa = 0; double standard_error = 0; };
[[nodiscard]] Kappa weighted_kappa(const std::vector<std::vector<double>>& counts, const std::vector<std::vector<double>>& disagreement);
// Steps 0..4 graded twice: linear weights.
[[nodiscard]] std::optional<Kappa> grade_agreement(const std::vector<std::pair<int, int>>& pairs);

}  // namespace kempt::change
