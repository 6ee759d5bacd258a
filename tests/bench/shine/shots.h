// Rendered panels, photographed, measured, with the truth of every shine reading beside it.
#pragma once

#include <map>
#include <string>

#include "card/calibration.h"
#include "render/panel.h"
#include "shine/shine.h"

namespace bench {

struct ShineTruth {
    double contrast = 0, width_mm = 0, luster = 0, alignment = 0;
    double strength = 0;  // share of the surface highlight (over the line that joins its ends) in all light
    double rise = 0;      // height of the surface light over the other light at its crest
};
// From the model's own curves: the same closed formulas (shine/profile_luster.h) on the true surface light over the
// straight line between the true body light at the region's ends.
[[nodiscard]] ShineTruth truth_of(const render::Panel& panel, const render::PanelTruth& truth);

struct ShineShot {
    render::PanelTruth panel;
    ShineTruth truth;
    std::map<std::string, kempt::Quantity> readings;
    std::map<std::string, std::string> refused;  // name to code
    std::optional<kempt::shine::LightSignature> light;
    std::string error;
    double milliseconds = 0;  // of measure_shine
};
// Through JPEG and intake, as a stylist's file would be; the region's corners moved at random by hand_mm (SD).
[[nodiscard]] ShineShot photograph_and_measure(const render::Panel& panel, double hand_mm, uint64_t hand_seed);

// A head in a usable set-up: one main light of at least half of the light, card beside the hair, 8-16 px/mm, tilt to 12
// degrees; smooth hair that lies closed (3-20 % of the top layer open), the region 36-56 mm wide.
[[nodiscard]] render::Panel usable_panel(uint64_t person_seed, uint64_t shot_seed, const render::CardPicture& card,
                                         render::PanelOptions options);
inline const char* const shine_names[] = {"shine_contrast", "shine_width", "luster", "alignment"};
[[nodiscard]] double true_value(const ShineTruth& truth, int reading);

}  // namespace bench
