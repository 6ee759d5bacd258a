#include "shine/interval.h"

#include <algorithm>
#include <cmath>

namespace kempt::shine {

namespace {
// What the fit says of itself is too much: its rows are taken to hang together over 12 mm, and most do so over less.
// Root mean square of error over stated uncertainty on 150 panels (bench_shine rows, seeds 8000-8149), rounded up. With
// colour trusted to a JPEG's steps it was 0.6-1.0 of what these give on 584 panels (seeds 64000-65399), by hair colour.
constexpr double contrast_factor = 0.9, width_factor = 0.7, luster_factor = 0.75;
// Light of dark hair: absolute, as a share of white, and relative. The card's darkest patch is 3 % of white; below it
// the tone curve is carried on, and came out 0.0004-0.001 too high on rendered black hair of 0.006-0.02.
constexpr double level_floor = 0.0008, level_share = 0.01;
constexpr double no_curve_share = 0.08;  // without the ramp's curve: a mild S-curve moves them by a tenth
// Width: a head falls away from the card's plane by some millimetres in 400.
constexpr double parallax_share = 0.01;
// Relative standard error of the body's light at the region's ends.
double level_sd_share(const Circumstances& at) {
    return level_share + level_floor / std::max(at.body_light, 1e-4) + (at.curve_fitted ? 0 : no_curve_share);
}
}  // namespace

double contrast_sd(double fit_sd, const Circumstances& at) {
    // With contrast E / (E + D), d contrast = contrast (1 - contrast) dD / D.
    return std::hypot(contrast_factor * fit_sd, at.contrast * (1 - at.contrast) * level_sd_share(at));
}

double width_sd_share(double fit_sd_share, const Circumstances& at) {
    return std::hypot(std::hypot(width_factor * fit_sd_share, parallax_share), at.scale_sd_share);
}

double luster_sd_share(double fit_sd_share, const Circumstances& at) {
    // luster = (1 + E / D) / width: of the excess part, E / D follows D.
    return std::hypot(std::hypot(luster_factor * fit_sd_share, parallax_share),
                      std::hypot(at.scale_sd_share, at.contrast * level_sd_share(at)));
}

double alignment_sd(double alignment) {
    // Single hairs across dark ones shine out and count more than their area, across fair ones less: ruffled hair's
    // order is known to about a third of what is missing to 1.
    return 0.012 + 0.37 * std::max(0.0, 1 - alignment);
}

}  // namespace kempt::shine
