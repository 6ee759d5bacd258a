#include "edges/interval.h"

#include <algorithm>
#include <cmath>

namespace kempt::edges {

namespace {
// Faint hair is harder in proportion. Without any hair in sight the usual middle is taken.
double faint(const Circumstances& at) {
    return at.contrast > 0 ? std::clamp(std::pow(18 / at.contrast, 0.4), 0.72, 1.35) : 1.0;
}
double coarse(const Circumstances& at) {
    return std::clamp(std::pow(20 / at.px_per_mm, 0.5), 0.8, 3.0);
}
double dim(const Circumstances& at) {
    return at.light_known ? 1.0 : 1.25;
}
}  // namespace

double coverage_sd(double cover, const Circumstances& at) {
    // A bare band and a closed one are easy; in between errors grow with the number of half-hidden pixels.
    const double c = std::clamp(cover, 0.0, 1.0);
    return (0.0025 + 0.088 * std::pow(c * (1 - c), 0.75) * faint(at) * coarse(at)) * dim(at);
}

double strands_sd(double strands, const Circumstances& at) {
    return (0.3 + 0.078 * strands * faint(at)) * dim(at);
}

double density_sd(double density, const Circumstances& at) {
    return (0.04 + 0.06 * density * faint(at)) * dim(at);
}

}  // namespace kempt::edges
