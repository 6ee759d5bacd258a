// Skin's own marks (pores, freckles, blotches) without the light: bands of log light and of redness, in units of their
// own contrast.
#pragma once

#include "align/ground.h"

namespace kempt::align {

// Of log light (layer 0) or redness (layer 1): standard deviations of the two Gaussians whose difference is kept, in
// mm.
struct Band {
    int layer = 0;
    double finest_mm = 0, coarsest_mm = 0;
};

struct Texture {
    Ground ground;    // weight: where the texture may be compared
    cv::Mat texture;  // CV_32FC(number of bands, 4 at most), 0 where the weight is 0; elsewhere about unit variance,
                      // cut off
};

// Weighted throughout (normalised convolution, Knutsson and Westin 1993), so that card and hair do not bleed into the
// skin beside them. Log light turns a factor of light into an offset, which the band drops; redness (red over green)
// does not see shading and shadow at all.
[[nodiscard]] Texture texture_of(const Ground& ground, const std::vector<Band>& bands);

// Without its first band.
[[nodiscard]] Texture without_first(const Texture& texture);

// Times the weight, band by band.
[[nodiscard]] std::vector<cv::Mat> weighted_bands(const Texture& texture);

// Takes the weight away from thin things that stand out from the skin about them, hairs above all, and from places that
// are full of them.
void leave_out_hairs(Ground& ground);

// Gaussian, by three boxes where sigma is large (Wells 1986); same size, zero outside.
[[nodiscard]] cv::Mat smooth(const cv::Mat& field, double sigma_px);

}  // namespace kempt::align
