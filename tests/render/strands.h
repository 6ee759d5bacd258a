// Hair as polylines in the world: roots, locks, waves, coils, lift.
#pragma once

#include <vector>

#include "scene.h"

namespace render {

struct Strand {
    int first = 0, count = 0;  // points in Coat::points
    float radius = 0.035f;     // mm, at the root
    Rgb albedo;
};

struct Coat {
    std::vector<V3> points;
    std::vector<Strand> strands;
};

// Grows the coat of a scene over x_from - margin .. x_to + margin and to y_to mm inward of the line.
[[nodiscard]] Coat grow(const Scene& scene, double margin_mm, double y_to_mm);

// Roots per mm2 at a place of the scalp.
[[nodiscard]] double roots_per_mm2(const Growth& growth, double x, double depth_mm);

}  // namespace render
