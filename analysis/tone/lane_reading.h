// What one lane along the strand line tells: its rows, the model fitted to them, the colours of root, mid and end.
#pragma once

#include <vector>

#include "tone/lane.h"
#include "tone/lane_rows.h"
#include "tone/strand_fit.h"
#include "tone/tone.h"
#include "tone/zones.h"

namespace kempt::tone {

struct LaneReading {
    Lane lane;
    LaneRows seen;
    StrandFit fit;                   // no parameters: too little could be seen, or stopped
    std::vector<cv::Vec3d> profile;  // Lab of each row with the highlight taken out
    Zones zones;
    double placing_sd = 0;  // how far the three colours hang on where the lane lies: a distance in Lab
};

// Why a lane cannot be read as a whole; null: it can.
[[nodiscard]] const Refusal* why_lost(const Lost& lost);

// Reads a lane of this width. One that is lost is not fitted. Errors: those of straighten_lane.
[[nodiscard]] Result<LaneReading> read_lane(const Photo& photo, const card::Calibration& calibration,
                                            const std::vector<cv::Point2d>& line_px, double lane_mm,
                                            const ToneOptions& options, const Progress& progress);

// The lane of options.lane_mm, or where the hair in it is mixed one of options.mixed_lane_mm, if its rims have the same
// hair as far as one can tell: beside a narrow lock lies something else.
[[nodiscard]] Result<LaneReading> read_strand(const Photo& photo, const card::Calibration& calibration,
                                              const std::vector<cv::Point2d>& line_px, const ToneOptions& options,
                                              const Progress& progress);

}  // namespace kempt::tone
