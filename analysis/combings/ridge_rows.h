// The inner loops of the search for ridges, over pieces of rows, several pixels at a time.
#pragma once

#include <opencv2/core.hpp>

#include "combings/ridges.h"

namespace kempt::combings {

// Floats that may be read behind the end of a row; their values do not matter.
inline constexpr int row_spare = 16;

// The binomial 1 4 6 4 1 (sigma 1). Across: n values from n + 4, sixteen times too large; down: of five rows of those.
void smooth_across(const float* from, int n, float* to);
void smooth_down(const float* const (&rows)[5], int n, float* to);

struct RowOf {
    const float *a, *b, *c;  // the smoothed rows above, at and below
    int from = 0, y = 0;     // photo's place of their first pixel
    cv::Point corner;        // of the bounds
};
// Points of a row in the columns [x0, x1) of it (x0 above 0), from left to right, of a second derivative of at least
// `least`; ask: those outside it are left out, null: all lie inside.
void add_points(const RowOf& row, int x0, int x1, float least, const Field* ask, Roomy<RidgePoint>& points);

}  // namespace kempt::combings
