#include "shine/split.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "card/least_squares.h"

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

// Noise of the data. Rows are not independent: the same fibre stays in view for millimetres.
constexpr double correlation_mm = 12;
constexpr double shape_misfit = 0.015;   // of the peak: no lobe is a perfect bell
constexpr double level_misfit = 0.003;   // of the light: unevenness, tone curve
constexpr double colour_noise = 0.002;   // least relative noise of a channel against green
constexpr double colour_floor = 0.0003;  // of light: codes of dark hair are coarse
constexpr double huber = 2;

constexpr std::array<double, 3> luminance_of{0.2126, 0.7152, 0.0722};
double luminance(const cv::Vec3d& v) {
    return luminance_of[0] * v[0] + luminance_of[1] * v[1] + luminance_of[2] * v[2];
}
double softened(double r) {
    const double a = std::abs(r);
    return a <= huber ? r : std::copysign(std::sqrt(huber * (2 * a - huber)), r);
}

struct Task {
    double bin_mm = 0, length_mm = 0;
    std::vector<cv::Vec3d> light;
    std::vector<double> luminance, sd;          // by bin
    std::vector<double> red_green, blue_green;  // logs
    std::vector<double> colour_sd;
    double mean = 0;
    int side = -1;
};

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

void residuals_of(const Task& task, const std::vector<double>& p, std::vector<double>& r) {
    r.clear();
    for (size_t i = 0; i < task.light.size(); ++i) {
        const Point point = model_at(p.data(), task.side, (static_cast<double>(i) + 0.5) * task.bin_mm, task.length_mm);
        const double y =
            luminance_of[0] * point.light[0] + luminance_of[1] * point.light[1] + luminance_of[2] * point.light[2];
        r.push_back(softened((y - task.luminance[i]) / task.sd[i]));
        const double green = std::log(std::max(point.light[1], 1e-6));
        r.push_back(
            softened((std::log(std::max(point.light[0], 1e-6)) - green - task.red_green[i]) / task.colour_sd[i]));
        r.push_back(
            softened((std::log(std::max(point.light[2], 1e-6)) - green - task.blue_green[i]) / task.colour_sd[i]));
    }
    const double slopes = (p[slope] + p[slope + 1] + p[slope + 2]) / 3;
    r.push_back((p[bend] - bend_mean) / bend_sd);
    for (size_t c = 0; c < 3; ++c) r.push_back((p[slope + c] - slopes) / colour_drift_sd);
    r.push_back(slopes / slope_sd);
    r.push_back((p[left] - p[right]) / lopsided_sd);
    r.push_back((p[glow] - glow_mean) / glow_sd);
    r.push_back((p[apart] - apart_mean) / apart_sd);
    r.push_back((0.5 * (p[left] + p[right]) - std::log(task.length_mm / region_in_spreads)) / width_sd);
}

std::vector<double> smooth(const std::vector<double>& v, int reach) {
    const int n = static_cast<int>(v.size());
    std::vector<double> out(v.size());
    for (int i = 0; i < n; ++i) {
        const int a = std::max(0, i - reach), b = std::min(n, i + reach + 1);
        out[static_cast<size_t>(i)] = std::accumulate(v.begin() + a, v.begin() + b, 0.0) / (b - a);
    }
    return out;
}

// Size of what is left of v after smoothing over 2 reach + 1.
double roughness(const std::vector<double>& v, int reach) {
    const std::vector<double> soft = smooth(v, reach);
    double sum = 0;
    for (size_t i = 0; i < v.size(); ++i) sum += (v[i] - soft[i]) * (v[i] - soft[i]);
    return std::sqrt(sum / static_cast<double>(v.size()));
}

struct Start {
    std::vector<double> parameters;
    std::vector<double> over;  // light over the straight line, smoothed
};

Start first_guess(const Task& task) {
    const size_t n = task.light.size(), rim = std::max<size_t>(2, n / 12);
    cv::Vec3d first, last;
    for (size_t i = 0; i < rim; ++i)
        first += task.light[i] * (1.0 / static_cast<double>(rim)),
            last += task.light[n - 1 - i] * (1.0 / static_cast<double>(rim));
    Start start;
    const double y0 = luminance(first), y1 = luminance(last);
    for (size_t i = 0; i < n; ++i) {
        const double t = (static_cast<double>(i) + 0.5) / static_cast<double>(n);
        start.over.push_back(task.luminance[i] - (y0 + t * (y1 - y0)));
    }
    start.over = smooth(start.over, 4);
    const auto top =
        static_cast<size_t>(std::max_element(start.over.begin() + 2, start.over.end() - 2) - start.over.begin());
    size_t a = top, b = top;
    while (a > 0 && start.over[a] > 0.5 * start.over[top]) --a;
    while (b + 1 < n && start.over[b] > 0.5 * start.over[top]) ++b;
    const double width =
        std::clamp(task.bin_mm * static_cast<double>(b - a), 0.1 * task.length_mm, 0.5 * task.length_mm);
    auto& p = start.parameters;
    p.assign(Split::unknowns, 0.0);
    for (int c = 0; c < 3; ++c) {
        const double l0 = std::log(std::max(first[c], 1e-5)), l1 = std::log(std::max(last[c], 1e-5));
        p[level + static_cast<size_t>(c)] = 0.5 * (l0 + l1);
        p[slope + static_cast<size_t>(c)] = 0.5 * (l1 - l0);
    }
    p[bend] = bend_mean;
    p[height] = std::log(std::max(start.over[top], 0.02 * task.mean));
    p[place] = (static_cast<double>(top) + 0.5) * task.bin_mm;
    p[left] = p[right] = std::log(width / 2.355);
    p[glow] = glow_mean, p[apart] = apart_mean;
    return start;
}

