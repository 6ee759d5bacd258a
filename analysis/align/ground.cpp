#include "align/ground.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "card/sampler.h"

namespace kempt::align {

namespace {

// Most of the weight where skin has contrast (melanin, blood) and phones have least noise: twice as many green sites.
constexpr std::array<float, 3> channel_share{0.25f, 0.6f, 0.15f};
constexpr float light_floor = 0.004f;  // of full light, so that black does not run away (about one 8-bit code)
// A plane seen so steeply that it shrinks to a fifth says nothing more.
constexpr double least_depth = 0.2;

struct Reach {
    cv::Rect px;     // part of the photo that is needed
    int factor = 1;  // whole pixels that are averaged
};

struct Project {
    cv::Matx33d h;
    double depth_at_middle;
    // False behind the camera or too steep.
    bool operator()(cv::Point2d mm, cv::Point2d& px) const {
        const double w = h(2, 0) * mm.x + h(2, 1) * mm.y + h(2, 2);
        if (w / depth_at_middle < least_depth) return false;
        px = {(h(0, 0) * mm.x + h(0, 1) * mm.y + h(0, 2)) / w, (h(1, 0) * mm.x + h(1, 1) * mm.y + h(1, 2)) / w};
        return true;
    }
};

Project projection(const card::Calibration& calibration) {
    const cv::Matx33d h = calibration.mm_from_px.inv();
    cv::Point2d middle;
    for (const cv::Point2d& corner : calibration.card_corners_px)
        middle += card::mm_from_px(calibration, corner) * 0.25;
    return {h, h(2, 0) * middle.x + h(2, 1) * middle.y + h(2, 2)};
}

Reach reach_of(const Photo& photo, const Project& project, const Ground& ground, cv::Size size) {
    cv::Point2d low(1e9, 1e9), high(-1e9, -1e9);
    for (int j = 0; j <= 8; ++j)
        for (int i = 0; i <= 8; ++i) {
            cv::Point2d px;
            if (!project(ground.mm(size.width * i / 8.0, size.height * j / 8.0), px)) continue;
            low = {std::min(low.x, px.x), std::min(low.y, px.y)};
            high = {std::max(high.x, px.x), std::max(high.y, px.y)};
        }
    Reach reach;
    const cv::Rect frame(0, 0, photo.pixels.cols, photo.pixels.rows);
    if (high.x < low.x) return reach;
    const auto whole = [](double v) { return static_cast<int>(std::clamp(v, -1e6, 1e6)); };
    reach.px =
        cv::Rect(cv::Point(whole(low.x) - 2, whole(low.y) - 2), cv::Point(whole(high.x) + 3, whole(high.y) + 3)) &
        frame;
    const double finer = std::hypot(high.x - low.x, high.y - low.y) / std::hypot(size.width, size.height);
    reach.factor = std::clamp(static_cast<int>(finer), 1, 64);
    return reach;
}

// Log light and redness of a part of the photo, averaged over factor x factor pixels.
template <class Code>
cv::Mat reduced_log(const Photo& photo, const Reach& reach) {
    std::array<std::vector<float>, 3> table = card::code_tables(photo);
    for (std::vector<float>& channel : table)
        for (float& v : channel) v = std::log(std::max(v, 0.0f) + light_floor);
    const int f = reach.factor, cols = reach.px.width / f, rows = reach.px.height / f;
    cv::Mat out(std::max(rows, 0), std::max(cols, 0), CV_32FC2);
    const float share = 1.0f / static_cast<float>(f * f);
    cv::parallel_for_(cv::Range(0, out.rows), [&](const cv::Range& part) {
        for (int y = part.start; y < part.end; ++y) {
            auto* to = out.ptr<cv::Vec2f>(y);
            std::fill(to, to + cols, cv::Vec2f());
            for (int v = 0; v < f; ++v) {
                const Code* from = photo.pixels.ptr<Code>(reach.px.y + y * f + v) + 3 * reach.px.x;
                for (int x = 0; x < cols; ++x) {
                    for (int u = 0; u < f; ++u, from += 3) {
                        const float r = table[0][from[0]], g = table[1][from[1]], b = table[2][from[2]];
                        to[x] += cv::Vec2f(channel_share[0] * r + channel_share[1] * g + channel_share[2] * b, r - g);
                    }
                }
            }
            for (int x = 0; x < cols; ++x) to[x] *= share;
        }
    });
    return out;
}

// Where each pixel of the ground lies in the reduced part; -1e4 where nothing is seen.
cv::Mat places(const Project& project, const Ground& ground, cv::Size size, const Reach& reach, cv::Size frame) {
    cv::Mat where(size, CV_32FC2);
    cv::parallel_for_(cv::Range(0, size.height), [&](const cv::Range& part) {
        for (int j = part.start; j < part.end; ++j) {
            auto* row = where.ptr<cv::Vec2f>(j);
            for (int i = 0; i < size.width; ++i) {
                cv::Point2d px;
                const bool seen = project(ground.mm(i, j), px) && px.x >= 0 && px.y >= 0 && px.x <= frame.width - 1 &&
                                  px.y <= frame.height - 1;
                row[i] = seen ? cv::Vec2f(static_cast<float>((px.x - reach.px.x + 0.5) / reach.factor - 0.5),
                                          static_cast<float>((px.y - reach.px.y + 0.5) / reach.factor - 0.5))
                              : cv::Vec2f(-1e4f, -1e4f);
            }
        }
    });
    return where;
}

}  // namespace

Ground ground_of(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm, double px_per_mm,
                 double card_margin_mm) {
    Ground ground{area_mm.tl(), px_per_mm, {}, {}};
    const cv::Size size(std::max(8, cvRound(area_mm.width * px_per_mm)),
                        std::max(8, cvRound(area_mm.height * px_per_mm)));
    const Project project = projection(calibration);
    const Reach reach = reach_of(photo, project, ground, size);
    ground.layers = cv::Mat(size, CV_32FC2, cv::Scalar::all(0));
    ground.weight = cv::Mat(size, CV_32FC1, cv::Scalar(0));
    if (reach.px.width < 2 * reach.factor || reach.px.height < 2 * reach.factor) return ground;
    const cv::Mat where = places(project, ground, size, reach, photo.pixels.size());
    cv::Mat reduced =
        photo.pixels.depth() == CV_16U ? reduced_log<ushort>(photo, reach) : reduced_log<uchar>(photo, reach);
    // What whole pixels leave over of the reduction.
    const double finer = card::px_per_mm_at(calibration, cv::Point2d(reach.px.x + reach.px.width / 2.0,
                                                                     reach.px.y + reach.px.height / 2.0)) /
                         (px_per_mm * reach.factor);
    if (finer > 1.2) cv::GaussianBlur(reduced, reduced, {}, 0.4 * finer);
    cv::remap(reduced, ground.layers, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    std::vector<cv::Point2d> face;
    cv::Point2d middle;
    for (const cv::Point2d& corner : calibration.card_corners_px) face.push_back(card::mm_from_px(calibration, corner));
    for (const cv::Point2d& corner : face) middle += corner * 0.25;
    std::vector<cv::Point> on_card;
    for (const cv::Point2d& corner : face) {
        const cv::Point2d out = corner - middle;  // each corner moves out by the margin along both sides
        const cv::Point2d px = ground.px(
            {corner.x + std::copysign(card_margin_mm, out.x), corner.y + std::copysign(card_margin_mm, out.y)});
        on_card.emplace_back(cvRound(px.x), cvRound(px.y));
    }
    for (int j = 0; j < size.height; ++j)
        for (int i = 0; i < size.width; ++i)
            if (where.at<cv::Vec2f>(j, i)[0] > -1e3f) ground.weight.at<float>(j, i) = 1;
    cv::fillConvexPoly(ground.weight, on_card, cv::Scalar(0));
    ground.layers.setTo(cv::Scalar::all(0), ground.weight == 0);
    return ground;
}

cv::Mat codes_of(const Photo& photo, const card::Calibration& calibration, const Ground& like) {
    const cv::Size size = like.weight.size();
    const Project project = projection(calibration);
    const Reach reach = reach_of(photo, project, like, size);
    cv::Mat codes(size, photo.pixels.type(), cv::Scalar::all(0));
    if (reach.px.width < 2 * reach.factor || reach.px.height < 2 * reach.factor) return codes;
    const int f = reach.factor;
    cv::Mat reduced;
    const cv::Rect whole(reach.px.x, reach.px.y, reach.px.width / f * f, reach.px.height / f * f);
    cv::resize(photo.pixels(whole), reduced, {whole.width / f, whole.height / f}, 0, 0, cv::INTER_AREA);
    cv::remap(reduced, codes, places(project, like, size, reach, photo.pixels.size()), cv::noArray(), cv::INTER_LINEAR,
              cv::BORDER_REPLICATE);
    return codes;
}

Ground coarser(const Ground& ground, int times) {
    Ground out;
    out.px_per_mm = ground.px_per_mm / times;
    out.origin_mm = ground.mm((times - 1) / 2.0, (times - 1) / 2.0);
    const cv::Size size(ground.weight.cols / times, ground.weight.rows / times);
    const cv::Rect even(0, 0, size.width * times, size.height * times);
    cv::Mat sum, twice;
    cv::merge(std::vector<cv::Mat>{ground.weight(even), ground.weight(even)}, twice);
    cv::resize(cv::Mat(ground.layers(even).mul(twice)), sum, size, 0, 0, cv::INTER_AREA);
    cv::resize(twice, twice, size, 0, 0, cv::INTER_AREA);
    cv::extractChannel(twice, out.weight, 0);
    cv::divide(sum, cv::max(twice, cv::Scalar::all(1e-6)), out.layers);
    return out;
}

}  // namespace kempt::align
