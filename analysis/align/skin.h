// Where bare skin is: beside the edge line on the side without hair, and of the skin's colour.
#pragma once

#include "align/ground.h"

namespace kempt::align {

struct LineSide {
    std::vector<cv::Point2d> line_mm;  // two points or more
    cv::Point2d hair_mm;               // on the hair's side
};

// How far outside the line skin is used, and how far beyond its ends: past a card that lies 8 mm outside, so that the
// skin above it helps where hair covers what is below.
inline constexpr double skin_reach_mm = 45, skin_beyond_mm = 20;

// The box about all of it.
[[nodiscard]] cv::Rect2d bare_box_mm(const LineSide& side);

// CV_32FC1, 0..1: rises from 0 to 1 between 1 and 2 mm outside the line (hairs that lean over it, and a line drawn by
// hand), 1 out to the reach, also beside the line's ends, which are prolonged straight.
[[nodiscard]] cv::Mat bare_side(const Ground& ground, const LineSide& side);

// Colour of the skin as logarithms of linear sRGB: light, red over green, green over blue.
struct SkinColour {
    cv::Vec3f middle, spread;  // median, and median absolute deviation as standard deviation
    bool known = false;
};
[[nodiscard]] SkinColour skin_colour(const cv::Mat& linear_rgb, const cv::Mat& weight);

// CV_32FC1, 1 where the colour may be skin; 0 where it is hair, paper, cloth. `slack` is added to the width of the
// colour, twice to that of light, for photos of another day.
[[nodiscard]] cv::Mat skin_like(const cv::Mat& linear_rgb, const SkinColour& skin, double slack);

}  // namespace kempt::align
