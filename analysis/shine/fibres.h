// Course of the fibres in a region: direction and coherence by the structure tensor.
#pragma once

#include <opencv2/core.hpp>

#include "shine/region_light.h"

namespace kempt::shine {

// Structure tensor (Bigun and Granlund 1987) of the light relative to its own surroundings, in windows of 0.3 mm (SD);
// each window votes with its direction and its coherence (l1 - l2) / (l1 + l2), the photo's noise taken out of both.
// What is seen counts: a bright hair across dark ones takes more windows than its own width, one across fair ones
// fewer. Gradients are taken at 0.15 mm (SD) on a grid of 8 px/mm, so that photos from 8 px/mm on say the same.
struct FibreCourse {
    double angle_deg = 0;  // of the fibres against the frame's rows, -90..90, positive towards `across`
    double coherence = 0;  // length of the mean vote at twice the angle, 0..1: 1 all fibres run one way
    double energy = 0;     // mean l1 + l2, relative light squared per mm2
};

[[nodiscard]] FibreCourse fibre_course(const RegionLight& region);
}  // namespace kempt::shine
