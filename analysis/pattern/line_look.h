// What one traced line tells of the strand that it may be.
#pragma once

#include <optional>
#include <vector>

#include "combings/trace.h"
#include "pattern/pieces.h"

namespace kempt::pattern {

struct LineLook {
    std::optional<Shape> shape;
    std::vector<Shape> parts;  // the same, or of its parts between kinks, as far as their curvature can be told
    bool kinked = false, hair = true, wavers = true;
};
// noise_mm: Traced::point_sd_mm.
[[nodiscard]] LineLook look_at(const combings::TracedStrand& line, double noise_mm);

}  // namespace kempt::pattern
