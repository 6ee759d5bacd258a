// Rendered shots to JPEG files, and the card as the renderer wants it. Needs libjpeg, lcms2 and the card room.
#pragma once

#include <string>
#include <vector>

#include "close_up.h"

namespace render {

// JPEG bytes with an EXIF capture time ("2026:03:02 10:15:00", empty for none) and, for Display P3, its ICC profile.
[[nodiscard]] std::vector<uint8_t> jpeg_of(const Shot& shot, int quality, bool display_p3, const std::string& taken,
                                           bool half_chroma = true);
void write_file(const std::string& path, const std::vector<uint8_t>& bytes);
[[nodiscard]] CardPicture printed_card();

}  // namespace render
