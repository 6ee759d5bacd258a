// Curvature, length and chord of one strand.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "core/rank.h"
#include "pattern/pieces.h"
#include "pattern/smooth_path.h"

namespace kempt::pattern {

namespace {

struct Figures {
    double curvature = 0, arc = 0, chord = 0;  // mean of |curvature|, 1/mm
    double square_mm2 = 0;                     // mean square chord of a stretch
};

// along: arc up to each point of `at`, ascending.
double mean_square_chord(const std::vector<cv::Point2d>& at, const std::vector<double>& along) {
    const double stretch = std::min(stretch_mm, along.back());
    double sum = 0;
    std::size_t count = 0, far = 0;
    for (std::size_t i = 0; i < at.size() && along[i] + stretch <= along.back() + 1e-9; ++i, ++count) {
        const double place = std::min(along[i] + stretch, along.back());
        while (far + 2 < at.size() && along[far + 1] < place) ++far;
        const double share = (place - along[far]) / std::max(1e-12, along[far + 1] - along[far]);
        const cv::Point2d chord = at[far] + share * (at[far + 1] - at[far]) - at[i];
        sum += chord.dot(chord);
    }
    return sum / static_cast<double>(count);
}

Figures figures_of(const SmoothPath& curve) {
    // Four steps between knots; figures stay the same to 1e-4 with eight.
    const int steps = 4 * static_cast<int>(std::lround(curve.end() / curve.knots_mm()));
    const double step = curve.end() / steps;
    double turned = 0, length = 0;
    std::vector<cv::Point2d> at;
    std::vector<double> along;
    for (int i = 0; i <= steps; ++i) {
        const CurvePoint p = curve.at(std::min(i * step, curve.end()));
        const double speed = cv::norm(p.first), weight = (i == 0 || i == steps ? 1 : i % 2 ? 4 : 2) * step / 3;
        length += weight * speed;
        along.push_back(at.empty() ? 0 : along.back() + cv::norm(p.at - at.back()));
        at.push_back(p.at);
        turned += weight * std::abs(p.first.cross(p.second)) / std::max(1e-12, speed * speed);
    }
    return {turned / length, length, cv::norm(at.back() - at.front()), mean_square_chord(at, along)};
}

// Normal numbers that are the same everywhere, always (Box-Muller over the SplitMix64 sequence).
class Draws {
  public:
    double normal() {
        const double u = uniform(), v = uniform();
        return std::sqrt(-2 * std::log(u)) * std::cos(2 * CV_PI * v);
    }

