// Visits re-photographed: A and B show the same hair, combed anew, with the same lamps set up again on another day,
// another colour of light and the phone's own choices; C shows it after its tones were brought closer together. Two
// shots a visit, the strand line drawn anew on each. One CSV row a shot.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "bench/support/rows.h"
#include "colour/colour.h"
#include "render/write_photo.h"
#include "shots.h"

namespace bench {

namespace {

// The documented change of tone_spread (CIEDE2000): about what toning the lengths towards the new growth does. Gaps and
// foreign fibres take an eighth of a plan's change away from the hair that lies there (110 pairs, seeds 30000 and up),
// so the plan's is larger. Of salt-and-pepper hair the white fibres take no part and outshine the others: two thirds
// are taken away (52 of the benchmark's pairs), so the dark ones are bleached and toned by as much more.
constexpr double documented_change = 6;

double plan_change(int hair) {
    return documented_change / (hair == render::salt_and_pepper ? 0.345 : 0.87);
}

// Spread of a plan's own colours: what the truth of the photo will be, but for gaps and foreign fibres.
double spread_of(const render::TonePlan& plan) {
    kempt::colour::Lab zones[3];
    const double from[3] = {0, 0.4, 0.8};
    for (int z = 0; z < 3; ++z)
        for (int i = 0; i < 40; ++i) {
            const render::V3 lab = plan.lab((from[z] + 0.2 * (i + 0.5) / 40) * plan.length_mm);
            zones[z].L += lab.x / 40, zones[z].a += lab.y / 40, zones[z].b += lab.z / 40;
        }
    using kempt::colour::ciede2000;
    return std::max({ciede2000(zones[0], zones[1]), ciede2000(zones[1], zones[2]), ciede2000(zones[0], zones[2])});
}

render::TonePlan drawn_together(const render::TonePlan& plan, double share) {
    render::TonePlan out = plan;
    out.drift = plan.drift * share;
    for (render::ToneChange& change : out.changes) change.after = plan.root + (change.after - plan.root) * share;
    return out;
}

// The plan with its spread less by the documented change.
render::TonePlan toned(const render::TonePlan& plan, int hair) {
    const double wanted = spread_of(plan) - plan_change(hair);
    double low = 0, high = 1;
    for (int i = 0; i < 40; ++i) {
        const double share = 0.5 * (low + high);
        (spread_of(drawn_together(plan, share)) < wanted ? low : high) = share;
    }
    return drawn_together(plan, high);
}

render::TonePanelOptions options_of(uint64_t pair) {
    render::TonePanelOptions options;
    options.panel.hair_colour = static_cast<int>(pair % render::hair_colours);
    options.lines = 1;
    render::Rng choose(pair + 5);
    options.step =
        options.panel.hair_colour == render::salt_and_pepper ? choose.log_uniform(25, 45) : choose.log_uniform(10, 22);
    return options;
}

}  // namespace

void print_pairs(uint64_t first, uint64_t count) {
    const render::CardPicture card = render::printed_card();
    std::printf(
        "pair,visit,shot,hair,error,tone_spread_true,tone_spread,tone_spread_low,tone_spread_high,"
        "tone_level_true,tone_level\n");
    for (uint64_t pair = first; pair < first + count; ++pair) {
        const render::TonePanelOptions options = options_of(pair);
        // Somebody with enough between root and ends to bring together.
        uint64_t person = pair * 7919 + 500001;
        for (int tries = 0; tries < 200; ++tries, ++person)
            if (spread_of(render::tone_panel(person, 1, card, options).plan) >=
                plan_change(options.panel.hair_colour) + 2)
                break;
        render::Rng chair(person + 3);
        render::Lighting usual = render::panel_light(chair);
        const double key_share = chair.uniform(0.1, 0.4);
        for (int visit = 0; visit < 3; ++visit) {
            const uint64_t day = (pair * 3 + static_cast<uint64_t>(visit)) * 104729 + 77;
            render::Rng set_up(day);
            render::Lighting light = render::set_up_again(usual, set_up, 8);
            light.key_share = std::min(0.5, std::max(0.05, key_share + set_up.normal(0, 0.04)));
            const double warm = set_up.normal(0, 0.12);
            light.colour = {static_cast<float>(1 + warm), 1.f, static_cast<float>(1 - warm)};
            const render::Phone phone = render::random_phone(set_up, 0.5);
            const double aside = set_up.normal(0, 2);
            for (int shot = 0; shot < 2; ++shot) {
                const uint64_t seed = day * 10 + static_cast<uint64_t>(shot);
                render::TonePanel panel = render::tone_panel(person, seed, card, options);
                panel.panel.scene.light = light;
                panel.panel.scene.phone = phone;
                panel.panel.scene.strand_seed += static_cast<uint64_t>(visit);
                if (visit == 2) render::set_plan(panel, toned(panel.plan, options.panel.hair_colour));
                render::Rng hand(seed + 1);
                const ToneShot got = measure_panel(
                    panel,
                    {.aside_mm = aside + hand.normal(0, 0.7), .along_mm = hand.normal(0, 0.4), .seed = seed + 2});
                const auto value = [&](const char* name) {
                    for (const auto& q : got.got.readings)
                        if (q.name == name) return fixed(q.value, 4);
                    return std::string();
                };
                std::string interval = ",";
                for (const auto& q : got.got.readings)
                    if (q.name == "tone_spread") interval = fixed(q.low, 4) + "," + fixed(q.high, 4);
                std::printf("%llu,%c,%d,%d,%s,%.4f,%s,%s,%.4f,%s\n", static_cast<unsigned long long>(pair),
                            "ABC"[visit], shot, panel.panel.scene.hair_colour, got.error.c_str(), got.truth.spread,
                            value("tone_spread").c_str(), interval.c_str(), level_truth(got),
                            value("tone_level").c_str());
                std::fflush(stdout);
            }
        }
    }
}

}  // namespace bench
