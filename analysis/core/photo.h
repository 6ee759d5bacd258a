// A decoded photograph as the analysis takes it: device codes plus what is needed to reach linear light.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

namespace kempt {

// How device codes become linear sRGB light (D65). linear[c][code] is channel c in 0..1; then rgb_linear_srgb =
// srgb_from_device * (linear r, g, b). Display P3 reds may fall outside 0..1 and are kept so.
struct ColourEncoding {
    std::string name = "sRGB";                 // as the file's profile calls itself
    std::array<std::vector<float>, 3> linear;  // 256 or 65536 entries each
    cv::Matx33f srgb_from_device = cv::Matx33f::eye();
};

struct Photo {
    cv::Mat pixels;  // CV_8UC3 or CV_16UC3, channel order R G B, upright
    ColourEncoding colour;
};

}  // namespace kempt
