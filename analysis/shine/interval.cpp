#include "shine/interval.h"

#include <algorithm>
#include <cmath>

namespace kempt::shine {

namespace {
// The fit's own uncertainty is too small or too large by this.
constexpr double fit_factor = 1.0;
// Light of dark hair: absolute, as a share of white, and relative.
constexpr double level_floor = 0.0008, level_share = 0.01;
constexpr double no_curve_share = 0.08;  // without the ramp's curve
// Width: a head falls away from the card's plane by some millimetres in 400.
constexpr double parallax_share = 0.012;
// Relative standard error of the body's light at the region's ends.
double level_sd_share(const Circumstances& at) {
    return level_share + level_floor / std::max(at.body_light, 1e-4) + (at.curve_fitted ? 0 : no_curve_share);
}
}  // namespace

double contrast_sd(double fit_sd, const Circumstances& at) {
    // With contrast E / (E + D), d contrast = contrast (1 - contrast) dD / D.
    return std::hypot(fit_factor * fit_sd, at.contrast * (1 - at.contrast) * level_sd_share(at));
}

double width_sd_share(double fit_sd_share, const Circumstances& at) {
    return std::hypot(std::hypot(fit_factor * fit_sd_share, parallax_share), at.scale_sd_share);
}

double luster_sd_share(double fit_sd_share, const Circumstances& at) {
    // luster = (1 + E / D) / width: of the excess part, E / D follows D.
    return std::hypot(std::hypot(fit_factor * fit_sd_share, parallax_share),
                      std::hypot(at.scale_sd_share, at.contrast * level_sd_share(at)));
}

double alignment_sd(double alignment) {
    return 0.012 + 0.4 * std::max(0.0, 1 - alignment);
}

}  // namespace kempt::shine
