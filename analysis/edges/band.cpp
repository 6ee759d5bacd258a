#include "edges/band.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "edges/reference_colours.h"

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

BandPiece cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration,
              const EdgeLine& line, int first, int count, double from_mm, int rows) {
    const cv::Matx33d px_from_plane = calibration.mm_from_px.inv();
    const double& step = line.step_mm;
    const int last = static_cast<int>(line.at_mm.size()) - 1;
    cv::Mat where(rows, count, CV_32FC2);
    cv::parallel_for_(cv::Range(0, rows), [&](const cv::Range& part) {
        const cv::Matx33d& h = px_from_plane;
        for (int j = part.start; j < part.end; ++j) {
            auto* row = where.ptr<cv::Vec2f>(j);
            const double depth = from_mm + (j + 0.5) * step;
            for (int i = 0; i < count; ++i) {
                const auto k = static_cast<size_t>(std::clamp(first + i, 0, last));
                const double x = line.at_mm[k].x + depth * line.inward_mm[k].x,
                             y = line.at_mm[k].y + depth * line.inward_mm[k].y;
                const double w = 1 / (h(2, 0) * x + h(2, 1) * y + h(2, 2));
                row[i] = {static_cast<float>((h(0, 0) * x + h(0, 1) * y + h(0, 2)) * w),
                          static_cast<float>((h(1, 0) * x + h(1, 1) * y + h(1, 2)) * w)};
            }
        }
    });
    double x0 = 1e9, y0 = 1e9, x1 = -1e9, y1 = -1e9;
    for (int j = 0; j < rows; ++j) {
        const auto* row = where.ptr<cv::Vec2f>(j);
        for (int i = 0; i < count; ++i) {
            x0 = std::min<double>(x0, row[i][0]), x1 = std::max<double>(x1, row[i][0]);
            y0 = std::min<double>(y0, row[i][1]), y1 = std::max<double>(y1, row[i][1]);
        }
    }
    BandPiece piece;
    piece.valid = cv::Mat(rows, count, CV_8UC1, cv::Scalar(0));
    const cv::Rect frame(0, 0, photo.pixels.cols, photo.pixels.rows);
    const cv::Rect wanted(cv::Point(static_cast<int>(std::max(-1e6, std::floor(x0))) - 3,
                                    static_cast<int>(std::max(-1e6, std::floor(y0))) - 3),
                          cv::Point(static_cast<int>(std::min(1e6, std::ceil(x1))) + 4,
                                    static_cast<int>(std::min(1e6, std::ceil(y1))) + 4));
    const cv::Rect area = wanted & frame;
    if (area.width < 4 || area.height < 4) {
        piece.log_light = cv::Mat(rows, count, CV_32FC3, cv::Scalar::all(0));
        return piece;
    }
    const cv::Mat linear = light.linear(photo.pixels(area));
    std::vector<cv::Point2f> card_face;
    if (calibration.card_found)
        for (const auto& p : calibration.card_corners_px)
            card_face.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
    const cv::Rect card_box = card_face.empty() ? cv::Rect() : cv::boundingRect(card_face);
    for (int j = 0; j < rows; ++j) {
        auto* row = where.ptr<cv::Vec2f>(j);
        auto* ok = piece.valid.ptr<uchar>(j);
        for (int i = 0; i < count; ++i) {
            const float u = row[i][0], v = row[i][1];
            bool good = u >= 0 && v >= 0 && u <= static_cast<float>(frame.width - 1) &&
                        v <= static_cast<float>(frame.height - 1);
            if (good && card_box.contains(cv::Point(static_cast<int>(u), static_cast<int>(v))))
                good = cv::pointPolygonTest(card_face, {u, v}, false) < 0;
            ok[i] = good ? 255 : 0;
            row[i][0] -= static_cast<float>(area.x);
            row[i][1] -= static_cast<float>(area.y);
        }
    }
    cv::Mat band;
    cv::remap(linear, band, where, cv::noArray(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
    piece.log_light.create(band.size(), CV_32FC3);
    cv::parallel_for_(cv::Range(0, rows), [&](const cv::Range& part) {
        cv::Mat from = band.rowRange(part).reshape(1), to = piece.log_light.rowRange(part).reshape(1);
        cv::max(from, 0.0, from);
        from += light_floor;
        cv::log(from, to);
    });
    return piece;
}

}  // namespace kempt::edges
