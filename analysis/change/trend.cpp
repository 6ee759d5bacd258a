#include "change/trend.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "change/distributions.h"

namespace kempt::change {
namespace {

// values not empty
double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

int sign(double value) {
    return (value > 0) - (value < 0);
}

struct Ties {
    double pairs = 0, triples = 0, variance = 0;  // sums of t(t-1), t(t-1)(t-2), t(t-1)(2t+5) over tied groups
};

Ties ties_of(const std::vector<double>& values) {
    std::map<double, int> groups;
    for (const double value : values) ++groups[value];
    Ties ties;
    for (const auto& [value, count] : groups) {
        const double size = count;
        ties.pairs += size * (size - 1);
        ties.triples += size * (size - 1) * (size - 2);
        ties.variance += size * (size - 1) * (2 * size + 5);
    }
    return ties;
}

// Kendall 1975: variance of S with ties in either variable.
double variance_of_S(double n, const Ties& in_t, const Ties& in_y) {
    double variance = (n * (n - 1) * (2 * n + 5) - in_t.variance - in_y.variance) / 18;
    variance += in_t.pairs * in_y.pairs / (2 * n * (n - 1));
    if (n > 2) variance += in_t.triples * in_y.triples / (9 * n * (n - 1) * (n - 2));
    return std::max(0.0, variance);
}

// Value at a rank (1 = smallest) between two sorted values.
double at_rank(const std::vector<double>& sorted, double rank) {
    const double last = static_cast<double>(sorted.size());
    const double inside = std::clamp(rank, 1.0, last);
    const auto below = static_cast<size_t>(std::floor(inside)) - 1;
    const double part = inside - std::floor(inside);
    return below + 1 < sorted.size() ? sorted[below] + part * (sorted[below + 1] - sorted[below]) : sorted[below];
}

void add_interval(Trend& trend, const std::vector<double>& slopes, int n, bool tied, double confidence) {
    const double N = static_cast<double>(slopes.size());
    double low_rank = 0;
    if (n <= 10 && !tied)
        low_rank = exact_slope_rank(n, confidence);
    else
        low_rank = (N - normal_quantile(0.5 + confidence / 2) * std::sqrt(trend.var_S)) / 2;
    // All values alike: the variance of S is 0 and says nothing.
    trend.interval_known = low_rank >= 1 && trend.var_S > 0;
    trend.slope_low = at_rank(slopes, low_rank);
    trend.slope_high = at_rank(slopes, N + 1 - low_rank);
}

}  // namespace

std::optional<Trend> theil_sen(const std::vector<double>& t, const std::vector<double>& y, double confidence) {
    if (t.size() != y.size() || t.size() < 2 || !(confidence >= 0.5 && confidence <= 0.999)) return std::nullopt;
    const auto is_finite = [](double value) { return std::isfinite(value); };
    if (!std::all_of(t.begin(), t.end(), is_finite) || !std::all_of(y.begin(), y.end(), is_finite)) return std::nullopt;

    Trend trend;
    std::vector<double> slopes;
    for (size_t i = 0; i < t.size(); ++i)
        for (size_t j = i + 1; j < t.size(); ++j) {
            trend.S += sign(t[j] - t[i]) * sign(y[j] - y[i]);
            if (t[j] != t[i]) slopes.push_back((y[j] - y[i]) / (t[j] - t[i]));
        }
    if (slopes.empty()) return std::nullopt;
    std::sort(slopes.begin(), slopes.end());
    trend.slope = median(slopes);
    trend.intercept = median(y) - trend.slope * median(t);

    const int n = static_cast<int>(t.size());
    const Ties in_t = ties_of(t), in_y = ties_of(y);
    const bool tied = in_t.pairs > 0 || in_y.pairs > 0;
    trend.tau = trend.S / (n * (n - 1) / 2.0);
    trend.var_S = variance_of_S(n, in_t, in_y);
    if (trend.var_S > 0) trend.z = (trend.S - sign(trend.S)) / std::sqrt(trend.var_S);
    if (n <= 10 && !tied)
        trend.p = mann_kendall_exact_p(trend.S, n);
    else
        trend.p = std::erfc(std::abs(trend.z) / std::sqrt(2.0));
    add_interval(trend, slopes, n, tied, confidence);
    return trend;
}

Forecast forecast(const Trend& trend, double t_now, double y_now, double target, double horizon) {
    const double way = target - y_now;
    const auto reached = [&](double slope) -> std::optional<double> {
        if (way == 0) return t_now;
        const double wait = way / slope;  // infinite for a slope of 0
        return wait > 0 && wait <= horizon ? std::optional<double>(t_now + wait) : std::nullopt;
    };
    const bool upward = way > 0;
    return {reached(upward ? trend.slope_high : trend.slope_low), reached(trend.slope),
            reached(upward ? trend.slope_low : trend.slope_high)};
}

}  // namespace kempt::change
