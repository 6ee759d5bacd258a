#include "shine/region_light.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

namespace kempt::shine {

namespace {

double cross(cv::Point2d a, cv::Point2d b) {
    return a.x * b.y - a.y * b.x;
}

bool segments_cross(cv::Point2d a, cv::Point2d b, cv::Point2d c, cv::Point2d d) {
    return cross(b - a, c - a) * cross(b - a, d - a) < 0 && cross(d - c, a - c) * cross(d - c, b - c) < 0;
}

double length_of(cv::Point2d v) {
    return std::hypot(v.x, v.y);
}

// Shares of the pixels inside that carry no light any more: within five codes of white in all channels (a phone's curve
// flattens there and JPEG moves codes by a few, as in card/gate.cpp), and the two darkest codes in all channels.
template <class Code>
void count_spoilt(const cv::Mat& pixels, const cv::Mat& inside, Code top, double& clipped, double& black) {
    const auto burnt = static_cast<Code>(250.0 / 255 * top), dark = static_cast<Code>(1.0 / 255 * top);
    size_t all = 0, high = 0, low = 0;
    for (int y = 0; y < inside.rows; ++y) {
        const Code* code = pixels.ptr<Code>(y);
        const uchar* in = inside.ptr<uchar>(y);
        for (int x = 0; x < inside.cols; ++x, code += 3) {
            if (!in[x]) continue;
            ++all;
            high += code[0] >= burnt && code[1] >= burnt && code[2] >= burnt;
            low += code[0] <= dark && code[1] <= dark && code[2] <= dark;
        }
    }
    clipped = all ? static_cast<double>(high) / static_cast<double>(all) : 0;
    black = all ? static_cast<double>(low) / static_cast<double>(all) : 0;
}

}  // namespace

Status check_region(const Photo& photo, const std::vector<cv::Point2d>& region_px) {
    if (region_px.size() != 4)
        return Error{ErrorKind::invalid, "region-not-four-corners", "The shine region does not have four corners.", "",
                     "Draw it as a four-sided shape over the highlight."};
    const cv::Rect2d frame(-0.5, -0.5, photo.pixels.cols, photo.pixels.rows);
    for (const auto& p : region_px)
        if (!std::isfinite(p.x) || !std::isfinite(p.y) || !frame.contains(p))
            return Error{ErrorKind::invalid, "region-outside", "The shine region leaves the photo.", "",
                         "Keep all its corners on the picture."};
    if (segments_cross(region_px[0], region_px[1], region_px[2], region_px[3]) ||
        segments_cross(region_px[1], region_px[2], region_px[3], region_px[0]))
        return Error{ErrorKind::invalid, "region-crosses", "The sides of the shine region cross each other.", "",
                     "Set its corners in order around."};
    return Done{};
}

RegionCutter::RegionCutter(const Photo& photo, const card::Calibration& calibration,
                           const std::vector<cv::Point2d>& region_px, double finest_px_per_mm)
    : calibration_(calibration), photo_size_(photo.pixels.size()) {
    cv::Point2d middle_px;
    std::vector<cv::Point2f> outline;
    for (const auto& p : region_px) {
        corners_mm_.push_back(card::mm_from_px(calibration, p));
        middle_px += 0.25 * p;
        outline.emplace_back(p);
    }
    px_per_mm_ = card::px_per_mm_at(calibration, middle_px);
    step_mm_ = 1 / std::min(px_per_mm_, finest_px_per_mm);
    // Two pixels of grid around, so that the rim is not made up.
    const int rim = 2 + static_cast<int>(2 * px_per_mm_ * step_mm_);
    cv::Rect box = cv::boundingRect(outline);
    box = cv::Rect(box.x - rim, box.y - rim, box.width + 2 * rim, box.height + 2 * rim) & cv::Rect({}, photo_size_);
    const cv::Mat codes = photo.pixels(box);
    cv::Mat inside(box.size(), CV_8UC1, cv::Scalar(0));
    std::vector<cv::Point> polygon;
    for (const auto& p : outline)
        polygon.emplace_back(cvRound(p.x - static_cast<float>(box.x)), cvRound(p.y - static_cast<float>(box.y)));
    cv::fillPoly(inside, std::vector<std::vector<cv::Point>>{polygon}, cv::Scalar(255));
    if (photo.pixels.depth() == CV_16U)
        count_spoilt<ushort>(codes, inside, 65535, clipped_share_, black_share_);
    else
        count_spoilt<uchar>(codes, inside, 255, clipped_share_, black_share_);
    light_ = card::LightMap(photo, calibration).linear(codes);
    shrink_ = std::max(1.0, std::floor(px_per_mm_ * step_mm_));
    box_px_ = {static_cast<double>(box.x), static_cast<double>(box.y)};
    if (shrink_ > 1) {
        const int k = static_cast<int>(shrink_);
        const cv::Rect whole(0, 0, box.width / k * k, box.height / k * k);
        cv::Mat small;
        if (whole.width >= k && whole.height >= k) {
            cv::resize(light_(whole), small, cv::Size(whole.width / k, whole.height / k), 0, 0, cv::INTER_AREA);
            light_ = small;
        } else {
            shrink_ = 1;
        }
    }
}

RegionLight RegionCutter::cut(cv::Point2d along) const {
    RegionLight out;
    Frame& frame = out.frame;
    frame.step_mm = step_mm_;
    along *= 1 / length_of(along);
    // Sides 0-1 and 2-3 lie across the fibres when the way between their middles goes along them; else 1-2 and 3-0 do.
    const auto& c = corners_mm_;
    const cv::Point2d one = 0.5 * (c[2] + c[3] - c[0] - c[1]), two = 0.5 * (c[1] + c[2] - c[3] - c[0]);
    const double by_one = one.dot(along) / length_of(one), by_two = two.dot(along) / length_of(two);
    if ((std::abs(by_one) >= std::abs(by_two) ? by_one : by_two) < 0) along = -along;
    frame.along = along;
    frame.across = {along.y, -along.x};
    double a0 = 1e9, a1 = -1e9, b0 = 1e9, b1 = -1e9;
    for (const auto& p : c) {
        const double a = p.dot(frame.along), b = p.dot(frame.across);
        a0 = std::min(a0, a), a1 = std::max(a1, a), b0 = std::min(b0, b), b1 = std::max(b1, b);
    }
    frame.rows = std::max(1, static_cast<int>((a1 - a0) / step_mm_));
    frame.columns = std::max(1, static_cast<int>((b1 - b0) / step_mm_));
    frame.origin_mm = frame.along * (a0 + 0.5 * step_mm_) + frame.across * (b0 + 0.5 * step_mm_);

    cv::Mat where(frame.rows, frame.columns, CV_32FC2);
    out.inside = cv::Mat(frame.rows, frame.columns, CV_8UC1, cv::Scalar(0));
    std::vector<cv::Point> polygon;
    for (const auto& p : c) {
        const cv::Point2d d = p - frame.origin_mm;
        polygon.emplace_back(cvRound(d.dot(frame.across) / step_mm_), cvRound(d.dot(frame.along) / step_mm_));
    }
    cv::fillPoly(out.inside, std::vector<std::vector<cv::Point>>{polygon}, cv::Scalar(255));
    std::vector<cv::Point2f> card_face;
    if (calibration_.card_found)
        for (const auto& p : calibration_.card_corners_px) card_face.emplace_back(p);
    const cv::Rect card_box = card_face.empty() ? cv::Rect() : cv::boundingRect(card_face);
    const cv::Matx33d h = calibration_.mm_from_px.inv();
    for (int j = 0; j < frame.rows; ++j) {
        auto* row = where.ptr<cv::Vec2f>(j);
        auto* in = out.inside.ptr<uchar>(j);
        for (int i = 0; i < frame.columns; ++i) {
            const cv::Point2d p = frame.at_mm(j, i);
            const double w = 1 / (h(2, 0) * p.x + h(2, 1) * p.y + h(2, 2));
            const double x = (h(0, 0) * p.x + h(0, 1) * p.y + h(0, 2)) * w,
                         y = (h(1, 0) * p.x + h(1, 1) * p.y + h(1, 2)) * w;
            if (!(x >= 0 && y >= 0 && x <= photo_size_.width - 1 && y <= photo_size_.height - 1)) in[i] = 0;
            if (in[i] && card_box.contains(cv::Point(static_cast<int>(x), static_cast<int>(y))) &&
                cv::pointPolygonTest(card_face, cv::Point2f(static_cast<float>(x), static_cast<float>(y)), false) >= 0)
                in[i] = 0;
            row[i] = {static_cast<float>((x - box_px_.x + 0.5) / shrink_ - 0.5),
                      static_cast<float>((y - box_px_.y + 0.5) / shrink_ - 0.5)};
        }
    }
    cv::remap(light_, out.light, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);

    // The card knows how the light falls off over its own face, as a plane in log light; the same plane goes on over
    // the hair beside it. Mid-card is where the card's white is 1.
    if (calibration_.light && calibration_.card_found && calibration_.light->gradient_per_cm > 0) {
        const auto& light = *calibration_.light;
        cv::Point2d mid_card;
        for (const auto& p : calibration_.card_corners_px) mid_card += 0.25 * card::mm_from_px(calibration_, p);
        const cv::Point2d slope = cv::Point2d(light.gradient_direction) * (light.gradient_per_cm / 10);
        for (int j = 0; j < frame.rows; ++j) {
            auto* row = out.light.ptr<cv::Vec3f>(j);
            const double first = slope.dot(frame.at_mm(j, 0) - mid_card), step = slope.dot(frame.across) * step_mm_;
            for (int i = 0; i < frame.columns; ++i)
                row[i] *= static_cast<float>(std::exp(-std::clamp(first + step * i, -1.5, 1.5)));
        }
    }
    return out;
}

}  // namespace kempt::shine
