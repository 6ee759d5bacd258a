// Colour: sRGB, CIE XYZ and Lab (D65, 2 degrees), CIEDE2000, individual typology angle.
#pragma once

#include <opencv2/core.hpp>

#include "core/photo.h"

namespace kempt::colour {

// sRGB transfer function of IEC 61966-2-1; code and light in 0..1 (values outside are extended by the same curve).
[[nodiscard]] double linear_from_srgb(double code);
[[nodiscard]] double srgb_from_linear(double light);

// Encoding of a plain 8- or 16-bit sRGB photo.
[[nodiscard]] ColourEncoding srgb_encoding(bool sixteen_bit = false);
// Display P3 (SMPTE EG 432-1 primaries, D65 white, sRGB transfer).
[[nodiscard]] ColourEncoding display_p3_encoding(bool sixteen_bit = false);

struct Lab {
    double L = 0, a = 0, b = 0;
};
// From linear sRGB light (0..1), white D65 (0.95047, 1, 1.08883).
[[nodiscard]] Lab lab_from_linear_srgb(const cv::Vec3d& rgb);
[[nodiscard]] cv::Vec3d linear_srgb_from_lab(const Lab& lab);

// Colour difference CIEDE2000, kL = kC = kH = 1 (Sharma, Wu & Dalal 2005, Color Res Appl 30:21-30).
[[nodiscard]] double ciede2000(const Lab& one, const Lab& two);

// Individual typology angle in degrees (Chardon et al. 1991); for skin only.
[[nodiscard]] double typology_angle(const Lab& lab);

}  // namespace kempt::colour
