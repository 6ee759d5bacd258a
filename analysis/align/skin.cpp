#include "align/skin.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/rank.h"

namespace kempt::align {

namespace {

constexpr double none_mm = 1.0, full_mm = 2.0;  // outside the line
constexpr double inward_mm = 40;
constexpr double step_mm = 1;
constexpr float light_floor = 0.002f;
// Light over one strip of forehead falls to a third towards the side (a head of 85 mm radius lit from 60 degrees) and
// rises by half at a highlight.
constexpr float darkest = 1.2f, brightest = 0.8f;
constexpr float least_width = 0.10f;  // of red over green: blotches and freckles

cv::Point2d unit(cv::Point2d v) {
    const double n = std::hypot(v.x, v.y);
    return n > 0 ? v / n : cv::Point2d(1, 0);
}

// Even steps, both ends prolonged along the course of their last 8 mm.
std::vector<cv::Point2d> prolonged(const std::vector<cv::Point2d>& line) {
    std::vector<cv::Point2d> even{line.front()};
    double left = step_mm;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const cv::Point2d d = line[i] - line[i - 1];
        const double length = std::hypot(d.x, d.y);
        double at = left;
        for (; at <= length && even.size() < 2000; at += step_mm) even.push_back(line[i - 1] + d * (at / length));
        left = at - length;
    }
    if (even.size() < 2) even.push_back(line.back());
    const std::size_t course = std::min<std::size_t>(even.size() - 1, 8);
    const cv::Point2d before = unit(even.front() - even[course]),
                      after = unit(even.back() - even[even.size() - 1 - course]);
    std::vector<cv::Point2d> out;
    for (double d = skin_beyond_mm; d > 0; d -= step_mm) out.push_back(even.front() + before * d);
    out.insert(out.end(), even.begin(), even.end());
    for (double d = step_mm; d <= skin_beyond_mm; d += step_mm) out.push_back(even.back() + after * d);
    return out;
}

struct Course {
    std::vector<cv::Point2d> line, outward;  // unit normals away from the hair
};

Course course_of(const LineSide& side) {
    Course course{prolonged(side.line_mm), {}};
    const std::vector<cv::Point2d>& line = course.line;
    const std::size_t n = line.size();
    course.outward.resize(n);
    double toward = 0, nearest = 1e300;
    for (std::size_t i = 0; i < n; ++i) {
        // Over 4 mm to each side, so that single clicks do not fan the strip out.
        const cv::Point2d along = unit(line[std::min(i + 4, n - 1)] - line[i > 4 ? i - 4 : 0]);
        course.outward[i] = {-along.y, along.x};
        const cv::Point2d apart = side.hair_mm - line[i];
        if (apart.dot(apart) < nearest) nearest = apart.dot(apart), toward = course.outward[i].dot(apart);
    }
    if (toward > 0)
        for (cv::Point2d& v : course.outward) v = -v;
    return course;
}

}  // namespace

cv::Rect2d bare_box_mm(const LineSide& side) {
    const Course course = course_of(side);
    cv::Point2d low = course.line.front(), high = low;
    for (std::size_t i = 0; i < course.line.size(); ++i)
        for (const cv::Point2d& p : {course.line[i], course.line[i] + course.outward[i] * skin_reach_mm}) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y)};
        }
    return {low, high};
}

cv::Mat bare_side(const Ground& ground, const LineSide& side) {
    const Course course = course_of(side);
    const std::vector<cv::Point2d>&line = course.line, &outward = course.outward;
    const std::size_t n = line.size();
    cv::Mat bare(ground.weight.size(), CV_8UC1, cv::Scalar(0)), hair(ground.weight.size(), CV_8UC1, cv::Scalar(0));
    const auto strip = [&](cv::Mat& mask, double from, double to) {
        for (std::size_t i = 1; i < n; ++i) {
            std::vector<cv::Point> quad;
            for (const auto& [k, d] : {std::pair{i - 1, from}, {i, from}, {i, to}, {i - 1, to}}) {
                const cv::Point2d px = ground.px(line[k] + outward[k] * d);
                quad.emplace_back(cvRound(px.x), cvRound(px.y));
            }
            cv::fillPoly(mask, std::vector<std::vector<cv::Point>>{quad}, cv::Scalar(255));
        }
    };
    strip(bare, 0, skin_reach_mm);
    strip(hair, 0, -inward_mm);
    cv::Mat away, weight;
    cv::distanceTransform(255 - hair, away, cv::DIST_L2, 5);
    weight = (away * (1 / ground.px_per_mm) - none_mm) * (1 / (full_mm - none_mm));
    weight = cv::max(cv::min(weight, 1.0), 0.0);
    weight.setTo(0, bare == 0);
    return weight;
}

namespace {
cv::Vec3f features(const cv::Vec3f& rgb) {
    const float r = std::log(std::max(rgb[0], 0.0f) + light_floor), g = std::log(std::max(rgb[1], 0.0f) + light_floor),
                b = std::log(std::max(rgb[2], 0.0f) + light_floor);
    return {0.25f * r + 0.6f * g + 0.15f * b, r - g, g - b};
}
}  // namespace

SkinColour skin_colour(const cv::Mat& linear_rgb, const cv::Mat& weight) {
    std::array<std::vector<float>, 3> values;
    for (int j = 0; j < weight.rows; ++j)
        for (int i = 0; i < weight.cols; ++i) {
            if (weight.at<float>(j, i) < 0.5f) continue;
            const cv::Vec3f f = features(linear_rgb.at<cv::Vec3f>(j, i));
            for (int c = 0; c < 3; ++c) values[static_cast<std::size_t>(c)].push_back(f[c]);
        }
    SkinColour skin;
    if (values[0].size() < 50) return skin;
    for (int c = 0; c < 3; ++c) {
        auto& v = values[static_cast<std::size_t>(c)];
        skin.middle[c] = at_rank(v, 0.5);
        for (float& x : v) x = std::abs(x - skin.middle[c]);
        skin.spread[c] = 1.4826f * at_rank(v, 0.5);
    }
    skin.known = true;
    return skin;
}

cv::Mat skin_like(const cv::Mat& linear_rgb, const SkinColour& skin, double slack) {
    cv::Mat mask(linear_rgb.size(), CV_32FC1, cv::Scalar(1));
    if (!skin.known) return mask;
    const auto more = static_cast<float>(slack);
    const float warm = skin.middle[1] + skin.middle[2];
    for (int j = 0; j < mask.rows; ++j)
        for (int i = 0; i < mask.cols; ++i) {
            const cv::Vec3f f = features(linear_rgb.at<cv::Vec3f>(j, i)) - skin.middle;
            bool like = f[0] > -darkest - 2 * more && f[0] < brightest + 2 * more;
            for (int c = 1; c < 3; ++c)
                like = like && std::abs(f[c]) < std::max(least_width, 4 * skin.spread[c]) + more;
            // Paper and grey cloth: brighter than the skin and half as warm or less.
            if (f[0] > 0.3f && f[1] + f[2] < -0.5f * warm) like = false;
            if (!like) mask.at<float>(j, i) = 0;
        }
    return mask;
}

}  // namespace kempt::align
