// Pattern of single strands laid on the gauge sheet: curve diameter, wave ratio, and stretch from two photos.
#pragma once

#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "card/calibration.h"
#include "combings/combings.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::pattern {

// Our own scale by curve diameter: no published thresholds could be confirmed, so each step is twice as wide as the one
// before (own choice: 6, 12, 24, 48, 96 mm) and carries plain words.
enum class Curl { straight, bend, loose, medium, tight, very_tight };
[[nodiscard]] Curl curl_of(double curve_diameter_mm);
[[nodiscard]] std::string word_of(Curl curl);  // "loose curl"

// Arc over chord from end to end says how a strand fell: laid down anew, the same coil differs by a sixth. Over
// stretches of 30 mm it differs by 3 % or less, and a loosened curl still by several times that (truth of 300 strands'
// lies, seeds 30000 and up; 15, 20, 40 and 60 mm did worse somewhere).
inline constexpr double stretch_mm = 30;

struct Shape {                     // of one strand
    double curve_diameter_mm = 0;  // 2 / mean curvature along the strand
    // Arc over chord, >= 1: stretch_mm over the root mean square distance between points so far apart along the strand
    // (the mean square end-to-end distance of Kratky and Porod 1949); of a shorter strand, from end to end.
    double wave_ratio = 1;
    double arc_mm = 0, chord_mm = 0;  // from end to end
    double curve_diameter_sd = 0;     // share of it that the noise of the points leaves unsure
    double noise_mm = 0;              // SD of a point across that was found or given
};
// path_mm: a traced strand in millimetres, about a point each half millimetre or closer; noise_mm: SD of a point
// across; more is taken where the path itself shows more. Errors: invalid (fewer than 5 points, shorter than 10 mm).
[[nodiscard]] Result<Shape> shape_of(const std::vector<cv::Point2d>& path_mm, double noise_mm);

struct PatternReadings {
    std::vector<Quantity>
        readings;  // curve_diameter "mm", wave_ratio "-", strand_length "mm" (arc); medians of strands
    std::vector<Refusal> refused;
    std::vector<combings::Strand> strands;
    // What is told of each: its arc, and of a strand's longest line its curve diameter and wave ratio; 0: not told.
    std::vector<Shape> shapes;
};
[[nodiscard]] Result<PatternReadings> measure_pattern(const Photo& photo, const card::Calibration& calibration,
                                                      const std::vector<cv::Point2d>& region_px = {},
                                                      const Progress& progress = {});

// Stretch in % from the strand's length at rest and under a pull, both with their intervals ("strand_length" of two
// photos of the same strand). Errors: invalid (a length not above 0).
[[nodiscard]] Result<Quantity> stretch(const Quantity& at_rest, const Quantity& pulled);

}  // namespace kempt::pattern
