// Loose strands: what a hair is, and how it falls on the sheet.
#include <algorithm>

#include "sheet.h"

namespace render {

std::vector<LooseStrand> loose_strands(Rng& rng, const HairLook& hair, const LooseOptions& options) {
    std::vector<LooseStrand> out;
    const int broken = static_cast<int>(std::lround(options.short_share * options.count));
    const double wave = options.curl_mm > 0 ? options.curl_mm : rng.log_uniform(10, 60),
                 coil = options.curl_mm > 0 ? options.curl_mm : rng.log_uniform(4, 20), steep = rng.uniform(0.03, 0.12);
    for (int i = 0; i < options.count; ++i) {
        LooseStrand s;
        s.length_mm = i < broken ? rng.uniform(5.5, 49)
                                 : clamp(options.length_mm * std::exp(rng.normal(0, options.spread)), 51, 350);
        s.radius_mm = 0.5 * clamp(rng.normal(options.width_mean_mm, options.width_sd_mm), 0.035, 0.12);
        const Rgb base = rng.chance(hair.second_share) ? hair.second_albedo : hair.albedo;
        s.albedo = base * static_cast<float>(std::exp(rng.normal(0, hair.spread)));
        s.albedo.b *= static_cast<float>(std::exp(rng.normal(0, 0.06)));
        s.shape = options.shape;
        s.wave_mm = wave * std::exp(rng.normal(0, 0.15));
        s.wave_amplitude_mm = s.wave_mm * steep * std::exp(rng.normal(0, 0.25));
        s.coil_mm = coil * std::exp(rng.normal(0, 0.12));
        s.coil_pitch_mm = s.coil_mm * rng.uniform(0.35, 1.1);
        s.wander = rng.log_uniform(0.004, 0.02);
        out.push_back(s);
    }
    return out;
}

namespace {
// The strand's path from a start, in the plane, until its length is used up. Its axis turns with a slow random
// curvature and back into the rectangle near the rim; waves and coils are laid over the axis.
// pushed: share of it that was pushed back at the rim, for hair does not run along one.
std::vector<V2> path_of(Rng& rng, const LooseStrand& s, const Lie& lie, double& pushed) {
    const bool coiled = s.shape == Shape::coiled, wavy = s.shape == Shape::wavy;
    const double reach = coiled ? 0.5 * s.coil_mm : wavy ? s.wave_amplitude_mm : 0;
    // Each strand keeps its own distance to the rim, or they would bundle there.
    const double wide = lie.to.x - lie.from.x - 2 * reach, high = lie.to.y - lie.from.y - 2 * reach,
                 own = reach + rng.uniform(0, 0.2) * std::min(wide, high), ahead = rng.uniform(20, 60);
    const V2 from{lie.from.x + own, lie.from.y + own}, to{lie.to.x - own, lie.to.y - own};
    double x = rng.uniform(from.x, to.x), y = rng.uniform(from.y, to.y), angle = rng.uniform(0, 6.2831853),
           bend = rng.normal(0, s.wander);
    const double phase = rng.uniform(0, 6.2831853), hand = rng.chance(0.5) ? 1 : -1;
    // Steps along the axis that keep the path's own step below 0.4 mm.
    const double pace = coiled ? std::min(0.3, 0.3 * s.coil_pitch_mm / (3.1416 * s.coil_mm)) : wavy ? 0.25 : 0.38;
    const double turn = coiled ? 6.2831853 / s.coil_pitch_mm : 6.2831853 / s.wave_mm, keep = std::exp(-pace / 35),
                 kick = s.wander * std::sqrt(1 - keep * keep);
    std::vector<V2> path;
    double left = s.length_mm, gone = 0;
    pushed = 0;
    for (;;) {
        double across = 0, forward = 0;
        if (wavy) across = s.wave_amplitude_mm * std::sin(phase + turn * gone);
        if (coiled) {
            across = 0.5 * s.coil_mm * hand * std::sin(phase + turn * gone);
            forward = 0.5 * s.coil_mm * std::cos(phase + turn * gone);
        }
        const V2 p{x + forward * std::cos(angle) - across * std::sin(angle),
                   y + forward * std::sin(angle) + across * std::cos(angle)};
        if (!path.empty()) {
            const double step = std::hypot(p.x - path.back().x, p.y - path.back().y);
            if (step >= left) {
                path.push_back({path.back().x + (p.x - path.back().x) * left / step,
                                path.back().y + (p.y - path.back().y) * left / step});
                break;
            }
            left -= step;
        }
        path.push_back(p);
        // Near the rim the hair bends back: harder the nearer, with a radius of 9 mm at least.
        double push = 0;
        const double ax = x + ahead * std::cos(angle), ay = y + ahead * std::sin(angle);
        const double out = std::max({from.x - ax, ax - to.x, from.y - ay, ay - to.y, 0.0});
        if (out > 0) {
            const double cx = 0.5 * (from.x + to.x) - x, cy = 0.5 * (from.y + to.y) - y,
                         side = std::cos(angle) * cy - std::sin(angle) * cx;
            push = (side >= 0 ? 1 : -1) * std::min(0.11, 2.2 / ahead * out / ahead + 0.005);
            pushed += pace / s.length_mm;
        }
        angle += pace * (bend + push);
        bend = bend * keep + rng.normal(0, kick);
        x += pace * std::cos(angle), y += pace * std::sin(angle);
        gone += pace;
    }
    return path;
}

bool inside(const std::vector<V2>& path, const Lie& lie) {
    return std::all_of(path.begin(), path.end(), [&](V2 p) {
        return p.x >= lie.from.x && p.y >= lie.from.y && p.x <= lie.to.x && p.y <= lie.to.y;
    });
}
}  // namespace

Coat throw_down(Rng& rng, const std::vector<LooseStrand>& strands, const Lie& lie) {
    Coat coat;
    const double cell = lie.apart_mm > 0 ? lie.apart_mm / 2 : 1;
    const int nx = static_cast<int>((lie.to.x - lie.from.x) / cell) + 2,
              ny = static_cast<int>((lie.to.y - lie.from.y) / cell) + 2;
    std::vector<char> taken(lie.apart_mm > 0 ? static_cast<size_t>(nx) * static_cast<size_t>(ny) : 0, 0);
    auto for_cells = [&](V2 p, int around, auto&& act) {
        const int i = static_cast<int>((p.x - lie.from.x) / cell), j = static_cast<int>((p.y - lie.from.y) / cell);
        for (int b = std::max(0, j - around); b <= std::min(ny - 1, j + around); ++b)
            for (int a = std::max(0, i - around); a <= std::min(nx - 1, i + around); ++a)
                act(taken[static_cast<size_t>(b) * static_cast<size_t>(nx) + static_cast<size_t>(a)]);
    };
    const double k = 6.2831853;
    for (const LooseStrand& s : strands) {
        std::vector<V2> best;
        double least = 1e9;
        for (int attempt = 0; attempt < (lie.apart_mm > 0 ? 400 : 60); ++attempt) {
            double pushed = 0;
            const std::vector<V2> path = path_of(rng, s, lie, pushed);
            double badness = (inside(path, lie) ? 0 : 1e6) + (pushed > 0.15 ? pushed : 0);
            if (lie.apart_mm > 0)
                for (const V2 p : path) for_cells(p, 0, [&](char& t) { badness += t; });
            if (badness < least) least = badness, best = path;
            if (least <= 0) break;
        }
        if (lie.apart_mm > 0)
            for (const V2 p : best) for_cells(p, 2, [](char& t) { t = 1; });
        Strand strand;
        strand.first = static_cast<int>(coat.points.size());
        strand.count = static_cast<int>(best.size());
        strand.radius = static_cast<float>(s.radius_mm);
        strand.albedo = s.albedo;
        // Height: a slow wave above the paper; curly hair stands off more.
        const double curl = s.shape == Shape::coiled ? 0.12 * s.coil_mm
                            : s.shape == Shape::wavy ? 0.2 * s.wave_amplitude_mm
                                                     : 0;
        const double high = lie.lift_mm * rng.log_uniform(0.4, 2.5) + 0.3 * curl, long_mm = rng.uniform(25, 90),
                     phase = rng.uniform(0, k), second = rng.uniform(0, k);
        double along = 0;
        for (size_t i = 0; i < best.size(); ++i) {
            if (i > 0) along += std::hypot(best[i].x - best[i - 1].x, best[i].y - best[i - 1].y);
            const double up = 0.5 * (1 + std::sin(phase + k * along / long_mm)) *
                              (1 + 0.6 * std::sin(second + k * along / (0.37 * long_mm)));
            coat.points.push_back({best[i].x, best[i].y, s.radius_mm + high * up});
        }
        coat.strands.push_back(strand);
    }
    return coat;
}

}  // namespace render
