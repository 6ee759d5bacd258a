// Fits the strand model: where the highlight lies, and which lines of demarcation there are.
#pragma once

#include "colour/colour.h"
#include "core/progress.h"
#include "tone/strand_model.h"

namespace kempt::tone {

struct FittedLine {
    cv::Vec3d before, after;       // Lab of the body on both sides, drift taken out
    double step = 0, step_sd = 0;  // CIEDE2000
    double at_mm = 0, at_sd = 0, width_mm = 0;
};

struct StrandFit {
    StrandModel::Parameters parameters;
    cv::Mat1d covariance;
    cv::Vec3d noise;                // of a row in L, a, b
    std::vector<FittedLine> lines;  // by place; smaller steps than least_step are left out
};

// A highlight may be explained in several ways (a glossy root, or lengths that lighten): the fit starts from each and
// the best whole explanation wins, lines of demarcation included. A line is taken when it explains more than
// `least_gain` (in squares of the noise). Empty when stopped by `progress`, or with fewer than 12 usable rows.
[[nodiscard]] StrandFit fit_strand(StrandModel& model, double least_step, const Progress& progress = {});

// Calibrated on 176 rendered panels (seeds 1000 and up, a sixth of them under a hard lamp): with 30 to 45 none of 64
// even ones (sun-lightened ones and highlight bands among them) shows a line and 98-99 % of the steps of 5 or more are
// found; 30 sees more of the small steps, 45 fewer that are not there.
inline constexpr double least_gain = 40;

}  // namespace kempt::tone
