// Ends on the gauge sheet: how even the hem is, how much paper shows through it, how much hair stands off.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::ends {

struct EndsOptions {
    double last_mm = 20;         // see_through looks at the hair from the hem this far inward
    double column_mm = 2;        // the hem is found for columns of this width
    double smooth_mm = 60;       // the smooth perimeter follows the hem over this length
    double least_width_mm = 40;  // of the hem: a narrower one has no shape to be uneven about
    double least_px_per_mm = 6;
};

struct EndsReadings {
    std::vector<Quantity> readings;  // hem_unevenness "mm", see_through "%", flyaway "%"
    std::vector<Refusal> refused;
    // For the overlay, photo pixels.
    std::vector<cv::Point2d> hem_px, smooth_hem_px;  // from side to side
    std::vector<cv::Point2d> silhouette_px;          // closed polygon: the smooth silhouette
    cv::Mat cover;                                   // CV_8UC1 estimated cover 0..255 on the working grid
    cv::Matx33d px_from_cover = cv::Matx33d::eye();  // photo pixel of a pixel of `cover`
};

// What the readings mean to the letter: shape.h. The region holds 30 mm of hair or more above the ends and 20 mm of
// paper beside and beyond it. Refusals: too-coarse, too-narrow, no-paper, no-hair, hair-like-paper, no-hair-entering,
// ends-outside, region-too-short, ends-in-locks; rim-outside (flyaway alone).
// region_px: four corners around the ends, in order around, the first side lying in the hair (towards the roots), so
// that hair enters through it and hangs towards the opposite side. Needs the sheet or card. Errors: invalid (not four
// corners, outside the photo), refused (no scale), cancelled.
[[nodiscard]] Result<EndsReadings> measure_ends(const Photo& photo, const card::Calibration& calibration,
                                                const std::vector<cv::Point2d>& region_px,
                                                const EndsOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::ends
