// Strands as polylines with a known shape, clean or as a digitised photo would give them.
#pragma once

#include <cmath>
#include <functional>
#include <opencv2/core.hpp>
#include <random>
#include <vector>

namespace tests {

using Path = std::vector<cv::Point2d>;

// Points at even steps of arc length along a finely drawn curve.
inline Path even(const Path& fine, double step_mm) {
    Path path{fine.front()};
    double since = 0;
    for (std::size_t i = 1; i < fine.size(); ++i) {
        since += cv::norm(fine[i] - fine[i - 1]);
        if (since >= step_mm) path.push_back(fine[i]), since -= step_mm;
    }
    return path;
}

inline Path drawn(const std::function<cv::Point2d(double)>& curve, double from, double to, int points = 200000) {
    Path path;
    for (int i = 0; i <= points; ++i) path.push_back(curve(from + (to - from) * i / points));
    return path;
}

inline Path circle(double diameter_mm, double length_mm) {
    const double r = diameter_mm / 2;
    return drawn([=](double s) { return cv::Point2d(r * std::cos(s / r + 0.3), r * std::sin(s / r + 0.3)); }, 0,
                 length_mm);
}

inline Path wave(double amplitude_mm, double wave_mm, int waves) {
    return drawn([=](double x) { return cv::Point2d(x, amplitude_mm * std::sin(2 * CV_PI * x / wave_mm)); }, 0,
                 waves * wave_mm);
}

inline double length_of(const Path& path) {
    double sum = 0;
    for (std::size_t i = 1; i < path.size(); ++i) sum += cv::norm(path[i] - path[i - 1]);
    return sum;
}

// SD of each coordinate.
inline Path noisy(const Path& path, double sd_mm, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> draw(0, sd_mm);
    Path out;
    for (const cv::Point2d& p : path) out.emplace_back(p.x + draw(random), p.y + draw(random));
    return out;
}

// The chain of whole pixels that the curve passes, as a skeleton gives it, in mm again.
inline Path in_pixels(const Path& fine, double px_per_mm) {
    Path out;
    for (const cv::Point2d& p : fine) {
        const cv::Point2d q(std::round(p.x * px_per_mm) / px_per_mm, std::round(p.y * px_per_mm) / px_per_mm);
        if (out.empty() || cv::norm(q - out.back()) > 1e-9) out.push_back(q);
    }
    // Steps around a corner are cut: a skeleton's pixels touch along edges or corners, but do not turn square.
    Path thin;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const bool corner =
            i > 0 && i + 1 < out.size() && !thin.empty() && cv::norm(out[i + 1] - thin.back()) < 1.5 / px_per_mm;
        if (!corner) thin.push_back(out[i]);
    }
    return thin;
}

}  // namespace tests
