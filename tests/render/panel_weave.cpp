#include "panel_weave.h"

#include <algorithm>
#include <array>

#include "noise.h"

namespace render {

namespace {
constexpr double deg = 3.14159265358979 / 180;
uint32_t seed_of(const Panel& panel, uint32_t what) {
    return static_cast<uint32_t>(panel.scene.strand_seed) * 2654435761u + what * 40503u;
}
}  // namespace

double course(const Panel& panel, double x, double s) {
    const double locks =
        value_noise(seed_of(panel, 1), x / 7, s / 28) + 0.4 * value_noise(seed_of(panel, 2), x / 2.5, s / 14);
    return panel.wander_mm * locks +
           panel.wave_amplitude_mm *
               std::sin(6.2831853 * s / panel.wave_mm + 1.3 * value_noise(seed_of(panel, 3), x / 20, s / 60));
}

V3 camera_at(const Camera& c) {
    // The point that every ray passes: columns of the rotation, third row, times the distance.
    const double D = c.focal_px / c.px_per_mm, t = c.tilt_deg * deg, ax = std::cos(c.tilt_axis_deg * deg),
                 ay = std::sin(c.tilt_axis_deg * deg), cz = std::cos(c.turn_deg * deg), sz = std::sin(c.turn_deg * deg);
    const double r6 = -ay * std::sin(t), r7 = ax * std::sin(t), r8 = std::cos(t);  // third row of the tilt
    return {c.aim_mm.x + D * (r6 * cz + r7 * sz), c.aim_mm.y + D * (-r6 * sz + r7 * cz), D * r8};
}

double lobe(double off, double width) {
    const double q = off / width;
    return q * q > 40 ? 0 : 0.5 * 8 / width * std::exp(-0.5 * q * q);
}

LobePlace lobe_place(const Panel& panel, V3 at, double slope, V3 eye) {
    const double fall_y = -(at.y - panel.crown_y) / panel.radius_mm, fall_x = -at.x / panel.radius_across_mm;
    const V3 t = unit({slope, 1, fall_y + slope * fall_x}), v = unit(eye - at), l = unit(panel.scene.light.key);
    const double sin_i = clamp(dot(t, l), -1, 1), sin_r = clamp(dot(t, v), -1, 1);
    const double theta_i = std::asin(sin_i), theta_r = std::asin(sin_r);
    const V3 li = unit(l - t * sin_i), vr = unit(v - t * sin_r);
    LobePlace p;
    p.theta_h = 0.5 * (theta_i + theta_r) / deg;
    p.cos_i = std::cos(theta_i);
    const double cos_d = std::cos(0.5 * (theta_r - theta_i)), cos_phi = clamp(dot(li, vr), -1, 1);
    p.gain = std::sqrt(0.5 * (1 + cos_phi)) / std::max(0.25, cos_d * cos_d);
    return p;
}

Weave weave(const Panel& panel) {
    const HairLook& look = panel.scene.hair;
    const double length = panel.s_of(panel.end_y) + 3 * panel.tip_spread_mm, reach = panel.half_width_mm + 3;
    Weave w;
    w.column_mm = panel.fibre_mm / Weave::across;
    w.u0 = -reach;
    const int fibres = static_cast<int>(2 * reach / panel.fibre_mm);
    w.columns = fibres * Weave::across;
    w.rows = static_cast<int>(length / w.row_mm) + 2;
    w.sums.assign(static_cast<size_t>(w.rows) * (w.columns + 1) * 4, 0);
    for (auto* v : {&w.total, &w.surface, &w.slope2c, &w.slope2s}) v->assign(static_cast<size_t>(w.rows), 0);
    w.body.assign(static_cast<size_t>(w.rows), {});

    struct Fibre {
        float tint, lean, end;
        bool second, there;
    };
    // Two layers: what lies on top, and what is seen through its gaps.
    std::array<std::vector<Fibre>, 2> layers;
    Rng rng(panel.scene.strand_seed * 77 + 5);
    for (auto& layer : layers)
        for (int i = 0; i < fibres; ++i) {
            const double u = w.u0 + (i + 0.5) * panel.fibre_mm, edge = panel.half_width_mm - std::abs(u);
            layer.push_back({static_cast<float>(std::exp(rng.normal(0, look.spread) - 0.5 * look.spread * look.spread)),
                             static_cast<float>(rng.normal(0, panel.tilt_noise_deg * 0.8)),
                             static_cast<float>(panel.s_of(panel.end_y) + rng.normal(0, panel.tip_spread_mm)),
                             rng.chance(look.second_share), edge > 0 || rng.chance(std::exp(edge / 1.0))});
        }
    // A cylinder's shade across its width, mean 1.
    std::array<float, Weave::across> form{};
    float mean = 0;
    for (int k = 0; k < Weave::across; ++k) {
        const double c = (k + 0.5) / Weave::across * 2 - 1;
        form[static_cast<size_t>(k)] = static_cast<float>(1 - look.body + look.body * std::sqrt(1 - c * c));
        mean += form[static_cast<size_t>(k)] / Weave::across;
    }
    for (float& f : form) f /= mean;

    const V3 eye = camera_at(panel.scene.camera);
    const double key = panel.scene.light.key_share, soft = 1 - key, beta = look.roughness_deg;
    const uint32_t gap_seed = seed_of(panel, 11), lean_seed = seed_of(panel, 12);
    const float open = static_cast<float>(2 * panel.gaps - 1) * 0.62f;  // value noise is narrower than uniform
    constexpr int nodes = 9;
    for (int j = 0; j < w.rows; ++j) {
        const double s = j * w.row_mm;
        std::array<LobePlace, nodes> node;
        std::array<double, nodes> slope{};
        for (int k = 0; k < nodes; ++k) {
            const double u = -reach + 2 * reach * k / (nodes - 1);
            slope[static_cast<size_t>(k)] = (course(panel, u, s + 0.5) - course(panel, u, s - 0.5));
            node[static_cast<size_t>(k)] = lobe_place(panel, panel.on_head(u, s), 0, eye);
        }
        const Rgb here = panel.albedo ? panel.albedo(s) : look.albedo;
        const float root = static_cast<float>(1 - look.root_dark * std::exp(-s / 4));
        float* out = w.sums.data() + static_cast<size_t>(j) * (w.columns + 1) * 4;
        double Y = 0, R = 0, c2 = 0, s2 = 0, n = 0;
        Rgb body;
        for (int i = 0; i < fibres; ++i) {
            const double u = w.u0 + (i + 0.5) * panel.fibre_mm, at = (u + reach) / (2 * reach) * (nodes - 1);
            const int k = std::min(nodes - 2, static_cast<int>(at));
            const double f = at - k;
            const LobePlace &a = node[static_cast<size_t>(k)], &b = node[static_cast<size_t>(k + 1)];
            // Each fibre at its own place of the noise, or all would open and close together at the lattice's knots.
            const double fibre_phase = 0.5 + 0.5 * lattice(gap_seed, i, -77);
            const bool below = value_noise(gap_seed, i, s / panel.run_mm + fibre_phase) < open;
            const Fibre& fibre = layers[below ? 1 : 0][static_cast<size_t>(i)];
            const bool shown = fibre.there && s < fibre.end;
            const double wandering = value_noise(lean_seed + (below ? 7u : 0u), i, s / 12 + 1.7 * fibre_phase) * 1.3;
            const double off =
                a.theta_h + f * (b.theta_h - a.theta_h) + fibre.lean + wandering * 0.6 * panel.tilt_noise_deg;
            const float gain = static_cast<float>((a.gain + f * (b.gain - a.gain)) * key),
                        depth = below ? static_cast<float>(panel.under) : 1.f;
            const Rgb albedo = (fibre.second ? look.second_albedo : here) * (fibre.tint * root * depth);
            const float r = static_cast<float>(look.gloss * lobe(off - panel.alpha_deg, beta)) * gain * depth,
                        trt = static_cast<float>(2 * look.glint * lobe(off + 1.5 * panel.alpha_deg, 2 * beta)) * gain;
            auto root_of = [](float v) { return std::sqrt(std::max(v, 0.f)); };
            const Rgb coloured = albedo * Rgb{root_of(albedo.r), root_of(albedo.g), root_of(albedo.b)} * trt;
            const Rgb lit =
                albedo * static_cast<float>((a.cos_i + f * (b.cos_i - a.cos_i)) * key + soft) + coloured + Rgb{r, r, r};
            if (shown && std::abs(u) <= panel.region_half_mm) {
                Y += 0.2126 * lit.r + 0.7152 * lit.g + 0.0722 * lit.b;
                R += r;
                body = body + albedo;
                const double turn = std::atan(slope[static_cast<size_t>(k)] +
                                              f * (slope[static_cast<size_t>(k + 1)] - slope[static_cast<size_t>(k)]));
                c2 += std::cos(2 * turn), s2 += std::sin(2 * turn), n += 1;
            }
            for (int q = 0; q < Weave::across; ++q) {
                const float* last = out + static_cast<size_t>(i * Weave::across + q) * 4;
                float* next = out + static_cast<size_t>(i * Weave::across + q + 1) * 4;
                const float m = shown ? form[static_cast<size_t>(q)] : 0.f;
                next[0] = last[0] + lit.r * m, next[1] = last[1] + lit.g * m, next[2] = last[2] + lit.b * m;
                next[3] = last[3] + (shown ? 1.f : 0.f);
            }
        }
        if (n < 1) continue;
        const auto row = static_cast<size_t>(j);
        w.total[row] = Y / n, w.surface[row] = R / n, w.slope2c[row] = c2 / n, w.slope2s[row] = s2 / n;
        w.body[row] = body * static_cast<float>(1 / n);
    }
    return w;
}

}  // namespace render
