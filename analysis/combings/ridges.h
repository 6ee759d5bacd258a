// Lines about a pixel wide, dark or (where a strand mirrors the light) bright, found as ridges: points with a
// sub-pixel place, direction and strength. After C. Steger, An unbiased detector of curvilinear structures, IEEE PAMI
// 20 (1998): a line's middle is where the first derivative across it vanishes, taken from the second-order Taylor
// polynomial of the smoothed picture.
#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <vector>

#include "combings/darkness.h"
#include "combings/field.h"
#include "combings/roomy.h"

namespace kempt::combings {

struct RidgePoint {
    float x, y;            // pixels
    float tx, ty;          // unit vector along the line, either way
    float strength;        // second derivative across it, in darkness per px^2
    float sign;            // 1 darker than paper, -1 brighter: a strand that mirrors the light
    float lean;            // 1 a line .. 0 a spot: share by which the curvature across exceeds that along
    uint16_t column, row;  // of its pixel, from the corner of Ridges::bounds: a sheet at 18 px/mm has some 6000
};

struct Ridges {
    // Of each strip of `strip_rows` rows of `bounds` from its first on; by rows, then columns of their pixel, of which
    // none has two.
    std::vector<Roomy<RidgePoint>> strips;
    int strip_rows = 1;
    cv::Rect bounds;
    float noise = 0;     // SD of the second derivative on bare paper
    float paper_sd = 0;  // SD of the smoothed darkness there
};
// Points of at least `least_snr` times the noise inside the field.
[[nodiscard]] Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr);

}  // namespace kempt::combings
