// Ends on the blue gauge sheet: what a place looks like there, and the estimate of cover from it.
#pragma once

#include <array>
#include <opencv2/core.hpp>

#include "card/calibration.h"
#include "core/photo.h"
#include "ends/grid.h"
#include "ends/look.h"
#include "ends/paper.h"

namespace kempt::ends {

// Light of white paper in the photo's grid: of the card where its light was read, else of the strips that the sheet
// leaves white (r, g, b).
[[nodiscard]] cv::Vec3f white_light(const Photo& photo, const card::Calibration& calibration);

// Reflectance relative to white paper, the fall of light over the sheet taken out; CV_32FC1, one value a cell.
// `lack` is what is gone of the blue: (sheet's blue - red) less the place's, over the sheet's: 0 bare sheet, about 1
// hair of any lightness without a colour of its own, more for yellow hair.
struct BlueLooks {
    std::array<float, 3> bare{};  // reflectance of the blue itself
    cv::Mat red05, red15, red4;   // means of red over so many mm
    cv::Mat high, low;            // brightest and darkest spot of 0.25 mm in red within 1.5 mm
    cv::Mat spread;               // SD of red over 1.5 mm
    cv::Mat blue05, blue15;
    cv::Mat lack05, lack15, lack4;
    cv::Mat valid, bare_seen;  // CV_8UC1
};
[[nodiscard]] BlueLooks blue_looks(const Grid& grid, const PaperLight& paper, const cv::Vec3f& white);

// Of the hair as a whole, over the places that lack most of the blue.
struct BlueHair {
    double cells = 0;                      // that show hair
    double red = 0, blue = 0, spread = 0;  // of fully covered places
    double lack = 0;
};
[[nodiscard]] BlueHair blue_hair(const BlueLooks& looks);

// Ratios to the hair's own light or to what its fullest places lack, then what hair and photo are like.
inline constexpr int blue_inputs = 14;
// rows: cells where `wanted` (CV_8UC1) is set, in reading order; CV_32FC1.
[[nodiscard]] cv::Mat blue_inputs_of(const BlueLooks& looks, const BlueHair& hair, const Circumstances& at,
                                     const cv::Mat& wanted);
// As cover_of() of cover.h, by the same kind of network on these inputs, fitted to rendered truth
// (tests/render/train/ends_blue.py).
[[nodiscard]] cv::Mat blue_cover_of(const BlueLooks& looks, const BlueHair& hair, const Circumstances& at);

}  // namespace kempt::ends
