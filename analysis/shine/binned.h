// The profile as the split takes it: in bins along the fibres, with what light and colour of each bin may be off by.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "shine/profile.h"

namespace kempt::shine {

struct Binned {
    double bin_mm = 0, length_mm = 0;  // bins of 0.5 mm or 140 of them, whichever is longer
    std::vector<cv::Vec3d> light;      // linear, above 0
    std::vector<double> luminance, luminance_sd;
    std::vector<double> red_green, blue_green, colour_sd;  // natural logs of the channels' ratios to green
    double mean = 0;                                       // of luminance
    std::vector<double> over;                              // luminance over the straight line that joins the ends
    [[nodiscard]] size_t size() const { return light.size(); }
    // Mean light of the bins at the ends, a twelfth of them each.
    cv::Vec3d first, last;
};

// Standard uncertainties are those of single bins for a fit that takes bins as independent: widened by the root of the
// number of bins over which the fibres' own unevenness hangs together. Needs 24 rows and a lane.
[[nodiscard]] Binned binned(const Profile& profile);

}  // namespace kempt::shine
