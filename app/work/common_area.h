// What both photos of a pair show, so that no picture of the pair has an empty corner.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

namespace kempt::work {

// A photo on the display plane.
struct Shown {
    cv::Matx33d mm_from_px;  // display millimetres from photo pixels
    cv::Size size_px;
};

// `area` (display millimetres) with its sides moved in until every photo covers it, each time the side that is the
// emptiest. Stops at `kept`, and at 10 mm of width or height: what is left then is empty where a photo does not reach.
[[nodiscard]] cv::Rect2d common_area(const cv::Rect2d& area, const cv::Rect2d& kept, const std::vector<Shown>& photos);

}  // namespace kempt::work
