// What a phone makes of the light: lens, sensor, denoising, tone curve, sharpening, eight bits.
#pragma once

#include <cstdint>
#include <vector>

#include "raster.h"
#include "scene.h"

namespace render {

// Interleaved 8-bit RGB codes (sRGB or Display P3 as the scene says). With `blocks`, also JPEG's quantisation of 8 x 8
// blocks at a quality, for pictures that never see a file.
[[nodiscard]] std::vector<uint8_t> photograph(const Scene& scene, const Rendered& rendered);
void jpeg_blocks(std::vector<uint8_t>& rgb, int width, int height, int quality, bool half_chroma);

// The phone's tone curve on a display code 0..1 (linear light first coded as sRGB).
[[nodiscard]] double tone_curve(const Phone& phone, double code);

}  // namespace render
