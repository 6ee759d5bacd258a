// Shine of a region of straight or smooth hair: the light along the fibres, split into the surface highlight and the
// body's own light.
//
// Readings. The reflection curve is the surface highlight over the straight line that joins the body's own light at
// the region's two ends, so that neither the head's rounding nor the second, coloured highlight counts as shine; its
// range is the region. With S the whole area under that curve and D the area under the line (profile_luster.h):
//   shine_contrast  (S - D) / S after Stamm et al. 1977, 0..1
//   shine_width     full width at half height of the highlight, mm in the card's plane
//   luster          S / (D width), the form of Reich and Robbins 1993 with the same S, 1/mm
//   alignment       coherence of the fibres, 0..1 (fibres.h); needs no highlight
// Each has a 95 % interval (interval.h). What cannot be read is refused: region-too-small, fibres-not-aligned,
// highlight-clipped, black-level, no-highlight, highlight-cut (a foot of it lies outside), highlight-faint (no width).
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
    double grid_px_per_mm = 8;      // the region is resampled to this, or to the photo's own scale when coarser
    double least_length_mm = 15;    // of the region along the fibres: a shorter one cannot hold a highlight's feet
    double least_alignment = 0.35;  // below: the fibres run about, a band cannot be read
    double clipped_share = 0.005;   // of the region burnt out in all channels: above, no shine
    double black_share = 0.02;      // of the region at the black level: above, no shine
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

// region_px: four corners in order around, best the first side nearer the roots: a second highlight is looked for on
// that side first, which matters for grey and white hair. The region should hold the highlight and both its feet, and
// be 30 mm wide or more. Needs the card's light. Errors: invalid (region-not-four-corners, region-outside,
// region-crosses), refused (scale-missing, light-missing), cancelled.
[[nodiscard]] Result<ShineReadings> measure_shine(const Photo& photo, const card::Calibration& calibration,
                                                  const std::vector<cv::Point2d>& region_px,
                                                  const ShineOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::shine
