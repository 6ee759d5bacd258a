#include "edges/interval.h"

#include <algorithm>
#include <cmath>

namespace kempt::edges {

namespace {
// Faint hair is harder in proportion; beyond CIEDE2000 of about 25 nothing more is gained. Without any hair in sight
// the usual middle is taken.
double faint(const Circumstances& at) { return at.contrast > 0 ? std::clamp(std::sqrt(18 / at.contrast), 0.75, 1.8) : 1.0; }
double coarse(const Circumstances& at) { return std::clamp(std::pow(20 / at.px_per_mm, 0.6), 0.8, 3.0); }
double dim(const Circumstances& at) { return at.light_known ? 1.0 : 1.25; }
}  // namespace

double coverage_sd(double cover, const Circumstances& at) {
    const double c = std::clamp(cover, 0.0, 1.0);
    return (0.003 + 0.06 * std::sqrt(c * (1 - c)) * faint(at) * coarse(at)) * dim(at);
}

double strands_sd(double strands, const Circumstances& at) { return (0.35 + 0.09 * strands * faint(at)) * dim(at); }

double density_sd(double density, const Circumstances& at) { return (0.05 + 0.08 * density * faint(at)) * dim(at); }

}  // namespace kempt::edges
