// Strands on the gauge sheet, each from end to end: for the combed-out strands and for the pattern of single ones.
#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/result.h"

namespace kempt::combings {

struct TraceOptions {
    double least_px_per_mm = 8;  // below it a 0.07 mm hair is half a pixel and lost in the noise
    double margin_mm = 2;        // kept clear of the sheet's print, its rim and a card that lies on it
    double least_mark_mm = 2;    // a dark line below this is dust, not worth a mark
    int64_t most_work =
        400'000'000;       // steps of inner loops, some ten seconds; 60 strands on a noisy photo take 27 million
    bool apart = false;    // strands lie apart from each other, so lines that touch are one (coils.h)
    double dim_below = 0;  // dim strands are looked for where the fainter fifth of the strands is less clear; 0: never
};

inline constexpr double touch_far_mm = 3;

struct TracedStrand {
    std::vector<cv::Point2d> path_px, path_mm;  // smoothed, the same points: about 0.25 mm apart, from end to end
    double length_mm = 0;                       // along the paper
    double blank_mm = 0;                        // bridged where nothing dark was seen
    double shared_mm = 0;                       // along another strand, where the two lie on one line
    int doubts = 0;                             // crossings and gaps where another way is about as good
    double clearness = 0;                       // median strength of its line in SDs of the paper's noise
    double share_of_usual = 0;                  // the same over the photo's `clearness`
    bool cut_off = false;                       // runs into the rim, the print, the card or out of the region
    std::vector<cv::Point2d> doubts_px;         // where
    double ahead_dark[2] = {0, 0};              // just past its first and last point: 0 paper .. 1 as dark as itself
    double touch_mm[2] = {0, 0};                // from them to the nearest other strand, at most touch_far_mm
};

struct Traced {
    std::vector<TracedStrand> strands;  // every line of least_mark_mm or more that is not a shadow, longest first
    std::vector<std::vector<cv::Point2d>> shadows_px;
    std::vector<std::vector<cv::Point2d>> faint_px;  // what may be strands far fainter than the others
    std::vector<std::vector<cv::Point2d>> dim_px;    // what may be strands below the noise (TraceOptions::dim_below)
    double px_per_mm = 0;                            // at the middle of the sheet
    double scale_sd = 0;                             // relative standard uncertainty of the scale
    double point_sd_mm = 0;                          // SD of a path point across the strand
    double clearness = 0;     // median strength of the lines in SDs of the paper's noise; 0: no lines
    double free_path_mm = 0;  // mean length of line between crossings
    double area_mm2 = 0;      // looked at
    int64_t work = 0;         // steps it took, of TraceOptions::most_work
};

// region_px: a convex outline, or empty for the whole sheet. Errors: invalid (region outside the sheet or the photo),
// refused (no sheet, too coarse, too tangled: most_work is used up), cancelled.
[[nodiscard]] Result<Traced> trace_strands(const Photo& photo, const card::Calibration& calibration,
                                           const std::vector<cv::Point2d>& region_px = {},
                                           const TraceOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::combings
