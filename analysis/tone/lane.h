// The lane of hair along a strand line, straightened: rows along the hair from the scalp, columns across, in linear
// light with the measured fall of the light taken out.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/result.h"

namespace kempt::tone {

struct Lane {
    double length_mm = 0, width_mm = 0;
    double rows_per_mm = 0;                         // of `light`, and its columns per mm
    cv::Mat light;                                  // CV_32FC3 linear sRGB, 1 = the card's white
    cv::Mat state;                                  // CV_8U, one of the below for each cell
    std::vector<cv::Point2d> centre_mm, across_mm;  // for each row: place in the card's plane, unit vector to the right
    enum State : uchar { seen, burnt, black, outside, under_card, states };

    // Photo pixel at a distance along the line and to its right; along is held within the line.
    [[nodiscard]] cv::Point2d px(const card::Calibration& calibration, double along_mm, double aside_mm) const;
};

// A smooth curve through the points (centripetal Catmull-Rom in the card's plane: it passes every point and never
// loops; Yuksel, Schaefer & Keyser 2011, Comput Aided Des 43:747-755, pages from memory), sampled at the photo's own
// scale but at most 12 rows and columns a mm. Errors: invalid (fewer than two points, outside the photo, shorter than
// least_length_mm, longer than a metre).
[[nodiscard]] Result<Lane> straighten_lane(const Photo& photo, const card::Calibration& calibration,
                                           const std::vector<cv::Point2d>& line_px, double lane_mm,
                                           double least_length_mm);

}  // namespace kempt::tone
