// The same head photographed again. Each pair is visits of two shots under the lamps of the pair's own chair:
//   A, B  nothing changed; lamps set up again (direction within 4 degrees SD both ways, share of the key light 0.03 SD,
//         evenness 0.5 %/cm SD), camera held anew (tilt to 12 degrees, 350-500 mm away), the region drawn again on the
//         same hair with 1 mm of scatter at each corner.
//   C     (every third pair) the same after a service that smooths: gloss x 1.8, lobe x 0.75, nine of ten flyaway
//         hairs laid. In salt-and-pepper hair the white fibres scatter so much that the same service moves its
//         contrast by a fifth of what it does elsewhere; there gloss rises threefold, to 0.9 at most, which is the most
//         that hair shows.
//   D     (every sixth) the hair of A under another chair's lamps: what light_differs is for.
// A shot whose light differs from visit A's first shot by light_differs has no readings: the program compares nothing
// then.
#include <algorithm>
#include <cstdio>
#include <optional>

#include "bench/shine/modes.h"
#include "bench/shine/shots.h"
#include "render/write_photo.h"

namespace bench {

int shine_pairs(uint64_t first, uint64_t count) {
    const render::CardPicture card = render::printed_card();
    std::printf("pair,visit,shot,hair,px_per_mm,strength,differs,at,turn,along,across,error");
    for (const char* name : shine_names) std::printf(",%s_true,%s,%s_refused", name, name, name);
    std::printf("\n");
    for (uint64_t pair = first; pair < first + count; ++pair) {
        render::Rng chair(pair * 613 + 29);
        const render::Lighting usual = render::panel_light(chair);
        render::PanelOptions options;
        options.hair_colour = static_cast<int>(pair % 7);
        options.gloss = chair.log_uniform(0.12, 0.4);
        options.px_per_mm = chair.uniform(8, 10.5);
        // Lifted hairs shine out from dark hair and hide in fair: as many as make either look ruffled.
        const double ruffled[render::hair_colours] = {10, 10, 20, 28, 45, 45, 45};
        const double streaks = ruffled[options.hair_colour] * chair.log_uniform(0.75, 1.33),
                     spread = chair.uniform(24, 34);
        const uint64_t person = pair * 7919 + 500009;
        std::optional<kempt::shine::LightSignature> before;
        double from_mm = 0, to_mm = 0;
        for (int visit = 0; visit < 4; ++visit) {
            if ((visit == 2 && pair % 3 != 0) || (visit == 3 && pair % 6 != 1)) continue;
            const uint64_t day = (pair * 4 + static_cast<uint64_t>(visit)) * 104729 + 77;
            render::Rng set_up(day + 9);
            render::Lighting today = render::set_up_again(usual, set_up, 4);
            if (visit == 3) today = render::panel_light(set_up);
            today.key_share = std::max(today.key_share, 0.5);
            const render::Phone phone = usable_panel(person, day, card, options).scene.phone;
            for (int shot = 0; shot < 2; ++shot) {
                render::Panel panel = usable_panel(person, day * 10 + static_cast<uint64_t>(shot), card, options);
                panel.scene.light = today;
                panel.scene.phone = phone;
                panel.streaks_per_cm2 = streaks, panel.streak_spread_deg = spread;
                if (visit == 0 && shot == 0) {
                    render::mark_region(panel, 3.2);
                    from_mm = panel.region_from_mm, to_mm = panel.region_to_mm;
                }
                panel.region_from_mm = from_mm, panel.region_to_mm = to_mm;
                if (visit == 2) {
                    panel.scene.hair.gloss = std::min(
                        0.9, (options.hair_colour == render::salt_and_pepper ? 3 : 1.8) * panel.scene.hair.gloss);
                    panel.scene.hair.roughness_deg *= 0.75;
                    panel.streaks_per_cm2 *= 0.1;
                }
                const ShineShot taken =
                    photograph_and_measure(panel, 1.0, pair * 100 + static_cast<uint64_t>(visit * 10 + shot));
                if (visit == 0 && shot == 0) before = taken.light;
                const bool differs = before && taken.light && kempt::shine::light_differs(*before, *taken.light);
                const kempt::shine::LightSignature light = taken.light.value_or(kempt::shine::LightSignature{});
                std::printf("%llu,%c,%d,%d,%.2f,%.4f,%d,%.4f,%.2f,%.4f,%.4f,%s", static_cast<unsigned long long>(pair),
                            "ABCD"[visit], shot, options.hair_colour, options.px_per_mm, taken.truth.strength, differs,
                            light.highlight_at, light.highlight_turn_deg, light.gradient_along_per_cm,
                            light.gradient_across_per_cm, taken.error.c_str());
                for (int k = 0; k < 4; ++k) {
                    const auto q = taken.readings.find(shine_names[k]);
                    const auto why = taken.refused.find(shine_names[k]);
                    std::printf(",%.5f,", true_value(taken.truth, k));
                    // Alignment does not hang on the light.
                    if (q != taken.readings.end() && (!differs || k == 3 || visit == 3))
                        std::printf("%.5f", q->second.value);
                    std::printf(",%s", why == taken.refused.end() ? "" : why->second.c_str());
                }
                std::printf("\n");
                std::fflush(stdout);
            }
        }
    }
    return 0;
}

}  // namespace bench
