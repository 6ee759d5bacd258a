#include "panel.h"

#include <algorithm>

#include "panel_weave.h"

namespace render {

namespace {
constexpr double deg = 3.14159265358979 / 180;
// Arc length of the parabola z = -t^2 / (2 R) from its crown.
double arc(double t, double R) {
    const double q = t / R;
    return 0.5 * R * (q * std::sqrt(1 + q * q) + std::asinh(q));
}
}  // namespace

double Panel::z(double x, double y) const {
    const double t = y - crown_y;
    return -t * t / (2 * radius_mm) - x * x / (2 * radius_across_mm);
}

double Panel::s_of(double y) const {
    if (radius_mm > 1e7) return y - root_y;
    return arc(y - crown_y, radius_mm) - arc(root_y - crown_y, radius_mm);
}

double Panel::y_of(double s) const {
    if (radius_mm > 1e7) return root_y + s;
    double y = root_y + s;
    for (int i = 0; i < 8; ++i) {
        const double q = (y - crown_y) / radius_mm;
        y -= (s_of(y) - s) / std::sqrt(1 + q * q);
    }
    return y;
}

Rgb albedo_from_lab(double L, double a, double b) {
    return linear_from_lab(L, a, b);
}

Lighting panel_light(Rng& rng, PanelLight kind) {
    Lighting light;
    const double along = rng.uniform(-20, 12) * deg, aside = rng.uniform(-35, 35) * deg;
    light.key = unit({std::tan(aside), std::tan(along), 1});
    light.key_share = rng.uniform(0.35, 0.85);
    light.gradient_x = rng.normal(0, 0.0015);
    light.gradient_y = rng.normal(0, 0.0015);
    const double warm = rng.normal(0, 0.06);
    light.colour = {static_cast<float>(1 + warm), static_cast<float>(1 + rng.normal(0, 0.02)),
                    static_cast<float>(1 - warm)};
    if (kind == PanelLight::warm) light.colour = {1.2f, 1.f, 0.65f};
    if (kind == PanelLight::cool) light.colour = {0.82f, 1.f, 1.2f};
    return light;
}

Lighting set_up_again(const Lighting& usual, Rng& rng, double turn_deg) {
    Lighting light = usual;
    const double x = std::atan2(usual.key.x, usual.key.z) + rng.normal(0, turn_deg) * deg,
                 y = std::atan2(usual.key.y, usual.key.z) + rng.normal(0, turn_deg) * deg;
    light.key = unit({std::tan(x), std::tan(y), 1});
    light.key_share = clamp(usual.key_share + rng.normal(0, 0.03), 0.2, 0.9);
    light.gradient_x += rng.normal(0, 0.0005);
    light.gradient_y += rng.normal(0, 0.0005);
    return light;
}

void mark_region(Panel& p, double feet) {
    const V3 eye = camera_at(p.scene.camera);
    const double length = p.s_of(p.end_y), from = 4, to = length - std::max(8.0, 2.5 * p.tip_spread_mm);
    double crest = 0.5 * length, best = 1e9;
    for (double s = from; s < to; s += 0.5) {
        const double off = std::abs(lobe_place(p, p.on_head(0, s), 0, eye).theta_h - p.alpha_deg);
        if (off < best) best = off, crest = s;
    }
    const double slope = (p.y_of(crest) - p.crown_y) / p.radius_mm;
    const double sigma =
        p.radius_mm * std::pow(1 + slope * slope, 1.5) * std::hypot(p.scene.hair.roughness_deg, p.tilt_noise_deg) * deg;
    p.region_from_mm = std::max(from, crest - feet * sigma);
    p.region_to_mm = std::min(to, crest + feet * sigma);
}

Panel panel(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card, const PanelOptions& options) {
    Rng person(person_seed), shot(shot_seed);
    Panel p;
    Scene& s = p.scene;
    s.hair_colour = options.hair_colour >= 0 ? options.hair_colour : person.index(hair_colours);
    s.hair = random_hair(person, s.hair_colour);
    s.strand_seed = person.next();
    s.hair.root_dark = 0;
    const double gloss = person.log_uniform(0.08, 0.7), rough = person.uniform(5, 10), radius = person.uniform(60, 140);
    s.hair.gloss = options.gloss >= 0 ? options.gloss : gloss;
    s.hair.glint = person.log_uniform(0.05, 0.5);
    s.hair.roughness_deg = options.roughness_deg > 0 ? options.roughness_deg : rough;
    s.hair.spread = person.uniform(0.05, 0.3);
    p.radius_mm = options.radius_mm > 0 ? options.radius_mm : radius;
    p.radius_across_mm = person.uniform(120, 400);
    p.alpha_deg = person.uniform(-10, -5);
    p.tilt_noise_deg = person.uniform(1, 4);
    p.fibre_mm = person.uniform(0.055, 0.085);
    p.wander_mm = person.uniform(0.1, 0.9);
    p.wave_mm = person.uniform(40, 110);
    p.wave_amplitude_mm = person.uniform(0, 1.2);
    p.gaps = person.uniform(0.05, 0.3);
    p.under = person.uniform(0.35, 0.8);
    p.streaks_per_cm2 = person.chance(0.2) ? person.log_uniform(8, 35) : person.log_uniform(0.5, 8);  // frizz or not
    p.streak_spread_deg = person.uniform(5, 30);
    p.region_half_mm = person.uniform(12, 20);
    if (options.region_half_mm > 0) p.region_half_mm = options.region_half_mm;
    p.half_width_mm = p.region_half_mm + person.uniform(5, 9);
    const double feet = person.uniform(2.8, 3.6);
    p.run_mm = person.log_uniform(8, 40);

    s.light = panel_light(shot, options.light);
    s.light.key_share = std::max(s.light.key_share, options.least_key_share);
    s.phone = random_phone(shot, options.phone_strength);
    if (options.light == PanelLight::dim) s.phone.exposure *= 0.45, s.phone.noise_shot *= 4, s.phone.noise_read *= 2;
    s.noise_seed = shot.next();
    // Room for the band and its feet, wherever the chair's usual lights put it (crest within 8 degrees of the middle).
    const double sigma = p.radius_mm * std::hypot(s.hair.roughness_deg, p.tilt_noise_deg) * deg;
    const double length =
        options.length_mm > 0 ? options.length_mm : clamp(6.4 * sigma + 0.28 * p.radius_mm + 16, 70, 190);
    // World extent so that the arc is `length`, crest near its middle.
    const double middle = p.radius_mm > 1e7 ? 0 : p.radius_mm * std::tan(-p.alpha_deg * deg);
    p.root_y = -0.5 * length, p.crown_y = -middle, p.end_y = 0;
    p.end_y = p.y_of(length);
    const double shift = 0.5 * (p.root_y + p.end_y);
    p.root_y -= shift, p.end_y -= shift, p.crown_y -= shift;

    Camera& c = s.camera;
    const double tall = p.end_y - p.root_y, place_shift = shot.uniform(-8, 8), gap = shot.uniform(5, 9);
    int place = static_cast<int>(options.card_place) - 1;
    const int drawn = shot.index(3);
    if (place < 0) place = drawn;
    double x0 = -p.half_width_mm - 4, x1 = p.half_width_mm + 4, y0 = p.root_y - 4, y1 = p.end_y + 6;
    s.card = card;
    s.card.turn_deg = (place < 2 ? 90 : 0) + shot.normal(0, 2);
    if (place == 0) s.card.origin_mm = {x0 - gap, place_shift - 42}, x0 -= gap + 38;
    if (place == 1) s.card.origin_mm = {x1 + gap + 30, place_shift - 42}, x1 += gap + 38;
    if (place == 2)
        s.card.origin_mm = {-42 + 0.3 * place_shift, y1 + gap}, y1 += gap + 38, x0 = std::min(x0, -50.0),
        x1 = std::max(x1, 50.0);
    if (place < 2) y0 = std::min(y0, place_shift - 50), y1 = std::max(y1, place_shift + 50);
    if (!options.card) s.card = {}, x0 = -p.half_width_mm - 2, x1 = -x0, y0 = p.root_y - 4, y1 = p.end_y + 6;
    c.px_per_mm = options.px_per_mm > 0 ? options.px_per_mm : shot.log_uniform(8, 16);
    c.tilt_deg = std::min(options.tilt_max_deg, std::abs(shot.normal(0, 0.5 * options.tilt_max_deg)));
    c.tilt_axis_deg = shot.uniform(0, 360);
    c.turn_deg = shot.normal(0, 4);
    const double more = 1.06 + 0.003 * c.tilt_deg;
    c.width = static_cast<int>(((x1 - x0) * more + 0.07 * tall) * c.px_per_mm);
    c.height = static_cast<int>((y1 - y0) * more * c.px_per_mm);
    c.focal_px = 0;
    // The phone stands about 350-500 mm away, whatever part of its picture is kept.
    c.focal_px = shot.uniform(350, 500) * c.px_per_mm;
    c.aim_mm = {0.5 * (x0 + x1), 0.5 * (y0 + y1)};
    mark_region(p, feet);
    return p;
}

}  // namespace render
