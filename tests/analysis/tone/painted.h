// A flat strand painted from a formula: colour by distance from the scalp, noise, a card's light that is known exactly.
#pragma once

#include <functional>
#include <opencv2/core.hpp>

#include "card/calibration.h"
#include "colour/colour.h"
#include "core/photo.h"

namespace kempt::test {

struct Painted {
    Photo photo;
    card::Calibration calibration;
    std::vector<cv::Point2d> line_px;  // from the scalp, straight down
};

struct PaintedOptions {
    double px_per_mm = 8, length_mm = 100, noise_codes = 3, lock_noise = 0.05;
    double exposure = 1;              // factor of all light before it is coded
    cv::Vec2d gradient_per_mm{0, 0};  // of log light, over the card's plane; the calibration knows it
    bool light_known = true;
    // A lock that is white all along, from and to millimetres to the right of the strand's middle.
    double white_from_mm = 0, white_to_mm = 0;
    // Share of white fibres, a pixel wide and white all along, each where chance has it.
    double white_share = 0;
    double half_mm = 14;  // of the hair across; beyond it the ground
    uchar ground = 40;    // its code
    uint64_t seed = 1;
};

// light_at: linear sRGB light at a distance from the scalp (0 beyond the ends). The card lies above the strand, its
// origin at the photo's pixel (40, 40); the strand's first point is 20 mm below the card, at x = 42 mm.
[[nodiscard]] Painted paint(const std::function<cv::Vec3d(double)>& light_at, const PaintedOptions& options = {});

// Lab to light for the formulas.
[[nodiscard]] inline cv::Vec3d light(double L, double a, double b) {
    return colour::linear_srgb_from_lab({L, a, b});
}

}  // namespace kempt::test
