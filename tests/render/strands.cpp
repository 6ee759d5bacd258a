#include "strands.h"

namespace render {

namespace {
struct Lock {  // what the strands of one lock share
    double angle, phase, amplitude, wave, lift, coil;
};

double keep_share(const Growth& g, double x, double depth) {
    double keep = g.edge_share + (1 - g.edge_share) * smoothstep(0, g.full_depth_mm, depth);
    for (const auto& p : g.patches) {
        const double away = std::hypot(x - p.x, depth - p.y) / p.radius;
        keep *= p.keep + (1 - p.keep) * smoothstep(0.6, 1.0, away);
    }
    return keep;
}
}  // namespace

double roots_per_mm2(const Growth& growth, double x, double depth_mm) {
    return growth.density * keep_share(growth, x, depth_mm);
}

Coat grow(const Scene& scene, double margin_mm, double y_to_mm) {
    const Growth& g = scene.growth;
    Rng rng(scene.strand_seed);
    Coat coat;
    const double x0 = scene.x_from - margin_mm, x1 = scene.x_to + margin_mm, k = 3.14159265358979 / 180;
    // Locks on a grid of 2 mm, jittered: neighbours share direction, phase and lift as far as `clump` says.
    const double cell = 2.0;
    const int nx = static_cast<int>((x1 - x0) / cell) + 2, ny = static_cast<int>((y_to_mm + 2) / cell) + 2;
    std::vector<Lock> locks(static_cast<size_t>(nx) * ny);
    // Slow drift of direction over the head.
    const double drift_x = rng.normal(0, 0.5), drift_y = rng.normal(0, 0.8);
    for (int j = 0; j < ny; ++j)
        for (int i = 0; i < nx; ++i)
            locks[static_cast<size_t>(j) * nx + i] = {
                rng.normal(g.direction_deg + drift_x * (i - nx / 2) * cell + drift_y * j * cell,
                           g.direction_spread_deg * (0.3 + 0.7 * g.clump)),
                rng.uniform(0, 6.2831853),
                rng.uniform(0.5, 1.4),
                rng.uniform(0.75, 1.3),
                rng.uniform(0.3, 1.7),
                rng.uniform(0.7, 1.4)};
    const double area = (x1 - x0) * y_to_mm;
    const int roots = static_cast<int>(area * g.density);
    coat.strands.reserve(static_cast<size_t>(roots));
    const uint64_t root_seed = rng.next();
    for (int n = 0; n < roots; ++n) {
        // Each root has its own stream: denser growth adds strands and leaves the others as they are.
        rng = Rng(root_seed + static_cast<uint64_t>(n) * 0x9e3779b97f4a7c15ull);
        const double x = rng.uniform(x0, x1), depth = y_to_mm * rng.uniform();
        if (!rng.chance(keep_share(g, x, depth))) continue;
        const double y = scene.edge_y(x) + depth;
        const Lock& lock = locks[static_cast<size_t>(clamp(depth / cell + rng.uniform(-0.5, 0.5), 0, ny - 1)) * nx +
                                 static_cast<size_t>(clamp((x - x0) / cell + rng.uniform(-0.5, 0.5), 0, nx - 1))];
        const double own = 1 - g.clump;
        const bool vellus = rng.chance(g.vellus_share), brief = !vellus && rng.chance(g.short_share);
        Strand s;
        s.radius = static_cast<float>(
            0.5 * clamp(rng.normal(g.width_mean_mm, g.width_sd_mm) * (vellus ? 0.45 : 1), 0.02, 0.13));
        double length = clamp(rng.normal(g.length_mean_mm, g.length_sd_mm), 3, 90);
        if (vellus) length = rng.uniform(1.0, 6.0);
        if (brief) length = rng.uniform(0.8, 11.0);
        const HairLook& look = scene.hair;
        const Rgb base = rng.chance(look.second_share) ? look.second_albedo : look.albedo;
        const double tone = std::exp(rng.normal(0, look.spread));
        s.albedo = base * static_cast<float>(tone);
        s.albedo.b *= static_cast<float>(std::exp(rng.normal(0, 0.06)));

        double angle = (lock.angle + own * rng.normal(0, g.direction_spread_deg)) * k;  // from +y (inward) towards +x
        const double goal = angle;
        if (rng.chance(g.stray_outside)) angle += (rng.chance(0.5) ? 1 : -1) * rng.uniform(1.2, 3.0);
        const double lift = g.lift_mm * lock.lift * rng.uniform(0.4, 1.5), rise = rng.uniform(0.8, 3.5);
        const double phase = lock.phase + own * rng.uniform(0, 6.2831853),
                     amplitude = g.wave_amplitude_mm * lock.amplitude;
        const double wave = g.wave_mm * lock.wave, coil_r = 0.5 * g.coil_mm * lock.coil * std::exp(rng.normal(0, 0.1));
        const double hand = rng.chance(0.5) ? 1 : -1, pitch_slope = rng.uniform(0.35, 0.9);
        double bend = rng.normal(0, g.wander);
        const double step = g.shape == Shape::coiled ? clamp(coil_r * 0.12, 0.1, 0.25) : 0.25;
        s.first = static_cast<int>(coat.points.size());
        double cx = x, cy = y;
        for (double t = 0; t <= length; t += step) {
            double px = cx, py = cy, pz = lift * (1 - std::exp(-t / rise));
            if (g.shape == Shape::wavy) {
                const double w = amplitude * smoothstep(0, 0.5 * wave, t) * std::sin(phase + 6.2831853 * t / wave);
                px += w * std::cos(angle);
                py -= w * std::sin(angle);
                pz += 0.15 * amplitude * smoothstep(0, wave, t) * (1 + std::sin(1.7 * phase + 6.2831853 * t / wave));
            } else if (g.shape == Shape::coiled) {
                const double q = phase + hand * t / coil_r, grow_in = smoothstep(0, 1.5 * coil_r, t),
                             r = coil_r * grow_in;
                px += r * (std::cos(q) - std::cos(phase) * (1 - grow_in));
                py += r * (std::sin(q) - std::sin(phase) * (1 - grow_in));
                pz += 0.35 * r * (1 + std::sin(q + 1.0)) * 0.5;
            }
            if (py > scene.edge_y(px) + y_to_mm + 6 || px < x0 - 8 || px > x1 + 8) break;
            coat.points.push_back({px, py, pz + scene.camera.scalp_z(py) + 0.01});
            const double pace = g.shape == Shape::coiled ? step * pitch_slope * 0.5 : step;
            cx += pace * std::sin(angle);
            cy += pace * std::cos(angle);
            bend += rng.normal(0, g.wander * 0.15) - 0.02 * bend;
            angle += bend * pace + (goal - angle) * 0.08 * pace;
        }
        s.count = static_cast<int>(coat.points.size()) - s.first;
        if (s.count < 2) {
            coat.points.resize(static_cast<size_t>(s.first));
            continue;
        }
        coat.strands.push_back(s);
    }
    return coat;
}

}  // namespace render
