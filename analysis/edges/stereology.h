// Line length per area from crossings with test lines.
#pragma once

#include <array>

#include "edges/network.h"

namespace kempt::edges {

// L_A = (pi/2) N_L (Steinhaus 1930; Underwood 1970, from memory), N_L the crossings per length of test line averaged
// over evenly spread directions. One direction alone errs by up to 57 % on parallel hairs; six leave at most 2.3 %.
// crossings: per mm of test line at 0, 30 .. 150 degrees, or their mean. Returns mm per mm2.
[[nodiscard]] double length_per_area(double mean_crossings_per_mm);
[[nodiscard]] double length_per_area(const std::array<double, test_directions>& crossings_per_mm);

}  // namespace kempt::edges
