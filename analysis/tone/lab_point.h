// Lab and linear sRGB light with their derivatives: the same colours as colour/colour.h, for least squares.
#pragma once

#include <opencv2/core.hpp>

namespace kempt::tone {

// Lab and its derivative by linear sRGB light, and linear sRGB light and its derivative by Lab.
struct LabPoint {
    cv::Vec3d value;
    cv::Matx33d slope;
};
[[nodiscard]] LabPoint lab_point(const cv::Vec3d& rgb);
[[nodiscard]] LabPoint rgb_point(const cv::Vec3d& lab);

}  // namespace kempt::tone