  private:
    double uniform() {
        std::uint64_t z = state_ += 0x9e3779b97f4a7c15ull;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ull;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebull;
        return (static_cast<double>((z ^ (z >> 31)) >> 11) + 0.5) / 9007199254740992.0;
    }
    std::uint64_t state_ = 20260301;
};

// SD of a point across, as the path itself shows it: sixth differences of points 0.5 mm apart pass a coil of 3 mm with
// 0.002 mm and noise with sqrt(924). 0 where the points lie too far apart or are too few to tell.
double noise_shown(const std::vector<cv::Point2d>& path, double length) {
    const double spacing = length / static_cast<double>(path.size() - 1);
    const auto lag = static_cast<std::size_t>(std::lround(0.5 / spacing));
    if (lag < 1 || path.size() < 6 * lag + 20) return 0;
    constexpr std::array<double, 7> binomial = {1, -6, 15, -20, 15, -6, 1};
    std::vector<double> size;
    for (std::size_t i = 0; i + 6 * lag < path.size(); ++i) {
        cv::Point2d sum;
        for (std::size_t k = 0; k < binomial.size(); ++k) sum += binomial[k] * path[i + k * lag];
        const cv::Point2d along = path[i + 4 * lag] - path[i + 2 * lag];
        size.push_back(std::abs(sum.cross(along)) / std::max(1e-9, cv::norm(along)));
    }
    // Median of |x| of a normal x is 0.6745 SD. A traced path has been smoothed over a millimetre, which leaves about
    // half of the differences' band: sqrt(2).
    return std::sqrt(2.0) * at_rank(size, 0.5) / 0.6745 / std::sqrt(924.0);
}

Course course_of(const SmoothPath& curve) {
    std::vector<double> bent;  // signed curvature
    const double step = 0.25;
    double mean = 0;
    for (double t = 0; t <= curve.end(); t += step) {
        const CurvePoint p = curve.at(t);
        const double speed = std::max(1e-9, cv::norm(p.first));
        bent.push_back(p.first.cross(p.second) / (speed * speed * speed));
        mean += std::abs(bent.back());
    }
    mean /= static_cast<double>(bent.size());
    std::vector<double> sorted;
    for (const double k : bent) sorted.push_back(std::abs(k));
    const double most = std::max(0.25, 10 * at_rank(sorted, 0.5));
    Course course;
    int side = 0, swings = 0;
    for (std::size_t i = 0; i < bent.size(); ++i) {
        const double t = step * static_cast<double>(i);
        if (std::abs(bent[i]) > most && (course.kinks_mm.empty() || t > course.kinks_mm.back() + 2))
            course.kinks_mm.push_back(t);
        if (std::abs(bent[i]) < 0.2 * mean) continue;
        const int now = bent[i] > 0 ? 1 : -1;
        swings += side != 0 && now != side;
        side = now;
    }
    course.swings_per_mm = swings / curve.end();
    return course;
}

}  // namespace

Result<Shape> shape_of(const std::vector<cv::Point2d>& path_mm, double noise_mm) {
    return shape_and_course(path_mm, noise_mm, nullptr);
}

Result<Shape> shape_and_course(const std::vector<cv::Point2d>& path_mm, double noise_mm, Course* course) {
    std::vector<cv::Point2d> path;
    for (const cv::Point2d& p : path_mm)
        if (std::isfinite(p.x) && std::isfinite(p.y) && (path.empty() || cv::norm(p - path.back()) > 1e-6))
            path.push_back(p);
    double length = 0;
    for (std::size_t i = 1; i < path.size(); ++i) length += cv::norm(path[i] - path[i - 1]);
    if (path.size() < 5 || length < 10)
        return Error{ErrorKind::invalid, "strand-too-short",
                     "A strand of fewer than five points, or shorter than 10 mm, has no shape that can be measured.",
                     "", "Lay down a longer strand."};
    const double noise = std::max({noise_mm, noise_shown(path, length), 1e-3});
    SmoothPath curve(path, noise);
    const Figures found = figures_of(curve);
    if (course) *course = course_of(curve);
    // What the smoothing itself does: the found curve, made noisy again and smoothed again, errs by about as much as
    // the strand does (bootstrap estimate of bias; Efron and Tibshirani 1993, chapter 10). Drawn in pairs of opposite
    // noise, so that only the bias stays.
    std::vector<CurvePoint> on_curve;
    for (const double t : curve.parameters()) on_curve.push_back(curve.at(t));
    constexpr int pairs = 6;
    Draws draws;
    Figures mean;
    double curvatures = 0;
    std::vector<double> off(path.size());
    for (int draw = 0; draw < 2 * pairs; ++draw) {
        std::vector<cv::Point2d> again;
        for (std::size_t i = 0; i < on_curve.size(); ++i) {
            off[i] = draw % 2 ? -off[i] : noise * draws.normal();
            const cv::Point2d along = on_curve[i].first / std::max(1e-12, cv::norm(on_curve[i].first));
            again.push_back(on_curve[i].at + off[i] * cv::Point2d(-along.y, along.x));
        }
        curve.refit(again);
        const Figures one = figures_of(curve);
        mean.curvature += one.curvature / (2 * pairs);
        mean.arc += one.arc / (2 * pairs);
        mean.chord += one.chord / (2 * pairs);
        mean.square_mm2 += one.square_mm2 / (2 * pairs);
        curvatures += one.curvature * one.curvature / (2 * pairs);
    }
    Shape shape;
    shape.noise_mm = noise;
    // Never below a third of what was found: noise alone can explain all the curvature of a straight strand.
    const double curvature = std::max(2 * found.curvature - mean.curvature, found.curvature / 3);
    shape.curve_diameter_mm = 2 / std::max(curvature, 1e-6);
    shape.curve_diameter_sd =
        std::sqrt(std::max(0.0, curvatures - mean.curvature * mean.curvature)) / std::max(curvature, 1e-6);
    shape.chord_mm = std::max(1e-3, 2 * found.chord - mean.chord);
    shape.arc_mm = std::max(2 * found.arc - mean.arc, shape.chord_mm);
    const double square = std::max(1e-6, 2 * found.square_mm2 - mean.square_mm2);
    shape.wave_ratio = std::max(1.0, std::min(stretch_mm, shape.arc_mm) / std::sqrt(square));
    return shape;
}

}  // namespace kempt::pattern
