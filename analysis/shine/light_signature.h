// How the light stood when shine was measured: shine compares only between photos whose set-up agrees.
#pragma once

#include <optional>
#include <string>

namespace kempt::shine {

// All directions in the frame of the fibres (x along them from root to end, y across), so that a card laid another way
// round says the same.
struct LightSignature {
    double gradient_along_per_cm = 0;   // relative change of light over the card, along the fibres
    double gradient_across_per_cm = 0;  // across them
    double highlight_at = 0;            // place of the highlight's crest in the region, 0 first side .. 1 last side
    double highlight_turn_deg = 0;      // of the crest's line against the fibres' normal
};

// Why two photos may not be compared, as one full sentence; nullopt when they may. Limits and their reasons in the
// source (docs/reliability.md tells what they cost).
[[nodiscard]] std::optional<std::string> light_differs(const LightSignature& one, const LightSignature& other);

}  // namespace kempt::shine
