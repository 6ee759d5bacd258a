#include "close_up.h"

#include "strands.h"

namespace render {

Scene close_up(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card, const CloseUpOptions& options) {
    Rng person(person_seed), shot(shot_seed);
    Scene s;
    s.skin_class = options.skin_class >= 0 ? options.skin_class : person.index(skin_classes);
    s.hair_colour = options.hair_colour >= 0 ? options.hair_colour : person.index(hair_colours);
    const double half = person.uniform(26, 39);
    s.x_from = -half;
    s.x_to = half;
    s.skin = random_skin(person, s.skin_class);
    s.hair = random_hair(person, s.hair_colour);
    s.growth = random_growth(person, -half, half);
    s.strand_seed = person.next();
    // A gentle hairline: an arc and a wave.
    const double sag = person.normal(0, 2.5), ripple = person.uniform(0, 1.2), phase = person.uniform(0, 6.28),
                 wave = person.uniform(18, 50);
    s.edge_y = [=](double x) { return sag * (x * x) / (35 * 35) + ripple * std::sin(phase + 6.2831853 * x / wave); };

    s.light = random_lighting(shot);
    s.phone = random_phone(shot, options.phone_strength);
    s.noise_seed = shot.next();
    Camera& c = s.camera;
    c.px_per_mm = options.px_per_mm > 0 ? options.px_per_mm : shot.log_uniform(12, 32);
    c.tilt_deg = std::min(options.tilt_max_deg, std::abs(shot.normal(0, 0.5 * options.tilt_max_deg)));
    c.tilt_axis_deg = shot.uniform(0, 360);
    const int quarter = options.quarter_turns ? shot.index(4) : 0;
    c.turn_deg = 90 * quarter + shot.normal(0, 4);
    c.bulge_radius_mm = person.uniform(85, 200);
    c.bulge_y_mm = 6;
    c.focal_px = 0;
    s.card = card;
    const double gap = shot.uniform(4.5, 8), top = s.edge_y(0) - gap;
    s.card.turn_deg = shot.normal(0, 2.5);
    s.card.origin_mm = {shot.normal(0, 1.0) - 42, top - 30 - std::abs(sag) * 0.5};
    if (!options.card) s.card = {};
    const double wide = options.field_mm_x > 0 ? options.field_mm_x : 84 + 14 + 0.5 * c.tilt_deg,
                 high = options.field_mm_y > 0 ? options.field_mm_y : 74 + 0.4 * c.tilt_deg;
    c.width = static_cast<int>((quarter % 2 ? high : wide) * c.px_per_mm);
    c.height = static_cast<int>((quarter % 2 ? wide : high) * c.px_per_mm);
    c.focal_px = shot.uniform(1.0, 1.35) * 1.1 * std::max(c.width, c.height);
    c.aim_mm = {0, options.card ? -6.0 : 9.0};
    return s;
}

Shot take(const Scene& scene, double margin_mm, int samples) {
    const Coat coat = grow(scene, margin_mm, 32);
    const Rendered r = rasterise(scene, coat, samples > 0 ? samples : scene.camera.px_per_mm > 22 ? 3 : 4);
    Shot out;
    out.width = r.width;
    out.height = r.height;
    out.rgb = photograph(scene, r);
    out.truth = truth_of(scene, r);
    double hair = 0, skin = 0;
    const Projector projector(scene.camera);
    for (int y = 0; y < r.height; y += 2)
        for (int x = 0; x < r.width; x += 2) {
            const V2 p = projector.plane_from_px({static_cast<double>(x), static_cast<double>(y)});
            const double depth = p.y - scene.edge_y(p.x);
            if (depth < 0 || depth > 15) continue;
            const size_t i = static_cast<size_t>(y) * r.width + x;
            if (r.cover[i] > 0.97f) out.mean_hair = out.mean_hair + r.light[i], hair += 1;
            if (r.cover[i] < 0.01f) out.mean_skin = out.mean_skin + r.light[i], skin += 1;
        }
    if (hair > 0) out.mean_hair = out.mean_hair * static_cast<float>(1 / hair);
    if (skin > 0) out.mean_skin = out.mean_skin * static_cast<float>(1 / skin);
    return out;
}

}  // namespace render
