// A strand that stands a little off the paper throws a line of shadow beside it. All shadows of a photo lie on the same
// side, run beside a clearer line and are fainter: such lines are not strands. Nor are the rims that a phone's
// sharpening draws along a line, dark along a bright one and bright along a dark one.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/lines.h"
#include "combings/work.h"

namespace kempt::combings {

// Marks the lines that look like shadows and leaves out the rims. `noise` takes those no clearer than the photo's
// noise.
[[nodiscard]] std::vector<Line> mark_shadows(std::vector<Line> lines, const Ridges& ridges, double px_per_mm,
                                             std::vector<Line>& noise, Work& work);

// Takes marked lines out into `shadows`, but for those that carry a strand on: joined at both ends to lines that are
// none.
[[nodiscard]] std::vector<Line> without_shadows(std::vector<Line> lines, const Darkness& darkness,
                                                std::vector<Line>& shadows, Work& work);

}  // namespace kempt::combings
