// The truth of a rendered photo in the words of the design: from the geometry that was drawn, never from the picture.
#pragma once

#include <vector>

#include "raster.h"
#include "scene.h"

namespace render {

struct Truth {
    std::vector<V2> edge_px;  // the edge line where the camera sees it, every millimetre
    V2 hair_side_px;
    double length_mm = 0;
    double edge_coverage = 0;   // %
    double edge_strands = 0;    // 1/cm
    double fill_depth = -1;     // mm; -1 where coverage never reaches half of the 15-20 mm zone or that zone is bare
    double bare_length = 0;     // mm
    double length_density = 0;  // mm/mm2
    double line_cover = 0;      // share of the 5 mm line that is covered
    double full_cover = 0;      // share of the 15-20 mm zone
    double px_per_mm = 0, tilt_deg = 0;
    std::vector<double> by_depth;  // share, every 0.25 mm
};

[[nodiscard]] Truth truth_of(const Scene& scene, const Rendered& rendered);

}  // namespace render
