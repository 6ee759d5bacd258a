// A strand that stands a little off the paper throws a line of shadow beside it. All shadows of a photo lie on the same
// side, run beside a clearer line and are fainter: such lines are not strands. Nor are the rims that a phone's
// sharpening draws along a line, dark along a bright one and bright along a dark one.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/lines.h"

namespace kempt::combings {

struct ShadowSplit {
    std::vector<Line> strands, shadows;  // rims are left out
    cv::Point2f side{0, 0};              // where shadows fall, mean of unit vectors: short where there are none
};
[[nodiscard]] ShadowSplit split_shadows(std::vector<Line> lines, cv::Rect bounds, double px_per_mm);

}  // namespace kempt::combings
