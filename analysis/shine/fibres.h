// Course of the fibres in a region: direction and coherence by the structure tensor.
#pragma once

#include <opencv2/core.hpp>

#include "shine/region_light.h"

namespace kempt::shine {

// Structure tensor J = sum of g g^T over the region (Bigun and Granlund 1987; coherence after Jahne, Digital Image
// Processing): g the gradient of light relative to its own surroundings, so that the highlight and shades do not count.
struct FibreCourse {
    double angle_deg = 0;  // of the fibres against the frame's rows, -90..90, positive towards `across`
    double coherence = 0;  // (l1 - l2) / (l1 + l2) of the whole region, 0..1: 1 all fibres run one way
    double energy = 0;     // l1 + l2 per cell, relative light squared per mm2
};

[[nodiscard]] FibreCourse fibre_course(const RegionLight& region);
// Of the columns [first, last) only.
[[nodiscard]] FibreCourse fibre_course(const RegionLight& region, int first, int last);

}  // namespace kempt::shine
