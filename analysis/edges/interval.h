// Standard uncertainties of the edge readings: the method's own error, calibrated on rendered truth that the network
// was not trained on (docs/accuracy.md says how). The scale's uncertainty is added by the caller.
#pragma once

namespace kempt::edges {

struct Circumstances {
    double coverage = 0;  // 0..1 in the first 10 mm
    double contrast = 0;  // CIEDE2000 of hair and scalp; 0 when no hair was seen
    double px_per_mm = 20;
    double scale_sd_share = 0;  // standard uncertainty of px/mm over px/mm
    bool light_known = true;    // tone curve undone by the card's ramp
};

// Of a mean cover c (0..1), as a share.
[[nodiscard]] double coverage_sd(double cover, const Circumstances& at);
// Of edge_strands, 1/cm, and of length_density, mm/mm2.
[[nodiscard]] double strands_sd(double strands, const Circumstances& at);
[[nodiscard]] double density_sd(double density, const Circumstances& at);

// How many standard uncertainties of cover a level is moved by for the 95 % limits of what is read off at that level
// (fill_depth, bare_length), and what is left when the profile is steep.
inline constexpr double depth_sway = 1.4, bare_sway = 1.5;  // single columns err more than the whole band
inline constexpr double depth_half_mm = 0.25, bare_half_mm = 1.0;

}  // namespace kempt::edges
