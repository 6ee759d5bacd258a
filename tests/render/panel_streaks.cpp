#include <algorithm>

#include "panel_weave.h"
#include "shade.h"

namespace render {

namespace {
constexpr double deg = 3.14159265358979 / 180;
}

std::vector<StreakRow> draw_streaks(const Panel& panel, const Projector& projector, const Weave& w, Rendered& out) {
    std::vector<StreakRow> rows(static_cast<size_t>(w.rows));
    const double length = panel.s_of(panel.end_y);
    Rng rng(panel.scene.strand_seed * 131 + 7);
    const int count = static_cast<int>(panel.streaks_per_cm2 * length * 2 * panel.half_width_mm / 100);
    const V3 eye = camera_at(panel.scene.camera);
    const HairLook& look = panel.scene.hair;
    for (int k = 0; k < count; ++k) {
        double x = rng.uniform(-panel.half_width_mm, panel.half_width_mm), s = rng.uniform(0, length);
        double turn = rng.normal(0, panel.streak_spread_deg) * deg;
        const double bend = rng.normal(0, 0.02), reach = rng.uniform(8, 30), step = 0.8 / panel.scene.camera.px_per_mm;
        const float tint = static_cast<float>(std::exp(rng.normal(0, look.spread)));
        const double lean = rng.normal(0, panel.tilt_noise_deg + 2);
        Rgb bare, lit;
        float r = 0;
        for (int i = 0; i * step < reach; ++i) {
            if (s < 0 || s > length || std::abs(x) > panel.half_width_mm) break;
            const V3 at = panel.on_head(x, s);
            if (i % 8 == 0) {
                const LobePlace place = lobe_place(panel, at, std::tan(clamp(turn, -1.4, 1.4)), eye);
                const double key = panel.scene.light.key_share;
                const Rgb albedo = (panel.albedo ? panel.albedo(s) : look.albedo) * tint;
                r = static_cast<float>(look.gloss * lobe(place.theta_h + lean - panel.alpha_deg, look.roughness_deg) *
                                       place.gain * key);
                bare = albedo * static_cast<float>(place.cos_i * key + 1 - key) + Rgb{r, r, r};
                lit = bare * static_cast<float>(light_at(panel.scene.light, at.x, at.y)) * panel.scene.light.colour;
            }
            if (std::abs(x) <= panel.region_half_mm) {
                StreakRow& row = rows[std::min(rows.size() - 1, static_cast<size_t>(s / w.row_mm + 0.5))];
                const double area = panel.fibre_mm * step;
                row.area += area, row.surface += area * r;
                row.total += area * (0.2126 * bare.r + 0.7152 * bare.g + 0.0722 * bare.b);
                row.c2 += area * std::cos(2 * turn), row.s2 += area * std::sin(2 * turn);
            }
            const V2 p = projector.px_from(at);
            // A dab of the fibre's width at each step, shared between the four nearest pixels.
            const int px = static_cast<int>(std::floor(p.x)), py = static_cast<int>(std::floor(p.y));
            const double fx = p.x - px, fy = p.y - py,
                         full = std::min(1.0, panel.fibre_mm * panel.scene.camera.px_per_mm * 0.8);
            for (int q = 0; q < 4; ++q) {
                const int X = px + (q & 1), Y = py + (q >> 1);
                if (X < 0 || Y < 0 || X >= out.width || Y >= out.height) continue;
                const float a = static_cast<float>(full * ((q & 1) ? fx : 1 - fx) * ((q >> 1) ? fy : 1 - fy));
                Rgb& v = out.light[static_cast<size_t>(Y) * out.width + X];
                v = v * (1 - a) + lit * a;
            }
            x += step * std::sin(turn), s += step * std::cos(turn), turn += bend * step;
        }
    }
    return rows;
}

}  // namespace render
