#include "align/side_ground.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "align/texture.h"

namespace kempt::align {

namespace {

constexpr double px_per_mm = 6;       // pores of 0.1-0.2 mm blur to one pixel, blotches keep all they have
constexpr int colour_step = 3;        // colours are looked at on every third pixel
constexpr double card_margin_mm = 1;  // its cut edge and its shadow
// Another day's light after the card's correction: the lamp's side of the head, a phone's colours off the grey axis.
constexpr double colour_slack = 0.3;
constexpr double least_weight = 0.3;

// The card's light at every third pixel.
cv::Mat colours(const Photo& photo, const card::Calibration& calibration, const Ground& ground, cv::Mat& weight) {
    Ground coarse;
    coarse.px_per_mm = ground.px_per_mm / colour_step;
    coarse.origin_mm = ground.mm((colour_step - 1) / 2.0, (colour_step - 1) / 2.0);
    cv::resize(ground.weight, coarse.weight, {ground.weight.cols / colour_step, ground.weight.rows / colour_step}, 0, 0,
               cv::INTER_AREA);
    weight = coarse.weight;
    return card::LightMap(photo, calibration).linear(codes_of(photo, calibration, coarse));
}

void keep_skin(Ground& ground, const cv::Mat& like) {
    cv::Mat wide;
    cv::resize(like, wide, ground.weight.size(), 0, 0, cv::INTER_LINEAR);
    ground.weight = ground.weight.mul(wide);
    ground.weight.setTo(0, ground.weight < least_weight);
    leave_out_hairs(ground);
}

}  // namespace

cv::Rect2d seen_mm(const Photo& photo, const card::Calibration& calibration) {
    const double w = photo.pixels.cols - 1, h = photo.pixels.rows - 1;
    cv::Point2d low(1e9, 1e9), high(-1e9, -1e9);
    for (const cv::Point2d& px : {cv::Point2d(0, 0), cv::Point2d(w, 0), cv::Point2d(w, h), cv::Point2d(0, h)}) {
        const cv::Point2d p = card::mm_from_px(calibration, px);
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {low, high};
}

Ground earlier_skin(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm,
                    const LineSide& line, SkinColour& colour) {
    Ground ground = ground_of(photo, calibration, area_mm, px_per_mm, card_margin_mm);
    ground.weight = ground.weight.mul(bare_side(ground, line));
    cv::Mat weight;
    const cv::Mat linear = colours(photo, calibration, ground, weight);
    colour = skin_colour(linear, weight);
    keep_skin(ground, skin_like(linear, colour, 0));
    return ground;
}

Ground later_skin(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm,
                  const SkinColour& colour) {
    Ground ground = ground_of(photo, calibration, area_mm, px_per_mm, card_margin_mm);
    cv::Mat weight;
    keep_skin(ground, skin_like(colours(photo, calibration, ground, weight), colour, colour_slack));
    return ground;
}

}  // namespace kempt::align
