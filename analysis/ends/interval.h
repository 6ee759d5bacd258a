// Standard uncertainties of the readings of the ends, calibrated on rendered truth (tests/bench/ends, seeds 1000 and
// up).
#pragma once

namespace kempt::ends {

struct Trust {
    double hair_light = 0.1;    // of the hair's fullest places relative to the paper's: 0 black, 1 as bright as paper
    double hair_colour = 0;     // their red - blue, likewise: it tells hair from the shadowed paper between strands
    bool light_known = true;    // tone curve undone by the card's ramp
    double scale_sd_share = 0;  // standard uncertainty of px/mm over px/mm
};

// Of a mean cover between 0 and 1, as a share.
[[nodiscard]] double cover_sd(double cover, const Trust& trust);
// Of hem_unevenness, mm, to one side; sway_mm: how far it moves that way when the hem is taken at 0.8 of its level
// of cover (downward) or at 1.2 (upward).
[[nodiscard]] double unevenness_sd(double unevenness_mm, double sway_mm, const Trust& trust);
// Of flyaway, as a share; rim_share: area looked at around the silhouette over the hair's area.
[[nodiscard]] double flyaway_sd(double flyaway, double rim_share, const Trust& trust);

}  // namespace kempt::ends
