// Combed-out strands on the gauge sheet: each is found, traced through crossings, counted and measured.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::combings {

inline constexpr double path_miss_mm = 0.04;  // half a hair's width

struct CombingsOptions {
    double short_mm = 50;        // a strand below this is short: broken, not shed (common practice)
    double least_strand_mm = 5;  // a shorter piece is lint, not hair
    double least_px_per_mm = 8;
    double margin_mm = 2;  // kept clear of the sheet's printed markers and rim
};

struct Strand {
    std::vector<cv::Point2d> path_px;  // from end to end, within path_miss_mm of the middle of what was traced
    double length_mm = 0, length_low = 0, length_high = 0;
    bool doubtful = false;    // a guess was made at a crossing or a gap: shown dashed, for her to correct
    int torn_ends = 0;        // 0-2 of its ends look torn off: where they end, something as dark goes on
    bool cut_off = false;     // runs out of the sheet or under the card: its length is a least value
    double torn[2] = {0, 0};  // 0-1: the chance that the first and the last end of the path are torn off
    bool whole = false;       // she says that none of its ends is torn off, however they look
};

struct CombingsReadings {
    std::vector<Quantity> readings;  // strands "count", strand_median "mm", short_share "%"
    std::vector<Refusal> refused;
    Refusal against;     // forbids readings of this photo whatever its strands; its code is empty: nothing does
    Refusal near_noise;  // widens the intervals, and forbids a median whose own is wide
    std::vector<Strand> strands;  // longest first
    int parts = 0;                // of `strands`, that are likely parts of others by their torn ends: counted with them
    int torn_parts = 0;           // marked as unresolved, for they look like parts of strands; they widen the intervals
    std::vector<std::vector<cv::Point2d>> unresolved_px;  // dark lines that belong to no strand: marked, never lost
    std::vector<std::vector<cv::Point2d>> dim_px;  // where strands below the photo's noise may lie: marked as well
};

// region_px: four corners, or empty for the whole sheet. Needs the sheet. Errors: invalid (region outside the photo),
// refused (no sheet, too tangled for a bounded time), cancelled. Readings are refused where too many strands could not
// be followed through their crossings.
[[nodiscard]] Result<CombingsReadings> measure_combings(const Photo& photo, const card::Calibration& calibration,
                                                        const std::vector<cv::Point2d>& region_px = {},
                                                        const CombingsOptions& options = {},
                                                        const Progress& progress = {});

}  // namespace kempt::combings
