#include "ends/interval.h"

#include <algorithm>
#include <cmath>

namespace kempt::ends {

namespace {
// Light hair without a colour of its own is hardest to tell from the paper between its strands.
double doubt(const Trust& trust) {
    const double colour = std::min(1.0, std::abs(trust.hair_colour) / 0.15);
    return 1 + 7 * std::clamp(trust.hair_light, 0.0, 0.6) * (1 - 0.6 * colour);
}
}  // namespace

double cover_sd(double cover, const Trust& trust) {
    const double c = std::clamp(cover, 0.02, 0.98);
    return (0.005 + 0.036 * std::sqrt(c * (1 - c))) * doubt(trust) * (trust.light_known ? 1 : 1.3);
}

double unevenness_sd(double unevenness_mm, double sway_mm, const Trust& trust) {
    return std::sqrt(0.05 * 0.05 + std::pow(0.04 * unevenness_mm, 2) + std::pow(0.7 * sway_mm, 2) +
                     std::pow(trust.scale_sd_share * unevenness_mm, 2));
}

double flyaway_sd(double flyaway, double rim_share, const Trust& trust) {
    return (0.0025 + 0.055 * std::max(0.0, flyaway) + 0.0005 * rim_share) * (trust.light_known ? 1 : 1.3);
}

}  // namespace kempt::ends
