#include "tone/lane.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <optional>

#include "card/card_layout.h"

namespace kempt::tone {
namespace {

// A fibre of 0.07 mm is a pixel wide at 14 px/mm; finer sampling tells nothing about colour and costs time.
constexpr double finest_per_mm = 12;
constexpr double closest_mm = 0.2;    // clicks nearer than this are one
constexpr double longest_mm = 1000;   // of a strand: longer means a wrong scale
constexpr double card_margin_mm = 1;  // of the card's edge: its shadow and blur
// The card tells how the light falls off where it lies. A straight fall (in log light) is followed this far from its
// middle and held from there on: a lamp's fall is not straight over a whole head of hair.
constexpr double gradient_reach_mm = 90;
constexpr double black_light = 5e-4;  // L* 0.45: below the noise of any phone

double length(cv::Point2d v) {
    return std::hypot(v.x, v.y);
}

// A point before the first (or, from the other end, after the last), so that the curve keeps turning there as it turns
// at the next click.
cv::Point2d before(cv::Point2d first, cv::Point2d second, std::optional<cv::Point2d> third) {
    const cv::Point2d chord = second - first;
    if (!third) return first - chord;
    const cv::Point2d next = *third - second;
    const double most = CV_PI / 3;  // a sharper corner is a slip of the hand, not a curl that goes on
    const double turn = std::clamp(std::atan2(chord.x * next.y - chord.y * next.x, chord.dot(next)), -most, most);
    return first - cv::Point2d(chord.x * std::cos(turn) + chord.y * std::sin(turn),
                               -chord.x * std::sin(turn) + chord.y * std::cos(turn));
}

// Points of the curve every `step_mm` or closer, from the first point to the last.
std::vector<cv::Point2d> curve_through(const std::vector<cv::Point2d>& points, double step_mm) {
    std::vector<cv::Point2d> curve{points.front()};
    const size_t n = points.size();
    const bool bends = n > 2;
    const cv::Point2d head = before(points[0], points[1], bends ? std::optional(points[2]) : std::nullopt),
                      tail = before(points[n - 1], points[n - 2], bends ? std::optional(points[n - 3]) : std::nullopt);
    for (size_t i = 0; i + 1 < n; ++i) {
        const cv::Point2d p1 = points[i], p2 = points[i + 1];
        const cv::Point2d p0 = i > 0 ? points[i - 1] : head, p3 = i + 2 < n ? points[i + 2] : tail;
        const double t1 = std::sqrt(length(p1 - p0)), t2 = t1 + std::sqrt(length(p2 - p1)),
                     t3 = t2 + std::sqrt(length(p3 - p2));
        const int pieces = std::max(1, static_cast<int>(std::ceil(1.3 * length(p2 - p1) / step_mm)));
        for (int k = 1; k <= pieces; ++k) {
            const double t = t1 + (t2 - t1) * k / pieces;
            const cv::Point2d a1 = p0 * ((t1 - t) / t1) + p1 * (t / t1),
                              a2 = p1 * ((t2 - t) / (t2 - t1)) + p2 * ((t - t1) / (t2 - t1)),
                              a3 = p2 * ((t3 - t) / (t3 - t2)) + p3 * ((t - t2) / (t3 - t2));
            const cv::Point2d b1 = a1 * ((t2 - t) / t2) + a2 * (t / t2),
                              b2 = a2 * ((t3 - t) / (t3 - t1)) + a3 * ((t - t1) / (t3 - t1));
            curve.push_back(b1 * ((t2 - t) / (t2 - t1)) + b2 * ((t - t1) / (t2 - t1)));
        }
    }
    return curve;
}

void place_rows(Lane& lane, const std::vector<cv::Point2d>& curve) {
    std::vector<double> along{0};
    for (size_t i = 1; i < curve.size(); ++i) along.push_back(along.back() + length(curve[i] - curve[i - 1]));
    lane.length_mm = along.back();
    const int rows = std::max(2, static_cast<int>(std::floor(lane.length_mm * lane.rows_per_mm)));
    size_t at = 0;
    for (int row = 0; row < rows; ++row) {
        const double s = (row + 0.5) / lane.rows_per_mm;
        while (at + 2 < curve.size() && along[at + 1] < s) ++at;
        const double piece = std::max(along[at + 1] - along[at], 1e-9);
        lane.centre_mm.push_back(curve[at] + (curve[at + 1] - curve[at]) * ((s - along[at]) / piece));
    }
    // The course over about a millimetre to both sides, so that the lane does not fan out at a bend.
    const int reach = std::max(1, cvRound(lane.rows_per_mm));
    for (int row = 0; row < rows; ++row) {
        const cv::Point2d course = lane.centre_mm[static_cast<size_t>(std::min(rows - 1, row + reach))] -
                                   lane.centre_mm[static_cast<size_t>(std::max(0, row - reach))];
        const double n = std::max(length(course), 1e-9);
        lane.across_mm.emplace_back(-course.y / n, course.x / n);
    }
}

}  // namespace

cv::Point2d Lane::px(const card::Calibration& calibration, double along_mm, double aside_mm) const {
    const double row = std::clamp(along_mm * rows_per_mm - 0.5, 0.0, static_cast<double>(centre_mm.size() - 1));
    const size_t i = std::min(static_cast<size_t>(row), centre_mm.size() - 2);
    const double k = row - static_cast<double>(i);
    const cv::Point2d centre = centre_mm[i] * (1 - k) + centre_mm[i + 1] * k,
                      aside = across_mm[i] * (1 - k) + across_mm[i + 1] * k;
    return card::px_from_mm(calibration, centre + aside * aside_mm);
}

Result<Lane> straighten_lane(const Photo& photo, const card::Calibration& calibration,
                             const std::vector<cv::Point2d>& line_px, double lane_mm, double least_length_mm) {
    const cv::Rect2d frame(-0.5, -0.5, photo.pixels.cols, photo.pixels.rows);
    for (const cv::Point2d& p : line_px)
        if (!std::isfinite(p.x) || !std::isfinite(p.y) || !frame.contains(p))
            return Error{ErrorKind::invalid, "line-outside", "The strand line leaves the photo.", "",
                         "Keep all its points on the picture."};
    std::vector<cv::Point2d> points;
    for (const cv::Point2d& p : line_px) {
        const cv::Point2d mm = card::mm_from_px(calibration, p);
        if (points.empty() || length(mm - points.back()) >= closest_mm) points.push_back(mm);
    }
    if (points.size() < 2)
        return Error{ErrorKind::invalid, "line-too-short", "The strand line has fewer than two points.", "",
                     "Draw it along a strand, from the scalp to the ends."};
    Lane lane;
    lane.width_mm = lane_mm;
    lane.rows_per_mm = std::clamp(card::px_per_mm_at(calibration, line_px[line_px.size() / 2]), 2.0, finest_per_mm);
    double drawn = 0;
    for (size_t i = 1; i < points.size(); ++i) drawn += length(points[i] - points[i - 1]);
    if (!(drawn <= longest_mm))
        return Error{ErrorKind::invalid, "line-too-long",
                     "The strand line is longer than a metre, so the scale cannot be right.", "",
                     "Check the gauge card in the photo."};
    if (drawn < least_length_mm)
        return Error{ErrorKind::invalid, "line-too-short",
                     "The strand line is too short to tell root, mid-shaft and ends apart.", "",
                     "Draw it along a strand, from the scalp to the ends."};
    place_rows(lane, curve_through(points, 0.5));

    const int rows = static_cast<int>(lane.centre_mm.size()), cols = std::max(3, cvRound(lane_mm * lane.rows_per_mm));
    const bool wide = photo.pixels.depth() == CV_16U;
    cv::Mat codes(rows, cols, photo.pixels.type(), cv::Scalar::all(0));
    lane.state = cv::Mat(rows, cols, CV_8U, cv::Scalar(Lane::seen));
    const cv::Matx33d px_from_mm = calibration.mm_from_px.inv();
    const auto project = [&](cv::Point2d mm) {
        const cv::Vec3d q = px_from_mm * cv::Vec3d(mm.x, mm.y, 1);
        return cv::Point2d(q[0] / q[2], q[1] / q[2]);
    };
    const bool beside_card = calibration.card_found;
    const double burnt_code = wide ? 254.0 * 257 : 254.0;
    for (int row = 0; row < rows; ++row) {
        const auto r = static_cast<size_t>(row);
        uchar* state = lane.state.ptr<uchar>(row);
        for (int col = 0; col < cols; ++col) {
            const cv::Point2d mm = lane.centre_mm[r] + lane.across_mm[r] * ((col + 0.5) / cols - 0.5) * lane_mm;
            const cv::Point2d px = project(mm);
            const int x = cvRound(px.x), y = cvRound(px.y);
            if (x < 0 || y < 0 || x >= photo.pixels.cols || y >= photo.pixels.rows) {
                state[col] = Lane::outside;
                continue;
            }
            if (beside_card && mm.x > -card_margin_mm && mm.y > -card_margin_mm &&
                mm.x < card::card_width_mm + card_margin_mm && mm.y < card::card_height_mm + card_margin_mm) {
                state[col] = Lane::under_card;
                continue;
            }
            int burnt = 0;
            if (wide) {
                const cv::Vec3w code = codes.at<cv::Vec3w>(row, col) = photo.pixels.at<cv::Vec3w>(y, x);
                for (int c = 0; c < 3; ++c) burnt += code[c] >= burnt_code;
            } else {
                const cv::Vec3b code = codes.at<cv::Vec3b>(row, col) = photo.pixels.at<cv::Vec3b>(y, x);
                for (int c = 0; c < 3; ++c) burnt += code[c] >= burnt_code;
            }
            if (burnt >= 2) state[col] = Lane::burnt;
        }
    }
    lane.light = card::LightMap(photo, calibration).linear(codes);

    const cv::Vec2d slope = calibration.light
                                ? calibration.light->gradient_direction * (calibration.light->gradient_per_cm / 10)
                                : cv::Vec2d(0, 0);  // of log light, per mm
    const cv::Point2d card_middle(card::card_width_mm / 2, card::card_height_mm / 2);
    for (int row = 0; row < rows; ++row) {
        const cv::Point2d off = lane.centre_mm[static_cast<size_t>(row)] - card_middle;
        const double fall = off.x * slope[0] + off.y * slope[1], far = length(off);
        const auto even = static_cast<float>(std::exp(-fall * std::min(1.0, gradient_reach_mm / std::max(far, 1e-9))));
        cv::Vec3f* light = lane.light.ptr<cv::Vec3f>(row);
        uchar* state = lane.state.ptr<uchar>(row);
        for (int col = 0; col < cols; ++col) {
            const float y = 0.2126f * light[col][0] + 0.7152f * light[col][1] + 0.0722f * light[col][2];
            if (state[col] == Lane::seen && y <= black_light) state[col] = Lane::black;
            light[col] *= even;
        }
    }
    return lane;
}

}  // namespace kempt::tone
