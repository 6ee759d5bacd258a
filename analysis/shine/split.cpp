#include "shine/split.h"

#include <algorithm>
#include <cmath>

#include "card/least_squares.h"
#include "shine/binned.h"

namespace kempt::shine {

namespace {

// Numbers of the unknowns.
enum : size_t { level = 0, slope = 3, bend = 6, height = 7, place = 8, left = 9, right = 10, glow = 11, apart = 12 };

// What is known beforehand, each as mean and standard deviation. They matter where the hair has no colour to tell.
// Bend of the body's log light at the region's ends: a head lit from the front falls off as the cosine; over three
// spreads of the highlight (15-30 degrees of head) that is 3-13 % of the part that comes from one side.
constexpr double bend_mean = -0.05, bend_sd = 0.03;
constexpr double colour_drift_sd = 0.05;  // of b_c between channels: hair a little lighter or redder to the ends
constexpr double slope_sd = 0.25;
constexpr double lopsided_sd = 0.06;  // of log(left / right): rendered lobes on curved heads lie within 0.2
// Second bell: log of its height over the body's; distance from the crest in spreads of the surface (5/2 of a tilt of
// 5-10 degrees over a spread of 5-11). Calibrated on rendered panels (seeds 200-1000), as are the two after.
constexpr double glow_mean = -3.0, glow_sd = 0.5, apart_mean = 2.4, apart_sd = 0.5;
constexpr double second_width = 1.8;
constexpr double evidence_to_turn = 9;                      // three standard deviations
constexpr double region_in_spreads = 6.5, width_sd = 0.35;  // a region drawn over the band and its feet
constexpr double huber = 2;

double softened(double r) {
    const double a = std::abs(r);
    return a <= huber ? r : std::copysign(std::sqrt(huber * (2 * a - huber)), r);
}

struct Point {
    std::array<double, 3> body{}, light{};
    double body_luminance = 0, surface = 0, second = 0;
};

// exp(-q^2 / 2), nothing beyond seven spreads.
double bell(double q) {
    return q * q > 50 ? 0 : std::exp(-0.5 * q * q);
}

Point model_at(const double* p, int side, double y_mm, double length_mm) {
    Point out;
    const double t = 2 * y_mm / length_mm - 1;
    for (size_t c = 0; c < 3; ++c) {
        out.body[c] = std::exp(std::clamp(p[level + c] + p[slope + c] * t + p[bend] * t * t, -20.0, 5.0));
        out.body_luminance += luminance_of[c] * out.body[c];
    }
    const double l = std::exp(p[left]), r = std::exp(p[right]);
    out.surface = std::exp(std::min(p[height], 5.0)) * bell((y_mm - p[place]) / (y_mm < p[place] ? l : r));
    const double middle = std::sqrt(l * r);
    // Height over the body in the middle of the region.
    double body_there = 0;
    for (size_t c = 0; c < 3; ++c) body_there += luminance_of[c] * std::exp(std::clamp(p[level + c], -20.0, 5.0));
    out.second = std::exp(std::min(p[glow], 3.0)) * body_there *
                 bell((y_mm - p[place] - side * p[apart] * middle) / (second_width * middle));
    std::array<double, 3> tint{};
    double sum = 0;
    for (size_t c = 0; c < 3; ++c) tint[c] = out.body[c] * std::sqrt(out.body[c]), sum += luminance_of[c] * tint[c];
    for (size_t c = 0; c < 3; ++c) out.light[c] = out.body[c] + out.surface + out.second * tint[c] / sum;
    return out;
}

void residuals_of(const Binned& data, int side, const std::vector<double>& p, std::vector<double>& r) {
    r.clear();
    for (size_t i = 0; i < data.size(); ++i) {
        const Point point = model_at(p.data(), side, (static_cast<double>(i) + 0.5) * data.bin_mm, data.length_mm);
        const double y = luminance({point.light[0], point.light[1], point.light[2]});
        r.push_back(softened((y - data.luminance[i]) / data.luminance_sd[i]));
        const double green = std::log(std::max(point.light[1], 1e-6));
        r.push_back(
            softened((std::log(std::max(point.light[0], 1e-6)) - green - data.red_green[i]) / data.colour_sd[i]));
        r.push_back(
            softened((std::log(std::max(point.light[2], 1e-6)) - green - data.blue_green[i]) / data.colour_sd[i]));
    }
    const double slopes = (p[slope] + p[slope + 1] + p[slope + 2]) / 3;
    r.push_back((p[bend] - bend_mean) / bend_sd);
    for (size_t c = 0; c < 3; ++c) r.push_back((p[slope + c] - slopes) / colour_drift_sd);
    r.push_back(slopes / slope_sd);
    r.push_back((p[left] - p[right]) / lopsided_sd);
    r.push_back((p[glow] - glow_mean) / glow_sd);
    r.push_back((p[apart] - apart_mean) / apart_sd);
    r.push_back((0.5 * (p[left] + p[right]) - std::log(data.length_mm / region_in_spreads)) / width_sd);
}

std::vector<double> first_guess(const Binned& data) {
    const size_t n = data.size();
    const std::vector<double>& over = data.over;
    const auto top = static_cast<size_t>(std::max_element(over.begin() + 2, over.end() - 2) - over.begin());
    size_t a = top, b = top;
    while (a > 0 && over[a] > 0.5 * over[top]) --a;
    while (b + 1 < n && over[b] > 0.5 * over[top]) ++b;
    const double width =
        std::clamp(data.bin_mm * static_cast<double>(b - a), 0.1 * data.length_mm, 0.5 * data.length_mm);
    std::vector<double> p(Split::unknowns, 0.0);
    for (int c = 0; c < 3; ++c) {
        const double l0 = std::log(std::max(data.first[c], 1e-5)), l1 = std::log(std::max(data.last[c], 1e-5));
        p[level + static_cast<size_t>(c)] = 0.5 * (l0 + l1);
        p[slope + static_cast<size_t>(c)] = 0.5 * (l1 - l0);
    }
    p[bend] = bend_mean;
    p[height] = std::log(std::max(over[top], 0.02 * data.mean));
    p[place] = (static_cast<double>(top) + 0.5) * data.bin_mm;
    p[left] = p[right] = std::log(width / 2.355);
    p[glow] = glow_mean, p[apart] = apart_mean;
    return p;
}

// Inverse of J^T J at the solution, priors included.
std::vector<double> covariance_of(const Binned& data, int side, const std::vector<double>& p) {
    std::vector<double> base, moved;
    residuals_of(data, side, p, base);
    cv::Mat1d j(static_cast<int>(base.size()), Split::unknowns);
    for (int k = 0; k < Split::unknowns; ++k) {
        std::vector<double> q = p;
        q[static_cast<size_t>(k)] += 1e-4;
        residuals_of(data, side, q, moved);
        for (int i = 0; i < j.rows; ++i)
            j(i, k) = (moved[static_cast<size_t>(i)] - base[static_cast<size_t>(i)]) / 1e-4;
    }
    cv::Mat1d information(cv::Mat(j.t() * j)), inverse;
    for (int k = 0; k < Split::unknowns; ++k) information(k, k) += 1e-9;
    cv::invert(information, inverse, cv::DECOMP_SVD);
    return {inverse.begin(), inverse.end()};
}

// Curves of the given parameters, at `rows` places step_mm apart.
void draw(Split& out, size_t rows, double length_mm) {
    out.body.resize(rows), out.second.resize(rows), out.surface.resize(rows);
    for (size_t i = 0; i < rows; ++i) {
        const Point point =
            model_at(out.parameters.data(), out.second_side, (static_cast<double>(i) + 0.5) * out.step_mm, length_mm);
        out.body[i] = point.body_luminance, out.second[i] = point.second, out.surface[i] = point.surface;
    }
    out.crest_mm = out.parameters[place];
    out.left_mm = std::exp(out.parameters[left]), out.right_mm = std::exp(out.parameters[right]);
    out.peak = std::exp(out.parameters[height]);
}

}  // namespace

Split split(const Profile& profile) {
    Split out;
    if (profile.size() < 24 || profile.lanes.empty()) return out;
    const Binned data = binned(profile);
    out.step_mm = data.bin_mm;
    out.total = data.luminance;
    const std::vector<double> start = first_guess(data);
    double least = 0;
    std::vector<double> best;
    // The second bell lies towards the roots, where the region begins; only plain evidence says that it was drawn the
    // other way round.
    for (const int side : {-1, 1}) {
        const card::Fit fit = card::least_squares([&](const auto& p, auto& r) { residuals_of(data, side, p, r); },
                                                  start, std::vector<double>(Split::unknowns, 1e-4), 30);
        if (best.empty() || fit.sum_of_squares + evidence_to_turn < least)
            least = fit.sum_of_squares, best = fit.parameters, out.second_side = side;
    }
    if (!std::all_of(best.begin(), best.end(), [](double v) { return std::isfinite(v); })) return out;
    std::copy(best.begin(), best.end(), out.parameters.begin());
    out.covariance = covariance_of(data, out.second_side, best);
    draw(out, data.size(), data.length_mm);
    out.peak_sd = out.peak * std::sqrt(std::max(0.0, out.covariance[height * Split::unknowns + height]));
    out.fitted = true;
    return out;
}

std::vector<double> Split::uncertainty(const Values& values) const {
    const std::vector<double> base = values(*this);
    std::vector<double> variance(base.size(), 0.0);
    if (!fitted) return variance;
    // Derivatives by each unknown, then g^T C g.
    std::vector<std::vector<double>> slopes;
    for (size_t k = 0; k < unknowns; ++k) {
        Split moved = *this;
        const double by = 0.1 * std::sqrt(std::max(1e-12, covariance[k * unknowns + k]));
        moved.parameters[k] += by;
        draw(moved, total.size(), step_mm * static_cast<double>(total.size()));
        std::vector<double> g = values(moved);
        for (size_t i = 0; i < g.size(); ++i) g[i] = (g[i] - base[i]) / by;
        slopes.push_back(std::move(g));
    }
    for (size_t i = 0; i < base.size(); ++i)
        for (size_t a = 0; a < unknowns; ++a)
            for (size_t b = 0; b < unknowns; ++b)
                variance[i] += slopes[a][i] * covariance[a * unknowns + b] * slopes[b][i];
    for (double& v : variance) v = std::sqrt(std::max(0.0, v));
    return variance;
}

}  // namespace kempt::shine
