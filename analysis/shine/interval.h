// Standard uncertainties of the shine readings: what the fit of the light along the fibres says of itself, and the
// errors that it cannot know (tone curve in the dark, parallax of a round head), calibrated on rendered panels that the
// benchmark does not use. The scale's own uncertainty is added here.
#pragma once

namespace kempt::shine {

struct Circumstances {
    double contrast = 0;        // shine_contrast
    double body_light = 0;      // luminance of the body at the region's ends, 1 = white
    double scale_sd_share = 0;  // standard uncertainty of px/mm over px/mm
    bool curve_fitted = true;   // tone curve undone by the card's ramp
};

[[nodiscard]] double contrast_sd(double fit_sd, const Circumstances& at);
// Relative.
[[nodiscard]] double width_sd_share(double fit_sd_share, const Circumstances& at);
[[nodiscard]] double luster_sd_share(double fit_sd_share, const Circumstances& at);
[[nodiscard]] double alignment_sd(double alignment);

}  // namespace kempt::shine
