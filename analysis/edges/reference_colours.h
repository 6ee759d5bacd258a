// What the network is told about a photo's own colours: quantiles of both sides of the band, relative to bare skin.
// Standard library only, so that the training generator shares it.
#pragma once

#include <array>
#include <vector>

namespace kempt::edges {

// Features are natural logarithms of linear light, floored so that sensor noise in the dark does not dominate.
inline constexpr float light_floor =
    0.004f;  // of white; about the read noise of a phone's shadows (calibrated by trial)

// Names of the slots: 3 x 5 quantiles (5, 25, 50, 75, 95 %) of the deep zone, 3 x 3 (10, 50, 90 %) of the outer zone,
// 3 hair tap colour, 1 whether it was tapped, 1 log2(px per mm / 20); all colours relative to the skin.
inline constexpr int context_size = 15 + 9 + 3 + 1 + 1;
using Context = std::array<float, context_size>;

struct ReferenceColours {
    std::array<float, 3> log_skin{};  // median log light of bare skin, per channel
    Context context{};
};

// outer, deep: log light triples (r, g, b) of the zone outside the line and of 10-20 mm inside; tapped colours may be
// empty. Each zone should hold some hundreds of pixels.
[[nodiscard]] ReferenceColours reference_colours(const std::vector<std::array<float, 3>>& outer,
                                                 const std::vector<std::array<float, 3>>& deep,
                                                 const std::vector<std::array<float, 3>>& hair_taps,
                                                 const std::vector<std::array<float, 3>>& scalp_taps, double px_per_mm);

}  // namespace kempt::edges
