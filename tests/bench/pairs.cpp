// Visits re-photographed: the same hair under another day's light, and the same edge with more hair. Each pair is up to
// four visits of two shots: A and B show the same strands, C shows 8 points more coverage or so, D 20: an edge that was
// thin and filled in over months, for the depth of the fill and the bare length.
//   bench_pairs SEED COUNT GROWN LIGHT [VISITS [close]]   one CSV row a shot; one pair in GROWN has a visit C, every
//                                                 second one D (GROWN 0: none has). VISITS: only those, as "D". close:
//                                                 only pairs close enough for counts of strands
// LIGHT "salon": the same chair and lamps, as well as they are set up again (direction to about 35 degrees around and 8
// degrees up, strength, softness, somebody's shadow, colour and phone settings anew). LIGHT "any": every visit is lit
// from anywhere.
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "bench/support/measure_shot.h"
#include "render/write_photo.h"

int main(int argc, char** argv) {
    if (argc < 5 || argc > 7) return 2;
    const std::string wanted = argc > 5 ? argv[5] : "ABCD";
    const bool only_close = argc > 6 && std::string(argv[6]) == "close";
    const bool any_light = std::string(argv[4]) == "any";
    const uint64_t first = std::strtoull(argv[1], nullptr, 10), count = std::strtoull(argv[2], nullptr, 10),
                   grown = std::strtoull(argv[3], nullptr, 10);
    const render::CardPicture card = render::printed_card();
    const char* names[] = {"edge_coverage", "edge_strands", "fill_depth", "bare_length", "length_density"};
    std::printf("pair,visit,shot,skin,hair,px_per_mm,gate,error");
    for (const char* n : names) std::printf(",%s_true,%s", n, n);
    std::printf("\n");
    // How steadily a line is drawn again: a third of a millimetre (from memory of tracing tests; no source).
    constexpr double hand_mm = 0.3;
    for (uint64_t pair = first; pair < first + count; ++pair) {
        render::Rng choose(pair * 31 + 5);
        // Two in ten close enough for counts.
        const bool close = choose.chance(0.2);
        if (only_close && !close) continue;
        const double px_per_mm = close ? choose.uniform(20.5, 21.5) : choose.uniform(12.2, 13.8);
        double cover = 0;
        // Which ones are seen again moves on by the hundred, or every other skin would never be.
        const uint64_t turn = pair + pair / 100;
        const bool seen[] = {true, true, grown > 0 && turn % grown == 0, grown > 0 && turn % 2 == 0};
        for (int visit = 0; visit < 4; ++visit) {
            const bool asked = wanted.find("ABCD"[visit]) != std::string::npos;
            const bool start = visit == 0 && (seen[2] || seen[3]);  // where C and D set out from
            if (!seen[visit] || (!asked && !start)) continue;
            render::CloseUpOptions options;
            options.skin_class = static_cast<int>(pair % 6);
            options.hair_colour = static_cast<int>(pair / 6 % 7);
            options.px_per_mm = px_per_mm;
            options.tilt_max_deg = 15;
            options.phone_strength = 0.6;
            options.field_mm_x = 94;
            options.field_mm_y = 66;
            options.quarter_turns = false;
            const uint64_t person = pair * 7919 + 500001,
                           day =
                               visit < 3 ? (pair * 3 + static_cast<uint64_t>(visit)) * 104729 + 77 : pair * 104729 + 78;
            render::Scene today = render::close_up(person, day, card, options);
            if (!any_light) {
                render::Rng chair(person + 3), set_up(day + 9);
                const render::Lighting usual = render::random_lighting(chair);
                const double around = std::atan2(usual.key.y, usual.key.x) + set_up.normal(0, 0.6);
                const double up = std::min(1.45, std::max(0.4, std::asin(usual.key.z) + set_up.normal(0, 0.14)));
                today.light.key = {std::cos(up) * std::cos(around), std::cos(up) * std::sin(around), std::sin(up)};
                today.light.key_share = std::min(0.9, std::max(0.15, usual.key_share + set_up.normal(0, 0.1)));
                today.light.penumbra = usual.penumbra * std::exp(set_up.normal(0, 0.3));
            }
            // Where nothing changes for the better: a closed edge cannot gain 8 points, so start where there is room.
            double growth = 1;
            if (visit >= 2) {
                const double now = std::min(0.9, std::max(0.02, cover / 100)),
                             then = std::min(0.97, now + (visit == 2 ? 0.085 : 0.2));
                growth = std::log(1 - then) / std::log(1 - now);
            }
            for (int shot = 0; shot < 2; ++shot) {
                if (!asked && shot > 0) break;  // only its coverage is asked for
                render::Scene scene = render::close_up(person, day * 10 + static_cast<uint64_t>(shot), card, options);
                scene.light = today.light;
                const uint64_t noise = scene.noise_seed;
                scene.phone = today.phone;
                scene.noise_seed = noise;
                scene.camera.turn_deg = std::fmod(scene.camera.turn_deg, 3.0);
                scene.growth.density = std::min(1.6, scene.growth.density) * growth;
                scene.detail_from_mm = -6;
                render::Shot picture = render::take(scene, 8, 3);
                if (visit == 0 && shot == 0) cover = picture.truth.edge_coverage;
                if (!asked) break;
                const auto bytes = render::jpeg_of(picture, 85, scene.phone.display_p3, {});
                const bench::Measured m = bench::measure(
                    bytes,
                    bench::drawn(picture, px_per_mm, hand_mm, pair * 100 + static_cast<uint64_t>(visit * 10 + shot)));
                std::printf("%llu,%c,%d,%d,%d,%.2f,%s,%s", static_cast<unsigned long long>(pair), "ABCD"[visit], shot,
                            scene.skin_class, scene.hair_colour, px_per_mm, m.gate.level.c_str(), m.error.c_str());
                const auto& t = picture.truth;
                const double truth[] = {t.edge_coverage, t.edge_strands, t.fill_depth, t.bare_length, t.length_density};
                for (int k = 0; k < 5; ++k) {
                    const auto q = m.readings.find(names[k]);
                    if (q == m.readings.end() || m.gate.level == "refused")
                        std::printf(",%.4f,", truth[k]);
                    else
                        std::printf(",%.4f,%.4f", truth[k], q->second.value);
                }
                std::printf("\n");
                std::fflush(stdout);
            }
        }
    }
    return 0;
}
