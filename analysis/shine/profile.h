// The light along the fibres: mean over the region's width, and over lanes of it.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "shine/region_light.h"

namespace kempt::shine {

// Of linear sRGB light.
inline constexpr double luminance_of[3] = {0.2126, 0.7152, 0.0722};
[[nodiscard]] inline double luminance(const cv::Vec3d& v) {
    return luminance_of[0] * v[0] + luminance_of[1] * v[1] + luminance_of[2] * v[2];
}

struct Lane {
    double middle = 0;             // column of its middle
    std::vector<cv::Vec3d> light;  // linear light by row
};

struct Profile {
    double step_mm = 0;
    int first_row = 0;             // of the frame; rows where most of the region's width is inside
    std::vector<cv::Vec3d> light;  // mean of the lanes
    std::vector<Lane> lanes;       // those that look like the others
    double turn_deg =
        0;  // of the crest's line against the fibres' normal, positive when it runs with `along` on the `across` side
    [[nodiscard]] size_t size() const { return light.size(); }
};

// Lanes run along the rows; each is moved along so that their crests lie level (a straight crest line, weakly held to
// the normal). Lanes that differ from the middle one far more than the others do (a stain, a parting) are left out.
[[nodiscard]] Profile profile_of(const RegionLight& region);

}  // namespace kempt::shine