Task task_of(const Profile& profile) {
    Task task;
    const double row = profile.step_mm;
    const auto per_bin = static_cast<size_t>(
        std::max(1.0, std::round(std::max(0.5, row * static_cast<double>(profile.size()) / 140) / row)));
    const size_t n = profile.size() / per_bin;
    task.bin_mm = row * static_cast<double>(per_bin);
    task.length_mm = task.bin_mm * static_cast<double>(n);
    double lane_variance = 0;
    for (size_t i = 0; i < n; ++i) {
        cv::Vec3d sum;
        for (size_t k = 0; k < per_bin; ++k)
            sum += profile.light[i * per_bin + k] * (1.0 / static_cast<double>(per_bin));
        for (int c = 0; c < 3; ++c) sum[c] = std::max(sum[c], 1e-5);
        task.light.push_back(sum);
        task.luminance.push_back(luminance(sum));
        task.red_green.push_back(std::log(sum[0] / sum[1]));
        task.blue_green.push_back(std::log(sum[2] / sum[1]));
        // How much the lanes differ here: the mean of them errs by that over the root of their number.
        double m = 0, q = 0;
        for (const Lane& lane : profile.lanes) {
            double y = 0;
            for (size_t k = 0; k < per_bin; ++k)
                y += luminance(lane.light[i * per_bin + k]) / static_cast<double>(per_bin);
            m += y, q += y * y;
        }
        const double count = static_cast<double>(profile.lanes.size());
        m /= count;
        if (count > 1) lane_variance += std::max(0.0, q / count - m * m) / (count - 1) / static_cast<double>(n);
    }
    task.mean = std::accumulate(task.luminance.begin(), task.luminance.end(), 0.0) / static_cast<double>(n);
    const int reach = std::max(1, static_cast<int>(3 / task.bin_mm));
    const double chroma =
        std::max(colour_noise, std::max(roughness(task.red_green, reach), roughness(task.blue_green, reach)));
    const double inflate = std::sqrt(std::max(1.0, correlation_mm / task.bin_mm));
    const std::vector<double> over = first_guess(task).over;
    for (size_t i = 0; i < n; ++i) {
        const double peak = std::max(0.0, over[i]), y = task.luminance[i];
        task.sd.push_back(inflate *
                          std::sqrt(lane_variance + std::pow(shape_misfit * peak, 2) + std::pow(level_misfit * y, 2)));
        task.colour_sd.push_back(inflate * (chroma + colour_floor / std::max(y, 1e-4)));
    }
    return task;
}

// Inverse of J^T J at the solution, priors included.
std::vector<double> covariance_of(const Task& task, const std::vector<double>& p) {
    std::vector<double> base, moved;
    residuals_of(task, p, base);
    cv::Mat1d j(static_cast<int>(base.size()), Split::unknowns);
    for (int k = 0; k < Split::unknowns; ++k) {
        std::vector<double> q = p;
        q[static_cast<size_t>(k)] += 1e-4;
        residuals_of(task, q, moved);
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
    Task task = task_of(profile);
    out.step_mm = task.bin_mm;
    out.total = task.luminance;
    const Start start = first_guess(task);
    double least = 0;
    std::vector<double> best;
    // The second bell lies towards the roots, where the region begins; only plain evidence says that it was drawn the
    // other way round.
    for (const int side : {-1, 1}) {
        task.side = side;
        const card::Fit fit = card::least_squares([&](const auto& p, auto& r) { residuals_of(task, p, r); },
                                                  start.parameters, std::vector<double>(Split::unknowns, 1e-4), 30);
        if (best.empty() || fit.sum_of_squares + evidence_to_turn < least)
            least = fit.sum_of_squares, best = fit.parameters, out.second_side = side;
    }
    if (!std::all_of(best.begin(), best.end(), [](double v) { return std::isfinite(v); })) return out;
    task.side = out.second_side;
    std::copy(best.begin(), best.end(), out.parameters.begin());
    out.covariance = covariance_of(task, best);
    draw(out, task.light.size(), task.length_mm);
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
