// The share of paper that hair hides, for each cell of 0.25 mm.
#pragma once

#include <opencv2/core.hpp>

#include "ends/look.h"

namespace kempt::ends {

// CV_32FC1, 0..1; 0 where paper was seen bare and where the grid is not valid. A small network of two hidden layers on
// inputs_of(), fitted to rendered truth (tests/render/train/ends.py says how). Linear light alone will not do: the
// paper between strands lies in their shadow, so that half-covered places look three quarters covered.
[[nodiscard]] cv::Mat cover_of(const Looks& looks, const HairLook& hair, const Circumstances& at);

}  // namespace kempt::ends
