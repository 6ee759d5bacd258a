// 95 % intervals of the edge readings. The half width joins the method's own error (calibrated on rendered truth,
// docs/accuracy.md), the scale's uncertainty and the sampling of a short line.
#pragma once

#include "core/quantity.h"

namespace kempt::edges {

struct Circumstances {
    double coverage = 0;         // 0..1 in the first 10 mm
    double contrast = 0;         // CIEDE2000 of hair and scalp; 0 when no hair was seen
    double px_per_mm = 20;
    double length_mm = 60;       // of the line
    double scale_sd_share = 0;   // standard uncertainty of px/mm over px/mm
    bool light_known = true;     // tone curve undone by the card's ramp
    double reading_slope = 0;    // |d reading / d ln scale|, in the reading's unit
};

// The quantity with low and high set. Values are kept within what is possible (0-100 %, not negative, not longer than the line).
[[nodiscard]] Quantity with_interval(const char* name, double value, const char* unit, const Circumstances& at);

}  // namespace kempt::edges
