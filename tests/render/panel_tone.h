// Panels for tone: hair whose colour changes along its length, and flat painted patches beside the card. Built on
// panel.h, which draws them.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "panel.h"

namespace render {

// The colour changes to `after` around a place: a smooth step (Gaussian integral) of which 80 % happens over width_mm.
struct ToneChange {
    double s_mm = 0, width_mm = 3;
    V3 after;  // L, a, b of a fibre
};
struct TonePlan {
    V3 root{20, 3, 5};
    std::vector<ToneChange> changes;
    // Gradual lightening along the length as the sun does it: drift * (s / length)^power is added in Lab.
    V3 drift{0, 0, 0};
    double drift_power = 1, length_mm = 100;
    // Lab of a fibre at s; without the step of change `leave_out` and those after it, if given.
    [[nodiscard]] V3 lab(double s_mm, int leave_out = -1) const;
};

struct TonePanelOptions {
    PanelOptions panel;
    int lines = -1;     // lines of demarcation; -1: none 35 %, one 45 %, two 20 %
    double step = 0;    // CIEDE2000 of the fibre's colour; 0: 5-22, log-uniform
    double drift = -1;  // share of a strong sun-lightening (12 L*, 5 b* over the length); -1: none in half, else 0-1
    double first_at_mm = 0;  // of the first line; 0: drawn
    double width_mm = 0;     // 0: 0.5-6
    double key_share = 0;    // of the light, the rest comes from all around; 0: 0.1-0.4
};

struct TonePanel {
    Panel panel;
    TonePlan plan;
};

// Radii of 120-500 mm along the hair: a strand combed out and hanging or laid flat, not drawn over the crown.
[[nodiscard]] TonePanel tone_panel(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card,
                                   const TonePanelOptions& options = {});
// After the plan was changed.
void set_plan(TonePanel& tone, const TonePlan& plan);

struct ToneLine {
    double step = 0;                 // CIEDE2000 between the body colours on both sides, drift taken out
    double at_mm = 0, width_mm = 0;  // in the card's plane from the scalp
};
struct ToneTruth {
    std::vector<ToneLine> lines;
    V3 root, mid, end;        // means over `zone_share` of the strand line
    double spread = 0;        // largest CIEDE2000 between them
    double length_mm = 0;     // of the strand line in the card's plane
    std::vector<V2> line_px;  // the strand line, every 5 mm, from the scalp to where the ends begin to thin
};
[[nodiscard]] ToneTruth tone_truth(const TonePanel& tone, const PanelTruth& truth, double zone_share = 0.2);

// Flat paint of skin and hair colours in the card's plane, four rows of six squares of 12 mm under the card.
struct PatchShot {
    Shot shot;
    bool display_p3 = false;
    std::array<V3, 24> lab;                     // as painted
    std::array<std::array<V2, 4>, 24> area_px;  // the inner 8 mm
};
[[nodiscard]] PatchShot patch_shot(uint64_t seed, const CardPicture& card, PanelLight light, double px_per_mm = 10);

}  // namespace render
