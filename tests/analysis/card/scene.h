// A drawn card photographed by a pinhole camera with known truth: pose, light, tone curve, blur, noise.
#pragma once

#include <functional>
#include <opencv2/core.hpp>
#include <optional>

#include "card/card_layout.h"
#include "core/photo.h"

namespace kempt::test {

struct Scene {
    cv::Size size{1600, 1200};
    double px_per_mm = 20;                             // wanted scale at mid-card (set by the distance)
    double tilt_deg = 0;                               // angle of the card's normal to the axis
    double tilt_towards_deg = 0;                       // direction of the tilt in the picture
    double turn_deg = 0;                               // rotation in the picture
    double focal_sides = 1.0;                          // focal length / longer side
    cv::Point2d offset_px;                             // of the card's middle from the picture's
    double blur_px = 0.7;                              // Gaussian sigma in light
    double noise_codes = 1.0;                          // standard deviation at mid-grey
    cv::Vec3d lamp{0.8, 0.75, 0.6};                    // light on the card by channel: 1 fills the codes
    std::function<double(cv::Point2d mm)> unevenness;  // factor of the light by place
    std::function<double(double code)> tone;           // coded true light -> code, both 0..1
    std::optional<int> hidden_marker;
    bool display_p3 = false;
    std::optional<card::Paper> sheet;  // the sheet in place of the card
    card::Ground ground = card::Ground::white;
    uint64_t seed = 1;
};

struct Shot {
    Photo photo;
    cv::Matx33d px_from_mm;
    double px_per_mm = 0;  // true local scale at mid-card
};

[[nodiscard]] Shot photograph(const Scene& scene);
// An S-curve with lifted shadows as phones have: amount 0..1, lift 0..0.1.
[[nodiscard]] std::function<double(double)> s_curve(double amount, double lift);
[[nodiscard]] std::function<double(double)> inverse_of(const std::function<double(double)>& curve);

}  // namespace kempt::test
