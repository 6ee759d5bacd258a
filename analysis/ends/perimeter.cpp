#include "ends/perimeter.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <opencv2/core.hpp>

#include "core/rank.h"

namespace kempt::ends {

namespace {

constexpr double bend_from_side_mm = 15, bend_step_mm = 1;
// Huber's reach of 1.345 SD is 2 median absolute residuals of normal ones; 0.3 mm is as fine as a cut can be.
constexpr double reach_in_medians = 2, least_reach_mm = 0.3;
constexpr int reweightings = 4;

// Truncated powers of t = 0..1: 1, t, t^2, t^3, (t - knot)^3+ for each inner knot.
void spline_terms(double t, int spans, std::vector<double>& out) {
    out.assign({1, t, t * t, t * t * t});
    for (int k = 1; k < spans; ++k) out.push_back(std::pow(std::max(0.0, t - static_cast<double>(k) / spans), 3));
}

}  // namespace

Perimeter::Perimeter(const std::vector<double>& u, const std::vector<double>& v, double from_mm, double to_mm,
                     double smooth_mm)
    : from_(from_mm),
      to_(to_mm),
      spans_(std::max(1, static_cast<int>(std::floor((to_mm - from_mm) / smooth_mm + 0.5)))) {
    settle(u, v);
}

Perimeter Perimeter::line(const std::vector<double>& u, const std::vector<double>& v, double from_mm, double to_mm) {
    Perimeter straight;
    straight.from_ = from_mm, straight.to_ = to_mm, straight.straight_ = true;
    straight.settle(u, v);
    return straight;
}

void Perimeter::settle(const std::vector<double>& u, const std::vector<double>& v) {
    std::vector<double> weight(u.size(), 1.0), off(u.size());
    fit(u, v, weight);
    for (int again = 0; again < reweightings; ++again) {
        for (size_t i = 0; i < u.size(); ++i) off[i] = std::abs(v[i] - at(u[i]));
        std::vector<double> sorted = off;
        const double reach = std::max(least_reach_mm, reach_in_medians * at_rank(sorted, 0.5));
        for (size_t i = 0; i < u.size(); ++i) weight[i] = std::min(1.0, reach / std::max(1e-9, off[i]));
        fit(u, v, weight);
    }
}

void Perimeter::fit(const std::vector<double>& u, const std::vector<double>& v, const std::vector<double>& weight) {
    const int n = static_cast<int>(u.size()), spline = straight_ ? 2 : 3 + spans_, p = spline + 1;
    std::vector<double> t(u.size()), terms;
    cv::Mat1d basis(n, spline), weighted(n, spline), target(n, 1);
    double square = 0;
    for (int i = 0; i < n; ++i) {
        const auto k = static_cast<size_t>(i);
        t[k] = (u[k] - from_) / (to_ - from_);
        spline_terms(t[k], spans_, terms);
        std::copy_n(terms.begin(), spline, basis[i]);
        for (int c = 0; c < spline; ++c) weighted(i, c) = weight[k] * basis(i, c);
        target(i) = v[k];
        square += weight[k] * v[k] * v[k];
    }
    // The spline's part of the normal equations stays; each bend adds a row and a column.
    cv::Mat1d normal(p, p, 0.0), right(p, 1, 0.0);
    cv::Mat1d(weighted.t() * basis).copyTo(normal(cv::Rect(0, 0, spline, spline)));
    cv::Mat1d(weighted.t() * target).copyTo(right(cv::Rect(0, 0, 1, spline)));
    for (int k = 0; k < p; ++k) normal(k, k) += 1e-9;
    if (straight_) {
        cv::Mat1d solved;
        const cv::Rect whole(0, 0, spline, spline);
        if (cv::solve(normal(whole), right(cv::Rect(0, 0, 1, spline)), solved, cv::DECOMP_CHOLESKY)) {
            weights_.assign(solved.begin(), solved.end());
            weights_.push_back(0);  // of the bend
        }
        return;
    }
    double least = std::numeric_limits<double>::max();
    cv::Mat1d hinge(n, 1);
    const double margin = std::min(bend_from_side_mm, (to_ - from_) / 2);
    for (double bend = from_ + margin; bend <= to_ - margin + 1e-9; bend += bend_step_mm) {
        const double place = (bend - from_) / (to_ - from_);
        double own = 1e-9, with_target = 0;
        for (int i = 0; i < n; ++i) {
            const auto k = static_cast<size_t>(i);
            hinge(i) = std::max(0.0, t[k] - place);
            own += weight[k] * hinge(i) * hinge(i);
            with_target += weight[k] * hinge(i) * v[k];
        }
        const cv::Mat1d side(weighted.t() * hinge);
        for (int k = 0; k < spline; ++k) normal(spline, k) = normal(k, spline) = side(k);
        normal(spline, spline) = own;
        right(spline) = with_target;
        cv::Mat1d solved;
        if (!cv::solve(normal, right, solved, cv::DECOMP_CHOLESKY)) continue;
        const double residual = square - solved.dot(right);
        if (residual >= least) continue;
        least = residual;
        bend_ = place;
        weights_.assign(solved.begin(), solved.end());
    }
}

double Perimeter::inside(double u) const {
    if (weights_.empty()) return 0;
    const double t = (u - from_) / (to_ - from_);
    std::vector<double> terms;
    spline_terms(t, spans_, terms);
    double sum = weights_.back() * std::max(0.0, t - bend_);
    for (size_t k = 0; k + 1 < weights_.size(); ++k) sum += weights_[k] * terms[k];
    return sum;
}

double Perimeter::at(double u) const {
    if (u < from_) return inside(from_) + (inside(from_ + 1) - inside(from_)) * (u - from_);
    if (u > to_) return inside(to_) + (inside(to_) - inside(to_ - 1)) * (u - to_);
    return inside(u);
}

}  // namespace kempt::ends
