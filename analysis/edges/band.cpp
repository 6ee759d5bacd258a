#include "edges/band.h"

#include <algorithm>
#include <cmath>

namespace kempt::edges {

namespace {

double cross(cv::Point2d a, cv::Point2d b) {
    return a.x * b.y - a.y * b.x;
}

bool segments_cross(cv::Point2d a, cv::Point2d b, cv::Point2d c, cv::Point2d d) {
    const double p = cross(b - a, c - a), q = cross(b - a, d - a), r = cross(d - c, a - c), s = cross(d - c, b - c);
    return p * q < 0 && r * s < 0;
}

bool crosses_itself(const std::vector<cv::Point2d>& line) {
    for (size_t i = 0; i + 1 < line.size(); ++i)
        for (size_t j = i + 2; j + 1 < line.size(); ++j)
            if (segments_cross(line[i], line[i + 1], line[j], line[j + 1])) return true;
    return false;
}

// Evenly spaced points along a polyline.
std::vector<cv::Point2d> resample(const std::vector<cv::Point2d>& line, double step) {
    std::vector<cv::Point2d> out{line.front()};
    double left = step;
    for (size_t i = 0; i + 1 < line.size(); ++i) {
        const cv::Point2d d = line[i + 1] - line[i];
        const double length = std::hypot(d.x, d.y);
        double at = left;
        while (at <= length && length > 0) {
            out.push_back(line[i] + d * (at / length));
            at += step;
        }
        left = at - length;
    }
    return out;
}

// Gaussian-weighted course of the line at each point.
std::vector<cv::Point2d> smooth_tangents(const std::vector<cv::Point2d>& at, double step) {
    const int n = static_cast<int>(at.size()), reach = std::max(1, static_cast<int>(3 * normal_smoothing_mm / step));
    // Prefix sums of weights would do for a box; two boxes are close enough to a Gaussian and cheap.
    std::vector<cv::Point2d> t(at.size());
    for (int i = 0; i < n; ++i)
        t[static_cast<size_t>(i)] =
            at[static_cast<size_t>(std::min(n - 1, i + 1))] - at[static_cast<size_t>(std::max(0, i - 1))];
    const int half = std::max(1, reach / 3);
    for (int pass = 0; pass < 3; ++pass) {
        std::vector<cv::Point2d> sum(at.size() + 1), next(at.size());
        for (int i = 0; i < n; ++i)
            sum[static_cast<size_t>(i + 1)] = sum[static_cast<size_t>(i)] + t[static_cast<size_t>(i)];
        for (int i = 0; i < n; ++i) {
            const int a = std::max(0, i - half), b = std::min(n, i + half + 1);
            next[static_cast<size_t>(i)] =
                (sum[static_cast<size_t>(b)] - sum[static_cast<size_t>(a)]) * (1.0 / (b - a));
        }
        t.swap(next);
    }
    for (auto& v : t) {
        const double length = std::hypot(v.x, v.y);
        if (length > 0) v *= 1 / length;
    }
    return t;
}

}  // namespace

Result<EdgeLine> straighten(const Photo& photo, const card::Calibration& calibration,
                            const std::vector<cv::Point2d>& line_px, cv::Point2d hair_side_px) {
    const cv::Rect2d frame(-0.5, -0.5, photo.pixels.cols, photo.pixels.rows);
    if (line_px.size() < 2)
        return Error{ErrorKind::invalid, "line-too-short", "The edge line has fewer than two points.", "",
                     "Draw it along the first hairs."};
    for (const auto& p : line_px)
        if (!std::isfinite(p.x) || !std::isfinite(p.y) || !frame.contains(p))
            return Error{ErrorKind::invalid, "line-outside", "The edge line leaves the photo.", "",
                         "Keep all its points on the picture."};
    if (crosses_itself(line_px))
        return Error{ErrorKind::invalid, "line-crosses", "The edge line crosses itself.", "",
                     "Draw it once from one side to the other."};
    std::vector<cv::Point2d> line_mm;
    for (const auto& p : line_px) line_mm.push_back(card::mm_from_px(calibration, p));
    EdgeLine line;
    for (size_t i = 0; i + 1 < line_mm.size(); ++i)
        line.length_mm += std::hypot(line_mm[i + 1].x - line_mm[i].x, line_mm[i + 1].y - line_mm[i].y);
    if (!(line.length_mm >= 10) || line.length_mm > 400)
        return Error{
            ErrorKind::invalid, "line-too-short",
            line.length_mm > 400 ? "The edge line is longer than 400 mm, so the scale cannot be right."
                                 : "The edge line is shorter than 10 mm.",
            "", line.length_mm > 400 ? "Check the card or the two scale points." : "Draw at least 10 mm of the edge."};
    const cv::Point2d middle = line_px[line_px.size() / 2];
    line.px_per_mm = card::px_per_mm_at(calibration, middle);
    line.step_mm = 1 / std::clamp(line.px_per_mm, coarsest_band_px_per_mm, finest_band_px_per_mm);
    line.at_mm = resample(line_mm, line.step_mm);
    line.inward_mm = smooth_tangents(line.at_mm, line.step_mm);
    // The hair's side: of the line's nearest point, left or right.
    const cv::Point2d hair = card::mm_from_px(calibration, hair_side_px);
    size_t nearest = 0;
    double best = 1e300;
    for (size_t i = 0; i < line.at_mm.size(); ++i) {
        const cv::Point2d d = hair - line.at_mm[i];
        if (d.dot(d) < best) best = d.dot(d), nearest = i;
    }
    const double side = cross(line.inward_mm[nearest], hair - line.at_mm[nearest]);
    if (std::abs(side) < 0.2)
        return Error{ErrorKind::invalid, "hair-side-unclear", "The hair-side mark lies on the edge line itself.", "",
                     "Put it well inside the hair."};
    for (auto& t : line.inward_mm) t = side > 0 ? cv::Point2d(-t.y, t.x) : cv::Point2d(t.y, -t.x);
    return line;
}

cv::Point2d px_of(const card::Calibration& calibration, const EdgeLine& line, double along_mm, double depth_mm) {
    const double at = std::clamp(along_mm / line.step_mm, 0.0, static_cast<double>(line.at_mm.size() - 1));
    const size_t i = static_cast<size_t>(at), j = std::min(i + 1, line.at_mm.size() - 1);
    const double t = at - static_cast<double>(i);
    return card::px_from_mm(calibration, line.at_mm[i] * (1 - t) + line.at_mm[j] * t + depth_mm * line.inward_mm[i]);
}

}  // namespace kempt::edges
