// Places of skin found again: each patch of the earlier texture is looked for in the later one about where a map
// expects it.
#pragma once

#include "align/coarse_search.h"
#include "align/skin_map.h"

namespace kempt::align {

struct PatchOptions {
    double size_mm = 7;    // side of a patch
    double step_mm = 3.5;  // between patches
    double search_mm = 2;  // about the expected place, each way
    double least_skin_mm2 = 9;
    double place_mm2 = 0.35;  // area of one independent place: square of the texture's correlation length
};

struct Patches {
    std::vector<Tie> ties;
    int looked_for = 0;      // patches with enough skin in the earlier photo
    double skin_mm2 = 0;     // of the earlier photo that the later one shows too, by the map
    double correlation = 0;  // over all of that skin, before anything was looked for
    double strength = 0;     // times the square root of the independent places in it
};

// Normalised correlation over both weights, its top placed to parts of a pixel by a parabola, its curvature and height
// as the tie's information. The later texture is first brought into the earlier frame by the map.
[[nodiscard]] Patches match(const Texture& earlier, const Texture& later, const SkinMap& map,
                            const PatchOptions& options);

}  // namespace kempt::align
