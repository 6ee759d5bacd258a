#include "card/tone_curve.h"

#include <algorithm>
#include <cmath>

namespace kempt::card {
namespace {
constexpr int table_steps = 400;
// Least rise between coefficients: keeps the curve invertible; a tenth of the straight line's rise.
constexpr double least_rise = 0.02;
}  // namespace

ToneCurve::ToneCurve(const std::array<double, inner + 1>& parameters)
    : lift_(std::clamp(parameters[0], -0.1, 0.35)), coefficients_{} {
    coefficients_[0] = 0;
    coefficients_[inner + 1] = 1;
    for (size_t k = 1; k <= inner; ++k) {
        const double straight = double(k) / (inner + 1);
        coefficients_[k] = std::clamp(straight + parameters[k], coefficients_[k - 1] + least_rise,
                                      1 - least_rise * double(inner + 1 - k));
    }
    codes_.resize(table_steps + 1);
    for (int i = 0; i <= table_steps; ++i) codes_[static_cast<size_t>(i)] = code_from_true(double(i) / table_steps);
}

double ToneCurve::code_from_true(double w) const {
    // Straight beyond the ends, with the polynomial's slope there.
    constexpr double degree = inner + 1;
    double bent;
    if (w <= 0) {
        bent = degree * coefficients_[1] * w;
    } else if (w >= 1) {
        bent = 1 + degree * (1 - coefficients_[inner]) * (w - 1);
    } else {
        auto c = coefficients_;  // de Casteljau
        for (size_t round = 1; round < c.size(); ++round)
            for (size_t k = 0; k + round < c.size(); ++k) c[k] += (c[k + 1] - c[k]) * w;
        bent = c[0];
    }
    return lift_ + (1 - lift_) * bent;
}

double ToneCurve::true_from_code(double code) const {
    if (code <= codes_.front()) return 0;
    if (code >= codes_.back()) return 1;
    const auto above = std::upper_bound(codes_.begin(), codes_.end(), code);
    const auto i = static_cast<size_t>(above - codes_.begin());
    return (double(i - 1) + (code - codes_[i - 1]) / (codes_[i] - codes_[i - 1])) / table_steps;
}

}  // namespace kempt::card
