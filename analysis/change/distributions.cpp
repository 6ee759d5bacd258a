#include "change/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace kempt::change {
namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

// Continued fraction of the incomplete beta function (Abramowitz & Stegun 26.5.8), by the modified Lentz method.
double beta_fraction(double x, double a, double b) {
    constexpr double tiny = 1e-300;
    const auto away_from_zero = [](double value) { return std::abs(value) < tiny ? tiny : value; };
    double c = 1;
    double d = 1 / away_from_zero(1 - (a + b) * x / (a + 1));
    double result = d;
    for (int m = 1; m < 20000; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        d = 1 / away_from_zero(1 + even * d);
        c = away_from_zero(1 + even / c);
        result *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        d = 1 / away_from_zero(1 + odd * d);
        c = away_from_zero(1 + odd / c);
        result *= d * c;
        if (std::abs(d * c - 1) < 1e-15) break;
    }
    return result;
}

// Regularised incomplete beta I_x(a, b); y = 1 - x is passed in so that neither end loses digits.
double incomplete_beta(double x, double y, double a, double b) {
    if (x <= 0) return 0;
    if (y <= 0) return 1;
    const double front =
        std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log(y));
    if (x < (a + 1) / (a + b + 2)) return front * beta_fraction(x, a, b) / a;
    return 1 - front * beta_fraction(y, b, a) / b;
}

// P(T > t) for t >= 0.
double t_upper_tail(double t, double df) {
    if (t == 0) return 0.5;
    const double ratio = t * t / df;  // may overflow to infinity: the tail is then 0
    return 0.5 * incomplete_beta(1 / (1 + ratio), ratio / (1 + ratio), df / 2, 0.5);
}

// Number of arrangements of n values with 0, 1, 2... inversions (Mahonian numbers).
std::vector<double> inversion_counts(int n) {
    std::vector<double> counts{1};
    for (int m = 2; m <= n; ++m) {
        std::vector<double> next(counts.size() + static_cast<size_t>(m - 1), 0.0);
        for (size_t i = 0; i < counts.size(); ++i)
            for (int shift = 0; shift < m; ++shift) next[i + static_cast<size_t>(shift)] += counts[i];
        counts = std::move(next);
    }
    return counts;
}

}  // namespace

double normal_cdf(double z) {
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

double normal_quantile(double p) {
    if (!(p >= 0 && p <= 1)) return not_a_number;
    if (p == 0) return -infinite;
    if (p == 1) return infinite;
    const double tail = std::min(p, 1 - p);
    // Start: Abramowitz & Stegun 26.2.23, error below 4.5e-4; then Halley steps on the tail.
    const double r = std::sqrt(-2 * std::log(tail));
    double z = r - (2.515517 + r * (0.802853 + r * 0.010328)) / (1 + r * (1.432788 + r * (0.189269 + r * 0.001308)));
    constexpr double root_2pi = 2.50662827463100050242;
    for (int step = 0; step < 4; ++step) {
        const double newton = (0.5 * std::erfc(z / std::sqrt(2.0)) - tail) * root_2pi * std::exp(z * z / 2);
        z += newton / (1 - z * newton / 2);
    }
    return p < 0.5 ? -z : z;
}

double student_t_quantile(double p, double df) {
    if (!(p >= 0 && p <= 1) || !(df > 0)) return not_a_number;
    if (p == 0.5) return 0;
    if (p == 0) return -infinite;
    if (p == 1) return infinite;
    const double z = normal_quantile(p);
    if (std::isinf(df)) return z;
    // Abramowitz & Stegun 26.7.5; its next term is of the order of 1 / df^3, below 1e-14 here.
    if (df > 1e5)
        return z + (z * z * z + z) / (4 * df) + (5 * std::pow(z, 5) + 16 * z * z * z + 3 * z) / (96 * df * df);

    const double tail = std::min(p, 1 - p);
    double low = 0, high = 700;  // t = sinh(u) spans every magnitude
    for (int step = 0; step < 200 && high - low > 1e-15 * high; ++step) {
        const double middle = (low + high) / 2;
        (t_upper_tail(std::sinh(middle), df) > tail ? low : high) = middle;
    }
    const double t = std::sinh((low + high) / 2);
    return p < 0.5 ? -t : t;
}

double f_upper_tail(double f, double df1, double df2) {
    if (!(f >= 0) || !(df1 > 0) || !(df2 > 0) || std::isinf(df1) || std::isinf(df2)) return not_a_number;
    const double ratio = df1 * f / df2;
    return incomplete_beta(1 / (1 + ratio), ratio / (1 + ratio), df2 / 2, df1 / 2);
}

double mann_kendall_exact_p(int S, int n) {
    if (n < 2 || n > 10) return not_a_number;
    const std::vector<double> counts = inversion_counts(n);
    const int pairs = n * (n - 1) / 2;
    double all = 0, as_far = 0;
    for (int inversions = 0; inversions <= pairs; ++inversions) {
        const double count = counts[static_cast<size_t>(inversions)];
        all += count;
        if (std::abs(pairs - 2 * inversions) >= std::abs(S)) as_far += count;
    }
    return as_far / all;
}

int exact_slope_rank(int n, double confidence) {
    if (n < 2 || n > 10) return 0;
    const std::vector<double> counts = inversion_counts(n);
    double all = 0;
    for (const double count : counts) all += count;
    double below = 0;
    int rank = 0;
    // The small allowance keeps an exact tie (such as 2 / 24 at 11/12) from being lost to rounding.
    while (2 * (below + counts[static_cast<size_t>(rank)]) / all <= 1 - confidence + 1e-12)
        below += counts[static_cast<size_t>(rank++)];
    return rank;
}

}  // namespace kempt::change
