#include "pattern/smooth_path.h"

#include <algorithm>
#include <cmath>

namespace kempt::pattern {

namespace {

constexpr int terms = 4;  // cubic B-splines that are not zero at a place

struct Place {
    std::size_t first;
    double f;  // 0..1 between two knots
};

Place place(double t, double knot, std::size_t count) {
    const double u = std::max(0.0, t / knot);
    const auto i = std::min(static_cast<std::size_t>(u), count - terms);
    return {i, u - static_cast<double>(i)};
}

cv::Vec4d values(double f) {
    const double g = 1 - f;
    return {g * g * g / 6, (3 * f * f * f - 6 * f * f + 4) / 6, (-3 * f * f * f + 3 * f * f + 3 * f + 1) / 6,
            f * f * f / 6};
}
cv::Vec4d slopes(double f) {
    const double g = 1 - f;
    return {-g * g / 2, (9 * f * f - 12 * f) / 6, (-9 * f * f + 6 * f + 3) / 6, f * f / 2};
}
cv::Vec4d bends(double f) {
    return {1 - f, 3 * f - 2, 1 - 3 * f, f};
}

}  // namespace

SmoothPath::SmoothPath(const std::vector<cv::Point2d>& path, double noise_mm) {
    t_.assign(path.size(), 0);
    for (std::size_t i = 1; i < path.size(); ++i) t_[i] = t_[i - 1] + cv::norm(path[i] - path[i - 1]);
    end_ = t_.back();
    choose(path, noise_mm, 0);
    // Noise makes the path's own length too long, more so where points lie close: again with the curve's length.
    std::vector<double> arc(t_.size(), 0);
    for (std::size_t i = 1; i < t_.size(); ++i) {
        const double step = t_[i] - t_[i - 1];
        const int parts = std::max(2, static_cast<int>(std::ceil(4 * step / knot_)));
        double length = 0;
        for (int k = 0; k < parts; ++k) length += cv::norm(at(t_[i - 1] + step * (k + 0.5) / parts).first);
        arc[i] = arc[i - 1] + length * step / parts;
    }
    t_ = arc;
    end_ = t_.back();
    choose(path, noise_mm, 6);  // to a sixth of a decade
}

void SmoothPath::lay_knots(double knot) {
    const double pieces = std::max(1.0, std::ceil(end_ / knot - 1e-9));
    knot_ = end_ / pieces;
    normal_.rows.assign(static_cast<std::size_t>(pieces) + 3, cv::Vec4d());
    for (const double t : t_) {
        const auto [first, f] = place(t, knot_, normal_.rows.size());
        const cv::Vec4d w = values(f);
        for (int a = 0; a < terms; ++a)
            for (int b = a; b < terms; ++b) normal_.rows[first + static_cast<std::size_t>(a)][b - a] += w[a] * w[b];
    }
}

void SmoothPath::assemble(double penalty) {
    constexpr double third[] = {-1, 3, -3, 1};
    factor_ = normal_;
    std::vector<cv::Vec4d>& rows = factor_.rows;
    for (std::size_t i = 0; i + 3 < rows.size(); ++i)
        for (std::size_t a = 0; a < terms; ++a)
            for (std::size_t b = a; b < terms; ++b)
                rows[i + a][static_cast<int>(b - a)] += penalty * third[a] * third[b];
    // Cholesky, upper: rows[i] becomes row i of U with A = U'U.
    for (std::size_t i = 0; i < rows.size(); ++i)
        for (std::size_t j = i; j < std::min(rows.size(), i + terms); ++j) {
            double sum = rows[i][static_cast<int>(j - i)];
            for (std::size_t k = j >= 3 ? j - 3 : 0; k < i; ++k)
                sum -= rows[k][static_cast<int>(i - k)] * rows[k][static_cast<int>(j - k)];
            rows[i][static_cast<int>(j - i)] = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / rows[i][0];
        }
}

void SmoothPath::solve(const std::vector<cv::Point2d>& path) {
    const std::vector<cv::Vec4d>& rows = factor_.rows;
    std::vector<cv::Point2d>& c = coefficients_;
    c.assign(rows.size(), {});
    for (std::size_t i = 0; i < path.size(); ++i) {
        const auto [first, f] = place(t_[i], knot_, rows.size());
        const cv::Vec4d w = values(f);
        for (int a = 0; a < terms; ++a) c[first + static_cast<std::size_t>(a)] += w[a] * path[i];
    }
    for (std::size_t i = 0; i < c.size(); ++i) {
        for (std::size_t k = i >= 3 ? i - 3 : 0; k < i; ++k) c[i] -= rows[k][static_cast<int>(i - k)] * c[k];
        c[i] = c[i] / rows[i][0];
    }
    for (std::size_t i = c.size(); i-- > 0;) {
        for (std::size_t j = i + 1; j < std::min(c.size(), i + terms); ++j)
            c[i] -= rows[i][static_cast<int>(j - i)] * c[j];
        c[i] = c[i] / rows[i][0];
    }
}

// Trace of the smoother. Only the band of the inverse is needed: Hutchinson and de Hoog 1985, Numer. Math. 47:99-106.
double SmoothPath::freedom() const {
    const std::vector<cv::Vec4d>& u = factor_.rows;
    const std::size_t count = u.size();
    std::vector<cv::Vec4d> inverse(count);
    const auto entry = [&](std::size_t i, std::size_t j) {
        return i <= j ? inverse[i][static_cast<int>(j - i)] : inverse[j][static_cast<int>(i - j)];
    };
    double trace = 0;
    for (std::size_t i = count; i-- > 0;) {
        const std::size_t last = std::min(count - 1, i + 3);
        for (std::size_t j = last; j > i; --j) {
            double sum = 0;
            for (std::size_t k = i + 1; k <= last; ++k) sum -= u[i][static_cast<int>(k - i)] * entry(k, j);
            inverse[i][static_cast<int>(j - i)] = sum / u[i][0];
        }
        double sum = 1 / u[i][0];
        for (std::size_t k = i + 1; k <= last; ++k) sum -= u[i][static_cast<int>(k - i)] * entry(i, k);
        inverse[i][0] = sum / u[i][0];
        trace += inverse[i][0] * normal_.rows[i][0];
        for (std::size_t j = i + 1; j <= last; ++j) trace += 2 * entry(i, j) * normal_.rows[i][static_cast<int>(j - i)];
    }
    return trace;
}

double SmoothPath::risk(const std::vector<cv::Point2d>& path, double noise_mm) const {
    double sum = 0;
    for (std::size_t i = 0; i < path.size(); ++i) {
        const CurvePoint curve = at(t_[i]);
        const double across = (path[i] - curve.at).cross(curve.first) / std::max(1e-9, cv::norm(curve.first));
        sum += across * across;
    }
    constexpr double dearer = 1.4;
    return sum / (noise_mm * noise_mm) + 2 * dearer * freedom();
}

void SmoothPath::choose(const std::vector<cv::Point2d>& path, double noise_mm, int thirds) {
    // No closer than the points, nor than 0.25 mm: a twelfth of a coil of 3 mm, bent by cubics to 1e-5 of its radius.
    const double finest = std::max(0.25, end_ / static_cast<double>(path.size() - 1));
    const auto risk_at = [&](double log_penalty) {
        assemble(std::exp(log_penalty));
        solve(path);
        return risk(path, noise_mm);
    };
    // Each halving of the knots' distance is worth a penalty of 2^6 for the same stiffness, so that four decades cover
    // all stiffnesses without a gap; the finest knots also go unpenalised.
    const double step = std::log(10.0), least = -2 * step, most = 2 * step;
    double best = 1e300, best_penalty = 0, best_knot = end_;
    for (double knot = end_;; knot = std::max(knot / 2, finest)) {
        lay_knots(knot);
        for (double penalty = knot <= finest ? 2 * least : least; penalty <= most + 1e-9; penalty += step)
            if (const double now = risk_at(penalty); now < best) best = now, best_penalty = penalty, best_knot = knot;
        if (knot <= finest) break;
    }
    lay_knots(best_knot);
    double low = best_penalty - step, high = best_penalty + step;
    for (int i = 0; i < thirds; ++i) {
        const double third = (high - low) / 3;
        if (risk_at(low + third) < risk_at(high - third))
            high -= third;
        else
            low += third;
    }
    (void)risk_at(0.5 * (low + high));
}

void SmoothPath::refit(const std::vector<cv::Point2d>& path) {
    solve(path);
}

CurvePoint SmoothPath::at(double t) const {
    const auto [first, f] = place(t, knot_, coefficients_.size());
    const cv::Vec4d w = values(f), d = slopes(f), dd = bends(f);
    CurvePoint out;
    for (int a = 0; a < terms; ++a) {
        const cv::Point2d& c = coefficients_[first + static_cast<std::size_t>(a)];
        out.at += w[a] * c;
        out.first += d[a] * c / knot_;
        out.second += dd[a] * c / (knot_ * knot_);
    }
    return out;
}

}  // namespace kempt::pattern
