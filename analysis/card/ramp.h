// Light from the grey ramp: gains, unevenness of the light over the card, and the phone's tone curve.
#pragma once

#include "card/calibration.h"
#include "card/patches.h"

namespace kempt::card {

struct RampResult {
    std::optional<Light> light;  // empty when not even gains could be taken
    std::vector<Finding> findings;
};

// Method. In codes (sRGB transfer of device light) the phone's curve is code = lift + (1 - lift) B(w), where w is the
// coded true light and B a Bernstein polynomial of degree 5 from (0, 0) to (1, 1): it holds the identity and smooth
// S-curves exactly, other curves closely, and goes on sensibly beyond the patches. Every patch is paired with the bare
// paper above and below it: true light of patch / true light of paper = reflectance, whatever falls there, so a
// shadow's edge or a gradient across the card drops out of the fit. When the paper is clipped the light is taken as a
// plane in log light instead, which the reversed second row separates from the ramp. Robust least squares with weak
// priors (no lift, straight curve); the markers' black gives a bound (0 to 6 % of the paper). All channels share one
// curve; if that leaves too much over, each channel gets its own. Gains then make the white patch read its reflectance
// in mid-card.
[[nodiscard]] RampResult light_of_card(const CardSamples& samples);

// True light of one channel from linear-coded light of the photo (0..1), by the table; gains alone without a curve.
[[nodiscard]] float corrected(const Light& light, int channel, float photo_light);

}  // namespace kempt::card
