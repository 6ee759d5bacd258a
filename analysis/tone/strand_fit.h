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

// Calibrated on even rendered panels (sun-lightened ones and highlights among them; seeds 1000 and up): at most one in
// a hundred brings this much by chance.
inline constexpr double least_gain = 30;

}  // namespace kempt::tone
