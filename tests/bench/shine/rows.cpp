// What varies from photo to photo: hair (colour within its class, mixed fibres, spread of fibres, gaps, waves,
// flyaway), gloss 0.1-0.9, roughness 5-10 deg, cuticle tilt 5-10 deg, glint, head radius 60-140 mm, light
// (direction, share, colour, evenness), camera (8-16 px/mm, tilt to 12 deg, distance), phone, place of the card.
#include <cstdio>

#include "bench/shine/modes.h"
#include "bench/shine/shots.h"
#include "render/write_photo.h"

namespace bench {

int shine_rows(uint64_t first, uint64_t count) {
    const render::CardPicture card = render::printed_card();
    std::printf("seed,hair,px_per_mm,gloss,strength,rise,roughness,radius,key,streaks,ms,error");
    for (const char* name : shine_names)
        std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", name, name, name, name, name);
    std::printf("\n");
    for (uint64_t seed = first; seed < first + count; ++seed) {
        render::PanelOptions options;
        options.hair_colour = static_cast<int>(seed % 7);
        options.gloss = render::Rng(seed * 61 + 3).uniform(0.1, 0.9);
        const render::Panel panel = usable_panel(seed * 7919 + 13, seed * 104729 + 7, card, options);
        const ShineShot shot = photograph_and_measure(panel, 1.0, seed * 31 + 1);
        std::printf("%llu,%d,%.2f,%.3f,%.4f,%.4f,%.2f,%.0f,%.2f,%.1f,%.1f,%s", static_cast<unsigned long long>(seed),
                    options.hair_colour, shot.panel.px_per_mm, shot.panel.gloss, shot.truth.strength, shot.truth.rise,
                    panel.scene.hair.roughness_deg, panel.radius_mm, panel.scene.light.key_share, panel.streaks_per_cm2,
                    shot.milliseconds, shot.error.c_str());
        for (int k = 0; k < 4; ++k) {
            const auto q = shot.readings.find(shine_names[k]);
            if (q == shot.readings.end()) {
                const auto why = shot.refused.find(shine_names[k]);
                std::printf(",%.5f,,,,%s", true_value(shot.truth, k),
                            why == shot.refused.end() ? shot.error.c_str() : why->second.c_str());
            } else {
                std::printf(",%.5f,%.5f,%.5f,%.5f,", true_value(shot.truth, k), q->second.value, q->second.low,
                            q->second.high);
            }
        }
        std::printf("\n");
        std::fflush(stdout);
    }
    return 0;
}

}  // namespace bench
