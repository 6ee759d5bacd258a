#include "scene.h"

namespace render {

const char* const skin_names[skin_classes] = {"very light", "light", "intermediate", "tan", "brown", "dark"};
const char* const hair_names[hair_colours] = {"black",  "dark brown", "medium brown",   "red",
                                              "blonde", "grey",       "salt and pepper"};

Rgb linear_from_lab(double L, double a, double b) {
    const double fy = (L + 16) / 116, fx = fy + a / 500, fz = fy - b / 200;
    auto back = [](double f) { return f > 6.0 / 29 ? f * f * f : (116 * f - 16) / (24389.0 / 27); };
    const double X = 0.95047 * back(fx), Y = back(fy), Z = 1.08883 * back(fz);
    auto keep = [](double v) { return static_cast<float>(clamp(v, 0.002, 1)); };
    return {keep(3.2404542 * X - 1.5371385 * Y - 0.4985314 * Z), keep(-0.969266 * X + 1.8760108 * Y + 0.041556 * Z),
            keep(0.0556434 * X - 0.2040259 * Y + 1.0572252 * Z)};
}

namespace {
// Middle of each ITA class: L* from ITA = atan((L - 50) / b) with b about 15-19 (Chardon 1991 for the limits; the b*
// values are from memory of published skin surveys).
struct SkinRange {
    double ita_low, ita_high, b_low, b_high, a_low, a_high;
};
constexpr SkinRange skin_ranges[skin_classes] = {{56, 68, 9, 14, 6, 11},  {42, 54, 12, 17, 7, 12},
                                                 {29, 40, 14, 19, 8, 13}, {11, 27, 15, 20, 9, 14},
                                                 {-28, 8, 13, 19, 9, 13}, {-62, -32, 7, 14, 6, 11}};
struct HairRange {
    double L_low, L_high, a_low, a_high, b_low, b_high;
};
constexpr HairRange hair_ranges[hair_colours] = {
    {6, 13, 0, 2, -1, 2},   {14, 22, 2, 7, 3, 8},  {25, 38, 5, 11, 8, 17}, {28, 44, 15, 27, 18, 32},
    {55, 74, 1, 9, 16, 32}, {62, 84, -1, 2, 0, 9}, {12, 25, 0, 4, 0, 6}};
}  // namespace

Skin random_skin(Rng& rng, int skin_class) {
    const SkinRange& range = skin_ranges[skin_class];
    const double ita = rng.uniform(range.ita_low, range.ita_high) * 3.14159265 / 180,
                 b = rng.uniform(range.b_low, range.b_high);
    Skin skin;
    skin.albedo = linear_from_lab(50 + b * std::tan(ita), rng.uniform(range.a_low, range.a_high), b);
    skin.blotch = rng.uniform(0.03, 0.16);
    skin.redness = rng.uniform(0.0, 0.15);
    skin.pores = rng.uniform(0.0, 0.5);
    skin.grain = rng.log_uniform(0.004, 0.07);
    skin.sheen = rng.chance(0.3) ? rng.uniform(0.1, 0.5) : rng.uniform(0.0, 0.12);
    skin.sheen_power = rng.log_uniform(5, 40);
    skin.freckles = rng.chance(0.25) ? rng.uniform(0.0, 0.06) : 0;
    skin.stubble = rng.chance(0.25) ? rng.uniform(0.05, 0.8) : 0;
    const double tint = rng.normal(0, 0.06);
    skin.scalp_tint = {static_cast<float>(1 + tint + rng.normal(0, 0.02)), static_cast<float>(1 + tint),
                       static_cast<float>(1 + tint + rng.normal(0, 0.03))};
    skin.seed = static_cast<uint32_t>(rng.next());
    return skin;
}

HairLook random_hair(Rng& rng, int colour) {
    auto draw = [&](const HairRange& r) {
        return linear_from_lab(rng.uniform(r.L_low, r.L_high), rng.uniform(r.a_low, r.a_high),
                               rng.uniform(r.b_low, r.b_high));
    };
    HairLook hair;
    hair.albedo = draw(hair_ranges[colour]);
    hair.second_albedo = hair.albedo;
    if (colour == 5) {
        hair.second_albedo = draw(hair_ranges[6]);
        hair.second_share = rng.uniform(0, 0.25);
    } else if (colour == salt_and_pepper) {
        hair.second_albedo = draw(hair_ranges[5]);
        hair.second_share = rng.uniform(0.25, 0.7);
    } else if (rng.chance(0.15)) {
        hair.second_albedo = draw(hair_ranges[rng.index(5)]);
        hair.second_share = rng.uniform(0, 0.3);
    }
    hair.spread = rng.uniform(0.05, 0.35);
    hair.root_dark = rng.chance(0.3) ? rng.uniform(0, 0.6) : 0;
    hair.gloss = rng.log_uniform(0.03, 0.8);
    hair.glint = rng.log_uniform(0.05, 0.8);
    hair.roughness_deg = rng.uniform(5, 16);
    hair.body = rng.uniform(0.2, 0.9);
    return hair;
}

Growth random_growth(Rng& rng, double x_from, double x_to) {
    Growth g;
    g.density = rng.chance(0.15) ? rng.log_uniform(0.03, 0.4) : rng.log_uniform(0.4, 2.8);
    g.edge_share = rng.chance(0.35) ? rng.uniform(0.5, 1) : rng.uniform(0.02, 0.5);
    g.full_depth_mm = rng.log_uniform(1.5, 20);
    g.length_mean_mm = rng.log_uniform(12, 70);
    g.length_sd_mm = g.length_mean_mm * rng.uniform(0.15, 0.5);
    g.short_share = rng.chance(0.4) ? rng.uniform(0, 0.6) : rng.uniform(0, 0.1);
    g.vellus_share = rng.chance(0.5) ? rng.uniform(0, 0.3) : 0;
    g.width_mean_mm = rng.uniform(0.05, 0.09);
    g.width_sd_mm = rng.uniform(0.005, 0.018);
    g.direction_deg = rng.chance(0.25) ? rng.uniform(-85, 85) : rng.normal(0, 28);
    g.direction_spread_deg = rng.chance(0.4) ? rng.uniform(3, 8) : rng.uniform(5, 28);
    g.wander = rng.log_uniform(0.005, 0.08);
    g.clump = rng.uniform(0, 0.95);
    g.lift_mm = rng.log_uniform(0.1, 1.6);
    g.stray_outside = rng.chance(0.4) ? rng.uniform(0, 0.15) : 0;
    const double shape = rng.uniform();
    g.shape = shape < 0.4 ? Shape::straight : shape < 0.7 ? Shape::wavy : Shape::coiled;
    g.wave_mm = rng.log_uniform(6, 35);
    g.wave_amplitude_mm = g.wave_mm * rng.uniform(0.03, 0.16);
    g.coil_mm = rng.log_uniform(2.5, 14);
    const int spots = rng.chance(0.5) ? rng.index(4) : 0;
    for (int i = 0; i < spots; ++i)
        g.patches.push_back({rng.uniform(x_from, x_to), rng.uniform(0, 12), rng.uniform(3, 14), rng.uniform(0, 0.4)});
    return g;
}

Lighting random_lighting(Rng& rng) {
    Lighting light;
    const double high = rng.uniform(25, 80) * 3.14159265 / 180, around = rng.uniform(0, 6.2831853);
    light.key = {std::cos(high) * std::cos(around), std::cos(high) * std::sin(around), std::sin(high)};
    light.key_share = rng.uniform(0.15, 0.9);
    light.penumbra = rng.log_uniform(0.05, 1.0);
    light.gradient_x = rng.normal(0, 0.0025);
    light.gradient_y = rng.normal(0, 0.0025);
    light.shadow_edge = rng.chance(0.12);
    light.shadow_angle = rng.uniform(0, 6.2831853);
    light.shadow_soft_mm = rng.log_uniform(4, 25);
    light.shadow_depth = rng.uniform(0.2, 0.6);
    const double warm = rng.normal(0, 0.12);
    light.colour = {static_cast<float>(1 + warm), static_cast<float>(1 + rng.normal(0, 0.03)),
                    static_cast<float>(1 - warm)};
    return light;
}

Phone random_phone(Rng& rng, double strength) {
    Phone phone;
    phone.exposure = rng.uniform(0.6, 1.0);
    auto gain = [&] { return static_cast<float>(std::exp(rng.normal(0, 0.08 * strength))); };
    phone.gains = {gain(), 1.f, gain()};
    phone.blur_px = rng.uniform(0.35, 0.6 + 0.8 * strength);
    phone.noise_shot = rng.log_uniform(2e-5, 2e-4 + 1.5e-3 * strength);
    phone.noise_read = rng.log_uniform(4e-4, 1e-3 + 5e-3 * strength);
    phone.mosaic = rng.chance(0.6);
    phone.denoise = rng.chance(0.6) ? rng.uniform(0, 0.9) : 0;
    phone.sharpen = rng.chance(0.7) ? rng.uniform(0, 1.1 * strength) : 0;
    phone.lift = rng.chance(0.7) ? rng.uniform(0, 0.08 * strength) : 0;
    phone.curve = rng.chance(0.8) ? rng.uniform(0, 0.6 * strength) : 0;
    phone.gamma = std::exp(rng.normal(0, 0.08 * strength));
    phone.display_p3 = rng.chance(0.4);
    return phone;
}

// ---- camera
// ----------------------------------------------------------------------------------------------------------
Projector::Projector(const Camera& camera) : c_(camera), r_{} {
    // Turn in the plane, then tilt about an axis in the plane (Rodrigues).
    const double k = 3.14159265358979 / 180, t = c_.tilt_deg * k;
    const double ax = std::cos(c_.tilt_axis_deg * k), ay = std::sin(c_.tilt_axis_deg * k);
    const double ct = std::cos(t), st = std::sin(t), cz = std::cos(c_.turn_deg * k), sz = std::sin(c_.turn_deg * k);
    const double tilt[9] = {ct + ax * ax * (1 - ct),
                            ax * ay * (1 - ct),
                            ay * st,
                            ax * ay * (1 - ct),
                            ct + ay * ay * (1 - ct),
                            -ax * st,
                            -ay * st,
                            ax * st,
                            ct};
    const double turn[9] = {cz, -sz, 0, sz, cz, 0, 0, 0, 1};
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j)
            for (int q = 0; q < 3; ++q) r_[3 * i + j] += tilt[3 * i + q] * turn[3 * q + j];
}

