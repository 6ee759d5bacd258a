// Whole close-up photos: a hairline with the gauge card beside it, as a phone would take it.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "phone.h"
#include "raster.h"
#include "scene.h"
#include "truth.h"

namespace render {

struct CloseUpOptions {
    int skin_class = -1, hair_colour = -1;  // -1: any
    double px_per_mm = 0;                   // 0: 12-32
    double tilt_max_deg = 30;
    double phone_strength = 0.7;
    bool card = true;
    double field_mm_x = 0, field_mm_y = 0;  // 0: as much as card and hair need
    bool quarter_turns = true;
};

// A scene whose strands depend on strand_seed, everything else on shot_seed: re-photographing changes only the latter.
[[nodiscard]] Scene close_up(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card,
                             const CloseUpOptions& options);

struct Shot {
    int width = 0, height = 0;
    std::vector<uint8_t> rgb;  // device codes
    Truth truth;
    Rgb mean_hair, mean_skin;  // linear light over the true masks near the line
};
// margin_mm: how far the coat reaches beyond the ends of the line; samples: side of the sub-pixel grid, 0 by scale.
[[nodiscard]] Shot take(const Scene& scene, double margin_mm = 26, int samples = 0);

}  // namespace render
