// What a place of the ends looks like, as numbers for the estimate of cover.
#pragma once

#include <array>
#include <opencv2/core.hpp>

#include "ends/cells.h"
#include "ends/grid.h"
#include "ends/paper.h"

namespace kempt::ends {

// Light relative to the paper's own at each place; CV_32FC1, one value a cell.
struct Looks {
    cv::Mat grey;                   // mean of the three channels
    cv::Mat mean05, mean15, mean4;  // of grey over so many mm
    cv::Mat high, low;              // brightest and darkest spot of 0.25 mm within 1.5 mm
    cv::Mat spread;                 // SD of grey over 1.5 mm
    cv::Mat chroma;                 // red - blue over 1.25 mm
    cv::Mat valid, bare;            // CV_8UC1
};
[[nodiscard]] Looks looks_of(const Grid& grid, const PaperLight& paper);

// Of the hair as a whole: what a fully covered place looks like.
struct HairLook {
    double cells = 0;                          // that show hair
    double dense = 0, chroma = 0, spread = 0;  // means over the places with the dimmest bright spots: no gaps there
    double even = 0;                           // mean over the places whose bright spots rise least above their mean
};
[[nodiscard]] HairLook hair_look(const Looks& looks);

// Inputs of the estimate for one cell: how light and how rough the place is, most as ratios to its own or the hair's
// light, so that a highlight over a closed mat looks like the mat; then what the hair and the photo are like.
inline constexpr int inputs = 16;
struct Circumstances {
    bool light_known = true;  // tone curve undone by the card's ramp
    double px_per_mm = 12;
};
// rows: cells where `wanted` (CV_8UC1) is set, in reading order; CV_32FC1.
[[nodiscard]] cv::Mat inputs_of(const Looks& looks, const HairLook& hair, const Circumstances& at,
                                const cv::Mat& wanted);

}  // namespace kempt::ends
