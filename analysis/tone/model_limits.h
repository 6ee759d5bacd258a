// Noise, priors and bounds of the strand model, each with its reason.
#pragma once

#include <cmath>
#include <opencv2/core.hpp>

namespace kempt::tone {

// Least noise of a row: eight bits and JPEG.
inline const cv::Vec3d least_noise(0.3, 0.2, 0.2);

// Priors, all weak. Drift over the length: sun and wear lighten by some ten L* and turn hair yellower (common practice,
// no source); uneven light adds to L*. Bend: what the drift is not straight by.
inline constexpr double drift_sd[3] = {12, 3, 6}, bend_sd[3] = {1.0, 0.35, 0.5};
// The highlight's height against the card's white: 0.005-0.15 under soft light, more under a bare lamp; its SD in mm: a
// radius of 60-400 mm times a lobe of 5-12 degrees. Where along the strand: anywhere, more likely on it. Of some ten
// sets tried on 80 rendered panels (seeds 1000 and up) the one with the least errors of root, mid and end; the same
// for the bend.
inline const double height_log_mean = std::log(0.04), spread_log_mean = std::log(24.0);
inline constexpr double height_log_sd = 1.0, spread_log_sd = 0.4, place_sd_share = 0.6;
inline const double least_spread = std::log(9.0), most_spread = std::log(70.0);
// A line: any step; width a few millimetres (hair grows at different speeds, colour is laid on by hand; common
// practice). Over 10 mm it is a gradual change and no line.
inline constexpr double step_sd = 25, width_log_sd = 0.8;
inline const double width_log_mean = std::log(2.5), least_width = std::log(0.4), most_width = std::log(10.0);
// 80 % of a Gaussian integral lies within 2.563 SD.
inline constexpr double width_in_sd = 2.5631;
// New growth shorter than this, and a change so near the ends, cannot be told from the parting and the thinning ends.
inline constexpr double first_line_mm = 4, last_line_mm = 5;

inline double integral(double u) {
    return 0.5 * std::erfc(-u / std::sqrt(2.0));
}

}  // namespace kempt::tone
