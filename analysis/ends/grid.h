// The region of the ends, straightened: columns across the hair, rows along it towards the ends, in linear light.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/result.h"

namespace kempt::ends {

// 0.125 mm: about two strands wide, the finest that photos of a whole sheet (8-12 px/mm) still show.
inline constexpr double grid_px_per_mm = 8;

// Millimetres (u, v) of the region: u across from its left side, v from the first side towards the ends.
struct Frame {
    cv::Point2d origin_mm, across_mm, along_mm;  // in the calibration's plane; unit vectors
    double width_mm = 0, length_mm = 0;
    double px_per_mm = 0;  // of the photo, least over the corners
    cv::Matx33d px_from_uv = cv::Matx33d::eye();
};

// Errors: invalid ("region-corners": not four, "region-outside", "region-crosses").
[[nodiscard]] Result<Frame> frame_of(const Photo& photo, const card::Calibration& calibration,
                                     const std::vector<cv::Point2d>& region_px);

struct Grid {
    cv::Mat light;  // CV_32FC3 linear sRGB light, tone curve undone where the card's ramp allows
    cv::Mat valid;  // CV_8UC1, 255 inside the region and the photo, off card and printed marks
};
[[nodiscard]] Grid cut_grid(const Photo& photo, const card::Calibration& calibration,
                            const std::vector<cv::Point2d>& region_px, const Frame& frame);

// Any picture of the photo's size, sampled at the grid's pixels (CV_32F, one channel or three).
[[nodiscard]] cv::Mat sample_grid(const cv::Mat& picture, const Frame& frame);

}  // namespace kempt::ends
