// Drawn ends: a dark mass on white paper whose cover at each place is known, photographed at a known scale.
#pragma once

#include <functional>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "ends/ends.h"

namespace kempt::test {

// The page: 120 x 100 mm, hair comes in at the top. x across, y along the hair, mm.
struct Drawing {
    std::function<bool(double x, double y)> hair;                                          // does hair lie there
    std::function<double(double x, double y)> light = [](double, double) { return 1.0; };  // on the page, relative
    cv::Vec3d hair_albedo{0.06, 0.05, 0.045}, paper_albedo{0.85, 0.86, 0.86};
    double px_per_mm = 10;
    double grain = 0.01;  // relative SD of paper and hair from pixel to pixel
    bool sixteen_bit = false;
    double width_mm = 120, height_mm = 100;
};
[[nodiscard]] Photo draw(const Drawing& drawing);

// The sheet found, with this scale; with `light_known` as if the card's ramp had undone the tone curve.
[[nodiscard]] card::Calibration scale_of(double px_per_mm, bool light_known = true);
// Corners of a rectangle of the page, the first side towards the roots.
[[nodiscard]] std::vector<cv::Point2d> region(double x0, double y0, double x1, double y1, double px_per_mm);

[[nodiscard]] const Quantity* find(const ends::EndsReadings& all, const std::string& name);
// Code of the refusal, "" when there is none.
[[nodiscard]] std::string refusal(const ends::EndsReadings& all, const std::string& name);

}  // namespace kempt::test
