// The core of the skin's way: two grounds with their skin's weights in, the map between them and its uncertainty out.
// Knows nothing of cards and photos.
#pragma once

#include "align/ground.h"
#include "align/skin_map.h"
#include "core/progress.h"
#include "core/result.h"

namespace kempt::align {

struct RegisterOptions {
    double search_mm = 20, search_deg = 12;
};

struct Registered {
    Fit fit;
    std::vector<Tie> ties;     // of the last round
    double skin_mm2 = 0;       // seen in both, by the map
    double skin_share = 0;     // of the earlier skin that found its counterpart
    double correlation = 0;    // mean over the agreeing ties
    double guess_strength = 0; // of the first guess
};

// Weights say where skin is; the later one may also contain hair and background. line_mm: where the answer counts, in the
// earlier plane. Coarse search over turn and shift, then patches and a robust fit in three rounds from coarse to fine.
// Errors: refused ("too-little-skin": less than needed is bare or textured, or the places found again do not agree),
// cancelled.
[[nodiscard]] Result<Registered> register_skin(const Ground& earlier, const Ground& later,
                                               const std::vector<cv::Point2d>& line_mm, const RegisterOptions& options,
                                               const Progress& progress = {});

}  // namespace kempt::align
