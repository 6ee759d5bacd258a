#include "align/align.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "align/register_skin.h"
#include "align/skin.h"
#include "align/texture.h"

namespace kempt::align {

namespace {

constexpr double fine_px_per_mm = 6;  // pores of 0.1-0.2 mm blur to one pixel, blotches keep all they have
constexpr int colour_step = 3;        // colours are looked at on every third pixel
constexpr double card_margin_mm = 1;
constexpr double colour_slack = 0.3;  // of another day's light after the card's correction: the lamp's side of the
                                     // head, a phone's colours off the grey axis

std::vector<cv::Point2d> in_mm(const std::vector<cv::Point2d>& px, const card::Calibration& calibration) {
    std::vector<cv::Point2d> mm;
    for (const cv::Point2d& p : px) mm.push_back(card::mm_from_px(calibration, p));
    return mm;
}

// What a photo shows of its card's plane, as a box.
cv::Rect2d seen_mm(const Side& side) {
    const double w = side.photo->pixels.cols - 1, h = side.photo->pixels.rows - 1;
    cv::Point2d low(1e9, 1e9), high(-1e9, -1e9);
    for (const cv::Point2d& px : {cv::Point2d(0, 0), cv::Point2d(w, 0), cv::Point2d(w, h), cv::Point2d(0, h)}) {
        const cv::Point2d p = card::mm_from_px(*side.calibration, px);
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {low, high};
}

cv::Rect2d wider(const cv::Rect2d& box, double rim) {
    return {box.x - rim, box.y - rim, box.width + 2 * rim, box.height + 2 * rim};
}

// Log light with skin's weights; the colour is learned from the earlier photo.
Ground skin_ground(const Side& side, const cv::Rect2d& area, const LineSide* line, SkinColour& colour) {
    Ground ground = ground_of(*side.photo, *side.calibration, area, fine_px_per_mm, card_margin_mm);
    cv::Mat bare;
    if (line) cv::multiply(ground.weight, bare_side(ground, *line), ground.weight);
    Ground coarse;
    coarse.px_per_mm = fine_px_per_mm / colour_step;
    coarse.origin_mm = ground.mm((colour_step - 1) / 2.0, (colour_step - 1) / 2.0);
    cv::resize(ground.weight, coarse.weight, {ground.weight.cols / colour_step, ground.weight.rows / colour_step}, 0, 0,
               cv::INTER_AREA);
    const card::LightMap light(*side.photo, *side.calibration);
    const cv::Mat linear = light.linear(codes_of(*side.photo, *side.calibration, coarse));
    if (line) colour = skin_colour(linear, coarse.weight);
    cv::Mat like = skin_like(linear, colour, line ? 0.0 : colour_slack), wide;
    cv::resize(like, wide, ground.weight.size(), 0, 0, cv::INTER_LINEAR);
    ground.weight = ground.weight.mul(wide);
    ground.weight.setTo(0, ground.weight < 0.3f);
    leave_out_hairs(ground);
    return ground;
}

}  // namespace

Result<Alignment> align(const Side& earlier, const Side& later, const AlignOptions& options, const Progress& progress) {
    const auto line_mm = in_mm(earlier.edge_line_px, *earlier.calibration);
    const LineSide line{line_mm, card::mm_from_px(*earlier.calibration, earlier.hair_side_px)};
    const cv::Rect2d area = bare_box_mm(line) & seen_mm(earlier);
    const double turned = 0.5 * std::max(area.width, area.height) * std::sin(options.search_deg * CV_PI / 180);
    const cv::Rect2d wide = wider(area, options.search_mm + turned) & seen_mm(later);
    SkinColour colour;
    const Ground before = skin_ground(earlier, area, &line, colour);
    const Ground after = skin_ground(later, wide, nullptr, colour);
    const auto found = register_skin(before, after, line_mm, {options.search_mm, options.search_deg}, progress);
    if (!found) return found.error();
    Alignment alignment;
    alignment.later_mm_from_earlier_mm = found->fit.map;
    alignment.by = "skin";
    alignment.skin_share = found->skin_share;
    double sum = 0;
    for (const cv::Point2d& p : line_mm) sum += std::pow(uncertainty(found->fit, p), 2);
    alignment.residual_mm = 2.45 * std::sqrt(sum / static_cast<double>(line_mm.size()));
    return alignment;
}

std::vector<cv::Point2d> carry(const Alignment& alignment, const card::Calibration& earlier,
                               const card::Calibration& later, const std::vector<cv::Point2d>& points_px) {
    std::vector<cv::Point2d> out;
    for (const cv::Point2d& p : points_px)
        out.push_back(card::px_from_mm(later, alignment.later_mm_from_earlier_mm(card::mm_from_px(earlier, p))));
    return out;
}

}  // namespace kempt::align
