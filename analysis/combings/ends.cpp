#include "combings/ends.h"

#include <algorithm>
#include <cmath>

namespace kempt::combings {
namespace {

constexpr int window = 26;        // px of a line that speak for its end: two millimetres of hair
constexpr float point_sd = 0.2f;  // px, of a ridge point across its line, as rendered photos of all kinds show it

// Quadratic through the last points by least squares, over the distance s from the end (s <= 0 inward). The curvature
// is held towards 0 with a standard deviation of `usual`.
void fit_end(const std::vector<cv::Point2f>& points, float usual, LineEnd& end) {
    // A parabola follows an arc well over 40 degrees of it, not over more.
    constexpr double most_turn = 0.7;
    constexpr size_t least = 10;
    size_t count = points.size();
    const auto turn = [&](size_t m) {
        const cv::Point2f a = points[0] - points[m / 3], b = points[2 * m / 3] - points[m - 1];
        return 1.5 * std::abs(std::atan2(a.cross(b), static_cast<double>(a.dot(b))));
    };
    while (count > least && turn(count) > most_turn) count = std::max(least, count * 4 / 5);
    const std::vector<cv::Point2f> p(points.begin(), points.begin() + static_cast<std::ptrdiff_t>(count));
    const int n = static_cast<int>(count);
    // Local frame: chord of the window.
    cv::Point2f chord = p[0] - p[static_cast<size_t>(n - 1)];
    const float length = std::max(1e-3f, static_cast<float>(cv::norm(chord)));
    chord *= 1 / length;
    const cv::Point2f across(-chord.y, chord.x);
    // v = a + b u + c u^2 with u along the chord from the end, inward negative.
    cv::Matx33d m = cv::Matx33d::zeros();
    cv::Vec3d r(0, 0, 0);
    for (const cv::Point2f& q : p) {
        const cv::Point2f d = q - p[0];
        const double u = d.dot(chord), v = d.dot(across), w[3] = {1, u, u * u};
        for (int i = 0; i < 3; ++i) {
            for (int j = 0; j < 3; ++j) m(i, j) += w[i] * w[j];
            r[i] += w[i] * v;
        }
    }
    const double variance = point_sd * point_sd * 2;  // neighbours share their noise
    m(2, 2) += variance / (0.25 * usual * usual);
    m(0, 0) += 1e-6, m(1, 1) += 1e-6;
    const cv::Matx33d inverse = m.inv(cv::DECOMP_CHOLESKY);
    const cv::Vec3d k = inverse * r;
    const double slope = k[1], norm = std::sqrt(1 + slope * slope);
    end.at = p[0] + static_cast<float>(k[0]) * across;
    end.ahead = (chord + static_cast<float>(slope) * across) * static_cast<float>(1 / norm);
    end.curvature = static_cast<float>(2 * k[2] / (norm * norm * norm));
    end.direction_sd = static_cast<float>(std::sqrt(std::max(1e-8, variance * inverse(1, 1))));
    end.curvature_sd = static_cast<float>(2 * std::sqrt(std::max(0.0, variance * inverse(2, 2))));
}

std::vector<cv::Point2f> last_points(const Line& line, bool last, int most) {
    const int n = std::min(most, static_cast<int>(line.at.size()));
    std::vector<cv::Point2f> p;
    for (int i = 0; i < n; ++i)
        p.push_back(line.at[last ? line.at.size() - 1 - static_cast<size_t>(i) : static_cast<size_t>(i)]);
    return p;
}

}  // namespace

float usual_curvature(const std::vector<Line>& lines) {
    double sum = 0, n = 0;
    LineEnd probe;
    for (const Line& line : lines)
        if (static_cast<int>(line.at.size()) >= window) {
            fit_end(last_points(line, true, window), 0.05f, probe);
            sum += std::min(0.0036f, probe.curvature * probe.curvature), n += 1;
        }
    // Not below the bend of straight hair (a radius of some 20 cm at 12 px/mm).
    return std::max(0.0015f, static_cast<float>(n > 0 ? std::sqrt(sum / n) : 0.01));
}

LineEnd end_of(const std::vector<cv::Point2f>& inward, float usual, const Darkness& darkness) {
    LineEnd end;
    const std::vector<cv::Point2f> p(
        inward.begin(), inward.begin() + std::min<std::ptrdiff_t>(window, static_cast<std::ptrdiff_t>(inward.size())));
    fit_end(p, usual, end);
    end.usual = usual;
    std::vector<float> dark;
    for (size_t i = 0; i < std::min<size_t>(12, p.size()); ++i) dark.push_back(darkness.at(p[i].x, p[i].y));
    std::nth_element(dark.begin(), dark.begin() + static_cast<std::ptrdiff_t>(dark.size() / 2), dark.end());
    end.sign = dark[dark.size() / 2] < 0 ? -1.f : 1.f;
    end.peak = std::max(0.01f, std::abs(dark[dark.size() / 2]));
    for (int i = 2; i <= 5; ++i) {
        const cv::Point2f q = end.at + end.ahead * static_cast<float>(i);
        end.ahead_dark += std::clamp(end.sign * darkness.at(q.x, q.y) / (0.6f * end.peak), 0.f, 1.f) / 4;
    }
    return end;
}

std::vector<LineEnd> ends_of(const std::vector<Line>& lines, const Darkness& darkness) {
    std::vector<LineEnd> ends(2 * lines.size());
    const float usual = usual_curvature(lines);
    for (size_t e = 0; e < ends.size(); ++e) {
        ends[e] = end_of(last_points(lines[e / 2], e % 2 == 1, window), usual, darkness);
        ends[e].line = static_cast<int>(e / 2);
        ends[e].last = e % 2 == 1;
        ends[e].length = static_cast<float>(lines[e / 2].at.size());
    }
    return ends;
}

std::vector<cv::Point2f> bridge(const LineEnd& from, const LineEnd& to) {
    const float gap = static_cast<float>(cv::norm(to.at - from.at));
    const int n = std::max(0, static_cast<int>(std::lround(gap)) - 1);
    std::vector<cv::Point2f> path;
    for (int i = 1; i <= n; ++i) {
        const float t = static_cast<float>(i) / static_cast<float>(n + 1), s = 1 - t;
        const float h0 = s * s * (1 + 2 * t), h1 = t * t * (1 + 2 * s), g0 = s * s * t, g1 = t * t * s;
        path.push_back(from.at * h0 + to.at * h1 + (from.ahead * g0 + to.ahead * g1) * gap);
    }
    return path;
}

}  // namespace kempt::combings
