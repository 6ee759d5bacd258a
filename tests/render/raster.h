// From a scene to linear light in the camera's pixels, with the truth beside it.
#pragma once

#include <vector>

#include "scene.h"
#include "strands.h"

namespace render {

// A piece of a strand's middle line that the camera sees.
struct VisiblePiece {
    V2 from, to;  // plane millimetres, as the card's homography would place them
    int strand;
};

struct Rendered {
    int width = 0, height = 0;
    std::vector<Rgb> light;    // linear, before the phone
    std::vector<float> cover;  // share of each pixel hidden by hair
    std::vector<VisiblePiece> pieces;
};

[[nodiscard]] Rendered rasterise(const Scene& scene, const Coat& coat, int samples = 4);

}  // namespace render
