// Shine of a region of straight or smooth hair: the light along the fibres, split into the surface highlight and the
// body's own light.
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"
#include "shine/light_signature.h"

namespace kempt::shine {

struct ShineOptions {
    double grid_px_per_mm = 8;     // the region is resampled to this, or to the photo's own scale when coarser
    double least_length_mm = 15;   // of the region along the fibres: a shorter one cannot hold a highlight's feet
    double least_alignment = 0.5;  // below: the fibres run about, a band cannot be read
    double clipped_share = 0.005;  // of the region burnt out in all channels: above, no shine
    double black_share = 0.02;     // of the region at the black level: above, no shine
};

struct ShineReadings {
    std::vector<Quantity> readings;  // shine_contrast "-", shine_width "mm", luster "1/mm", alignment "-"
    std::vector<Refusal> refused;
    std::vector<double> total;    // mean linear light (luminance Y) along the fibres, one value each step_mm
    std::vector<double> surface;  // of it the surface highlight, in the colour of the light
    double step_mm = 0;
    std::optional<LightSignature> light;
    // For the overlay, photo pixels: the region's outline, the crest of the highlight across the region, the zone
    // above half height (closed polygon), and the fibres' direction through the middle.
    std::vector<cv::Point2d> outline_px, crest_px, half_zone_px, fibre_axis_px;
};

// region_px: four corners in order around. Needs the card's light. Errors: invalid (not four corners, outside the
// photo, crosses itself), refused (no scale, no light), cancelled.
[[nodiscard]] Result<ShineReadings> measure_shine(const Photo& photo, const card::Calibration& calibration,
                                                  const std::vector<cv::Point2d>& region_px,
                                                  const ShineOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::shine
