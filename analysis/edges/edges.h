// Edge readings: from a photo, an edge line and its calibration to coverage, strands, fill depth, bare length and
// length density, each with a 95 % interval or a refusal.
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::edges {

struct EdgeMarks {
    std::vector<cv::Point2d> edge_line_px;   // two points or more, in order along the line
    cv::Point2d hair_side_px;                // any point on the hair's side
    std::vector<cv::Point2d> hair_taps_px;   // optional samples: surely hair
    std::vector<cv::Point2d> scalp_taps_px;  // optional samples: surely bare scalp
};

struct EdgeOptions {
    double depth_mm = 20;                                 // of the band
    double coverage_depth_mm = 10;                        // of edge_coverage, bare_length, length_density
    double strand_depth_mm = 5;                           // where edge_strands are counted
    double bare_share = 0.20;                             // a column covered less is bare
    double bare_column_mm = 1.0;                          // width over which a column's own cover is taken
    double full_zone_from_mm = 15, full_zone_to_mm = 20;  // fill_depth's reference zone
    double count_min_px_per_mm = 20;                      // below: no counts (70 um hair under 1.4 px)
    double count_max_cover = 0.40;                        // of the strand line: denser is a mat, no counts
};

struct EdgeReadings {
    std::vector<Quantity> readings;
    std::vector<Refusal> refused;
    double line_length_mm = 0;
    double contrast = 0;  // CIEDE2000 between the hair and the scalp as seen in the band; 0 when no hair was seen
    std::vector<double> coverage_by_depth;  // share, one value each 0.25 mm from the line inward
    std::vector<double> coverage_along;     // share in the first 10 mm, one value each 0.5 mm along the line
    cv::Mat overlay_px;  // CV_8UC1, photo size only when asked for: estimated cover 0..255 in the band
    std::vector<cv::Point2d> band_outline_px;  // closed polygon
};

// Errors: invalid (line shorter than 10 mm, crosses itself, outside the photo), refused (no scale).
[[nodiscard]] Result<EdgeReadings> measure_edges(const Photo& photo, const card::Calibration& calibration,
                                                 const EdgeMarks& marks, const EdgeOptions& options = {},
                                                 bool with_overlay = false, const Progress& progress = {});

}  // namespace kempt::edges
