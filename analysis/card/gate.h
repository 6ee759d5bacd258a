// The quality gate: is this photo good enough for the readings of its view? Findings with code, sentence, remedy.
#pragma once

#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/quantity.h"

namespace kempt::card {

struct GateLimits {                             // each with its reason beside its default in gate.cpp; a scale of
                                                // 0 is not asked for
    double sharp_warning_mm, sharp_refused_mm;  // 10-90 % edge rise at the card
    double sharp_counts_mm;                     // above this no counts
    double clipped_warning, clipped_refused;    // share of region pixels black or burnt in two channels or more
    double scale_refused_px_per_mm;             // below this no reading in mm
    double scale_lengths_px_per_mm;             // below this only coverage
    double scale_counts_px_per_mm;              // below this no counts
    double tilt_warning_deg, tilt_refused_deg;
    double gradient_warning_per_cm;
};
[[nodiscard]] GateLimits default_gate_limits();

struct GateReport {
    std::string level;  // "good", "usable" (some warning), "refused"
    std::vector<Finding> findings;
};

// region_px: polygon of the photo that the readings will use (may be empty: whole photo). The card itself never counts.
// px_per_mm_there: scale where the readings will be taken; 0: that at the card.
[[nodiscard]] GateReport judge(const Photo& photo, const Calibration& calibration,
                               const std::vector<cv::Point2d>& region_px,
                               const GateLimits& limits = default_gate_limits(), double px_per_mm_there = 0);

// The finding that forbids fill depth and bare length though coverage may stand; nullptr when there is none.
[[nodiscard]] const Finding* against_lengths(const GateReport& report);
// The finding that forbids counting strands though other readings may stand; nullptr when there is none.
[[nodiscard]] const Finding* against_counts(const GateReport& report);

}  // namespace kempt::card