V2 Projector::px_from(V3 w) const {
    const V3 p{w.x - c_.aim_mm.x, w.y - c_.aim_mm.y, w.z};
    const double X = r_[0] * p.x + r_[1] * p.y + r_[2] * p.z, Y = r_[3] * p.x + r_[4] * p.y + r_[5] * p.z,
                 Z = r_[6] * p.x + r_[7] * p.y + r_[8] * p.z, depth = c_.focal_px / c_.px_per_mm - Z;
    return {c_.width / 2.0 - 0.5 + c_.focal_px * X / depth, c_.height / 2.0 - 0.5 + c_.focal_px * Y / depth};
}

V2 Projector::plane_from_px(V2 px) const {
    const double u = (px.x - c_.width / 2.0 + 0.5) / c_.focal_px, v = (px.y - c_.height / 2.0 + 0.5) / c_.focal_px;
    const double D = c_.focal_px / c_.px_per_mm;
    // X = u (D - Z), Y = v (D - Z) with X, Y, Z linear in (x, y).
    const double a = r_[0] + u * r_[6], b = r_[1] + u * r_[7], c = r_[3] + v * r_[6], d = r_[4] + v * r_[7],
                 det = a * d - b * c;
    return {c_.aim_mm.x + (d * u * D - b * v * D) / det, c_.aim_mm.y + (a * v * D - c * u * D) / det};
}

V2 Projector::scalp_from_px(V2 px) const {
    // Along the ray from the camera through the plane's point, until it meets the surface below.
    const double depth = c_.focal_px / c_.px_per_mm;
    const V3 eye{c_.aim_mm.x + r_[6] * depth, c_.aim_mm.y + r_[7] * depth, r_[8] * depth};
    const V2 on_plane = plane_from_px(px);
    V2 at = on_plane;
    for (int round = 0; round < 8; ++round) {
        const double t = c_.scalp_z(at.y) / eye.z;
        at = {on_plane.x + (eye.x - on_plane.x) * t, on_plane.y + (eye.y - on_plane.y) * t};
    }
    return at;
}

double Camera::scalp_z(double y) const {
    const double t = y - bulge_y_mm;
    return -t * t / (2 * bulge_radius_mm);
}

}  // namespace render
