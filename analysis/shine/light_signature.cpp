#include "shine/light_signature.h"

#include <cmath>

namespace kempt::shine {

namespace {
// To be calibrated.
constexpr double most_shift = 0.15;
constexpr double most_gradient_per_cm = 0.06;
constexpr double most_turn_deg = 15;
}  // namespace

std::optional<std::string> light_differs(const LightSignature& one, const LightSignature& other) {
    if (std::abs(one.highlight_at - other.highlight_at) > most_shift)
        return "The highlight lies at another place of the region, so the light or the camera stood elsewhere.";
    if (std::abs(one.highlight_turn_deg - other.highlight_turn_deg) > most_turn_deg)
        return "The highlight runs across the hair at another angle, so the light or the camera stood elsewhere.";
    if (std::hypot(one.gradient_along_per_cm - other.gradient_along_per_cm,
                   one.gradient_across_per_cm - other.gradient_across_per_cm) > most_gradient_per_cm)
        return "The light falls off over the card in another way, so the lamps stood elsewhere.";
    return std::nullopt;
}

}  // namespace kempt::shine
