#include "truth.h"

#include <algorithm>

namespace render {

namespace {
constexpr double step = 0.05;  // mm, along and in depth

struct Line {
    std::vector<V2> at, inward;
};

Line edge_in_plane(const Scene& scene, const Projector& projector, std::vector<V2>& px) {
    std::vector<V2> coarse;
    for (double x = scene.x_from; x <= scene.x_to + 1e-9; x += 0.25) {
        const double y = scene.edge_y(x);
        const V2 p = projector.px_from({x, y, scene.camera.scalp_z(y)});
        coarse.push_back(projector.plane_from_px(p));
        if (std::fmod(x - scene.x_from + 1e-9, 1.0) < 0.01) px.push_back(p);
    }
    Line line;
    double left = 0;
    for (size_t i = 0; i + 1 < coarse.size(); ++i) {
        const double dx = coarse[i + 1].x - coarse[i].x, dy = coarse[i + 1].y - coarse[i].y,
                     length = std::hypot(dx, dy);
        for (; left < length; left += step)
            line.at.push_back({coarse[i].x + dx * left / length, coarse[i].y + dy * left / length});
        left -= length;
    }
    const int n = static_cast<int>(line.at.size()), reach = static_cast<int>(3 / step);
    for (int i = 0; i < n; ++i) {
        const V2 a = line.at[static_cast<size_t>(std::max(0, i - reach))],
                 b = line.at[static_cast<size_t>(std::min(n - 1, i + reach))];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        line.inward.push_back({-(b.y - a.y) / length, (b.x - a.x) / length});
    }
    return line;
}
}  // namespace

Truth truth_of(const Scene& scene, const Rendered& r) {
    const Projector projector(scene.camera);
    Truth t;
    const Line line = edge_in_plane(scene, projector, t.edge_px);
    const int n = static_cast<int>(line.at.size()), depth_n = static_cast<int>(20 / step);
    t.length_mm = n * step;
    // At the middle of the card's face, as the mean of the two axes of the local map; without a card at the aim.
    V2 middle = scene.camera.aim_mm;
    if (scene.card.present()) {
        const double k = scene.card.turn_deg * 3.14159265358979 / 180;
        middle = {scene.card.origin_mm.x + 42 * std::cos(k) - 15 * std::sin(k),
                  scene.card.origin_mm.y + 42 * std::sin(k) + 15 * std::cos(k)};
    }
    const V2 here = projector.px_from({middle.x, middle.y, 0}),
             right = projector.px_from({middle.x + 0.1, middle.y, 0}),
             down = projector.px_from({middle.x, middle.y + 0.1, 0});
    t.px_per_mm =
        10 * std::sqrt(std::abs((right.x - here.x) * (down.y - here.y) - (right.y - here.y) * (down.x - here.x)));
    t.tilt_deg = scene.camera.tilt_deg;
    const V2 deep{line.at[static_cast<size_t>(n / 2)].x + 8 * line.inward[static_cast<size_t>(n / 2)].x,
                  line.at[static_cast<size_t>(n / 2)].y + 8 * line.inward[static_cast<size_t>(n / 2)].y};
    t.hair_side_px = projector.px_from({deep.x, deep.y, 0});
    std::vector<double> row(static_cast<size_t>(depth_n)), column(static_cast<size_t>(n));
    for (int i = 0; i < n; ++i)
        for (int j = 0; j < depth_n; ++j) {
            const V2 a = line.at[static_cast<size_t>(i)], d = line.inward[static_cast<size_t>(i)];
            const double depth = (j + 0.5) * step;
            const V2 p = projector.px_from({a.x + depth * d.x, a.y + depth * d.y, 0});
            const int ix = static_cast<int>(clamp(std::floor(p.x), 0, r.width - 2)),
                      iy = static_cast<int>(clamp(std::floor(p.y), 0, r.height - 2));
            const double tx = clamp(p.x - ix, 0, 1), ty = clamp(p.y - iy, 0, 1);
            const float* c = r.cover.data() + static_cast<size_t>(iy) * r.width + ix;
            const double v =
                (c[0] * (1 - tx) + c[1] * tx) * (1 - ty) + (c[r.width] * (1 - tx) + c[r.width + 1] * tx) * ty;
            row[static_cast<size_t>(j)] += v / n;
            if (depth < 10) column[static_cast<size_t>(i)] += v / (10 / step);
        }
    auto mean_rows = [&](double from, double to) {
        double sum = 0;
        const int a = static_cast<int>(std::lround(from / step)), b = static_cast<int>(std::lround(to / step));
        for (int j = a; j < b; ++j) sum += row[static_cast<size_t>(j)];
        return sum / (b - a);
    };
    t.edge_coverage = 100 * mean_rows(0, 10);
    t.line_cover = mean_rows(4.75, 5.25);
    t.full_cover = mean_rows(15, 20);
    for (double d = 0; d + 0.25 <= 20; d += 0.25) t.by_depth.push_back(mean_rows(d, d + 0.25));
    if (t.full_cover >= 0.05)
        for (double d = 0; d < 20 && t.fill_depth < 0; d += step)
            if (mean_rows(std::max(0.0, d - 0.35), std::min(20.0, d + 0.4)) >= t.full_cover / 2) t.fill_depth = d;
    const int half = static_cast<int>(0.5 / step);  // columns 1 mm wide
    for (int i = 0; i < n; ++i) {
        double sum = 0;
        int count = 0;
        for (int k = std::max(0, i - half); k <= std::min(n - 1, i + half); ++k)
            sum += column[static_cast<size_t>(k)], ++count;
        if (sum / count < 0.20) t.bare_length += step;
    }
    // Strand pieces in the band's coordinates.
    auto place = [&](V2 p, double& s, double& d) {
        int i = static_cast<int>(
            clamp((p.x - line.at.front().x) / (line.at.back().x - line.at.front().x) * (n - 1), 0, n - 1));
        double along = 0;
        for (int pass = 0; pass < 3; ++pass) {
            const V2 a = line.at[static_cast<size_t>(i)], q = line.inward[static_cast<size_t>(i)];
            along = (p.x - a.x) * q.y - (p.y - a.y) * q.x;
            d = (p.x - a.x) * q.x + (p.y - a.y) * q.y;
            s = i * step + along;
            i = static_cast<int>(clamp(std::lround(i + along / step), 0, n - 1));
        }
    };
    double crossings = 0, length = 0;
    for (const VisiblePiece& piece : r.pieces) {
        double s0, d0, s1, d1;
        place(piece.from, s0, d0);
        place(piece.to, s1, d1);
        const double s = 0.5 * (s0 + s1), d = 0.5 * (d0 + d1);
        if (s < 0 || s > t.length_mm) continue;
        if ((d0 < 5) != (d1 < 5)) crossings += 1;
        if (d > 0 && d < 10) length += std::hypot(s1 - s0, d1 - d0);
    }
    t.edge_strands = 10 * crossings / t.length_mm;
    t.length_density = length / (10 * t.length_mm);
    return t;
}

}  // namespace render
