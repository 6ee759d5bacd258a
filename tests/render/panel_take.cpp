#include <algorithm>

#include "colour/colour.h"
#include "noise.h"
#include "panel_weave.h"
#include "shade.h"

namespace render {

namespace {
constexpr double deg = 3.14159265358979 / 180;

// Share of the card in a pixel at plane point (x, y) and its reflectance there (bilinear, a pixel's width at its edge).
double card_at(const CardPicture& card, double x, double y, double px_mm, double& face) {
    const double k = card.turn_deg * deg, dx = x - card.origin_mm.x, dy = y - card.origin_mm.y;
    const double u = dx * std::cos(k) + dy * std::sin(k), v = -dx * std::sin(k) + dy * std::cos(k), s = card.px_per_mm;
    const double inside = std::min(std::min(u, card.width / s - u), std::min(v, card.height / s - v));
    if (inside < -0.5 * px_mm) return 0;
    double sum = 0;
    for (int j = -1; j <= 1; ++j)
        for (int i = -1; i <= 1; ++i) {
            const double a = clamp((u + i * px_mm / 3) * s - 0.5, 0, card.width - 1.001),
                         b = clamp((v + j * px_mm / 3) * s - 0.5, 0, card.height - 1.001);
            const int ia = static_cast<int>(a), ib = static_cast<int>(b);
            const double ta = a - ia, tb = b - ib;
            const float* p = card.reflectance.data() + static_cast<size_t>(ib) * card.width + ia;
            sum += (p[0] * (1 - ta) + p[1] * ta) * (1 - tb) + (p[card.width] * (1 - ta) + p[card.width + 1] * ta) * tb;
        }
    face = sum / 9;
    return clamp(inside / px_mm + 0.5, 0, 1);
}

// Where each pixel looks, worked out every `step` pixels and interpolated.
struct Lattice {
    static constexpr int step = 8;
    struct Node {
        float x, y, u, s;  // plane point; fibre coordinate and arc length on the head
    };
    int nx = 0, ny = 0;
    std::vector<Node> nodes;

    Lattice(const Panel& panel, const Projector& projector) {
        const Camera& c = panel.scene.camera;
        const V3 eye = camera_at(c);
        nx = c.width / step + 2, ny = c.height / step + 2;
        for (int j = 0; j < ny; ++j)
            for (int i = 0; i < nx; ++i) {
                const V2 p = projector.plane_from_px({static_cast<double>(i * step), static_cast<double>(j * step)});
                V3 at{p.x, p.y, 0};
                for (int k = 0; k < 6; ++k) {
                    const double t = panel.z(at.x, at.y) / eye.z;
                    at = {p.x + t * (eye.x - p.x), p.y + t * (eye.y - p.y), t * eye.z};
                }
                const double s = panel.s_of(at.y);
                double u = at.x - course(panel, at.x, s);
                u = at.x - course(panel, u, s);
                nodes.push_back(
                    {static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(u), static_cast<float>(s)});
            }
    }
};

PanelTruth truth_of(const Panel& panel, const Projector& projector, const Weave& w,
                    const std::vector<StreakRow>& streaks) {
    PanelTruth t;
    const auto middle_px = [&](double s) { return projector.px_from(panel.on_head(0, s)); };
    const V2 root = projector.plane_from_px(middle_px(0));
    const double length = panel.s_of(panel.end_y);
    // A row of the truth holds several of the weave; streaks cover what lies below them.
    const auto each = static_cast<size_t>(std::lround(t.row_mm / w.row_mm));
    const double room = t.row_mm * 2 * panel.region_half_mm;
    const auto streaks_at = [&](size_t row) {
        StreakRow sum;
        for (size_t k = row; k < std::min(row + each, streaks.size()); ++k) {
            sum.area += streaks[k].area, sum.total += streaks[k].total, sum.surface += streaks[k].surface;
            sum.c2 += streaks[k].c2, sum.s2 += streaks[k].s2;
        }
        return sum;
    };
    double distance = 0;
    V2 before = root;
    for (double s = 0; s <= length; s += t.row_mm) {
        const V2 px = middle_px(s), here = projector.plane_from_px(px);
        distance += std::hypot(here.x - before.x, here.y - before.y);
        before = here;
        const auto row = static_cast<size_t>(std::lround(s / w.row_mm));
        t.s_mm.push_back(s);
        t.plane_mm.push_back(distance);
        t.at_px.push_back(px);
        t.body.push_back(w.body[row]);
        const auto lab = kempt::colour::lab_from_linear_srgb({w.body[row].r, w.body[row].g, w.body[row].b});
        t.body_lab.push_back({lab.L, lab.a, lab.b});
        const StreakRow over = streaks_at(row);
        const double bare = std::max(0.0, 1 - over.area / room);
        t.total.push_back(w.total[row] * bare + over.total / room);
        t.surface.push_back(w.surface[row] * bare + over.surface / room);
    }
    t.gloss = panel.scene.hair.gloss;
    size_t from = 0, to = 0, crest = 0;
    for (size_t i = 0; i < t.s_mm.size(); ++i) {
        if (t.s_mm[i] < panel.region_from_mm) from = i + 1;
        if (t.s_mm[i] <= panel.region_to_mm) to = i;
    }
    crest = from;
    double all = 0, surface = 0, c2 = 0, s2 = 0;
    for (size_t i = from; i <= to; ++i) {
        if (t.surface[i] > t.surface[crest]) crest = i;
        const auto row = static_cast<size_t>(std::lround(t.s_mm[i] / w.row_mm));
        const StreakRow over = streaks_at(row);
        const double bare = std::max(0.0, room - over.area);
        c2 += w.slope2c[row] * bare + over.c2, s2 += w.slope2s[row] * bare + over.s2;
        if (i == from) continue;
        const double d = t.plane_mm[i] - t.plane_mm[i - 1];
        all += 0.5 * d * (t.total[i] + t.total[i - 1]), surface += 0.5 * d * (t.surface[i] + t.surface[i - 1]);
    }
    t.surface_share = all > 0 ? surface / all : 0;
    t.alignment = std::hypot(c2, s2) / (room * static_cast<double>(to - from + 1));
    t.crest_mm = t.plane_mm[crest];
    t.crest_px = t.at_px[crest];
    const double half = 0.5 * t.surface[crest];
    size_t a = crest, b = crest;
    while (a > 0 && t.surface[a] > half) --a;
    while (b + 1 < t.surface.size() && t.surface[b] > half) ++b;
    if (t.surface[a] <= half && t.surface[b] <= half && crest > a && b > crest) {
        auto cross = [&](size_t out, size_t in) {
            const double k = (half - t.surface[out]) / (t.surface[in] - t.surface[out]);
            return t.plane_mm[out] + k * (t.plane_mm[in] - t.plane_mm[out]);
        };
        t.width_mm = cross(b, b - 1) - cross(a, a + 1);
    }
    const double h = panel.region_half_mm;
    for (const auto& [x, s] : {std::pair{-h, panel.region_from_mm},
                               {h, panel.region_from_mm},
                               {h, panel.region_to_mm},
                               {-h, panel.region_to_mm}})
        t.region_px.push_back(projector.px_from(panel.on_head(x, s)));
    for (double s = 0; s <= length; s += 5)
        t.strand_px.push_back(projector.px_from(panel.on_head(course(panel, 0, s), s)));
    t.px_per_mm = panel.scene.camera.px_per_mm;
    t.tilt_deg = panel.scene.camera.tilt_deg;
    return t;
}
}  // namespace

PanelShot take(const Panel& panel) {
    const Scene& scene = panel.scene;
    const Camera& camera = scene.camera;
    const Projector projector(camera);
    const Weave w = weave(panel);
    const Lattice lattice(panel, projector);
    Rendered out;
    out.width = camera.width, out.height = camera.height;
    out.light.resize(static_cast<size_t>(out.width) * out.height);
    const double px_mm = 1 / camera.px_per_mm;
    const size_t stride = static_cast<size_t>(w.columns + 1) * 4;
    for (int y = 0; y < out.height; ++y) {
        const int j = y / Lattice::step;
        const float fy = static_cast<float>(y - j * Lattice::step) / Lattice::step;
        for (int i = 0; i * Lattice::step < out.width; ++i) {
            const auto* a = lattice.nodes.data() + static_cast<size_t>(j) * lattice.nx + i;
            const auto* b = a + lattice.nx;
            auto mix = [&](float p, float q) { return p + fy * (q - p); };
            const float x0 = mix(a[0].x, b[0].x), x1 = mix(a[1].x, b[1].x), y0 = mix(a[0].y, b[0].y),
                        y1 = mix(a[1].y, b[1].y), u0 = mix(a[0].u, b[0].u), u1 = mix(a[1].u, b[1].u),
                        s0 = mix(a[0].s, b[0].s), s1 = mix(a[1].s, b[1].s);
            // Width of a pixel's footprint across the fibres.
            const float foot = (std::abs(u1 - u0) + std::abs(b[0].u - a[0].u)) / Lattice::step;
            for (int k = 0; k < Lattice::step && i * Lattice::step + k < out.width; ++k) {
                const float f = static_cast<float>(k) / Lattice::step;
                const float X = x0 + f * (x1 - x0), Y = y0 + f * (y1 - y0), u = u0 + f * (u1 - u0),
                            s = s0 + f * (s1 - s0);
                Rgb light{0, 0, 0};
                float cover = 0;
                const double row = s / w.row_mm, left = (u - 0.5 * foot - w.u0) / w.column_mm,
                             right = (u + 0.5 * foot - w.u0) / w.column_mm;
                if (row >= 0 && row < w.rows - 1 && left >= 0 && right < w.columns) {
                    const int r = static_cast<int>(row), l = static_cast<int>(left), m = static_cast<int>(right);
                    const float fr = static_cast<float>(row - r), fl = static_cast<float>(left - l),
                                fm = static_cast<float>(right - m);
                    float v[4];
                    for (int q = 0; q < 4; ++q) {
                        const float* p0 = w.sums.data() + static_cast<size_t>(r) * stride + q;
                        const float* p1 = p0 + stride;
                        auto at = [&](const float* p, int c, float t) {
                            return p[4 * c] + t * (p[4 * c + 4] - p[4 * c]);
                        };
                        v[q] = (1 - fr) * (at(p0, m, fm) - at(p0, l, fl)) + fr * (at(p1, m, fm) - at(p1, l, fl));
                    }
                    const float inv = static_cast<float>(1 / (right - left));
                    light = {v[0] * inv, v[1] * inv, v[2] * inv};
                    cover = v[3] * inv;
                }
                const float even = static_cast<float>(light_at(scene.light, X, Y));
                if (cover < 0.999f) {
                    double face = 0;
                    const float share =
                        scene.card.present() ? static_cast<float>(card_at(scene.card, X, Y, px_mm, face)) : 0;
                    const Rgb ground = s < 0 && std::abs(u) < 1.5 * panel.half_width_mm ? panel.skin : panel.background;
                    const float paper = static_cast<float>(face);
                    light = light + (Rgb{paper, paper, paper} * share + ground * (1 - share)) * (1 - cover);
                }
                out.light[static_cast<size_t>(y) * out.width + i * Lattice::step + k] =
                    light * scene.light.colour * even;
            }
        }
    }
    const auto streaks = draw_streaks(panel, projector, w, out);
    PanelShot result;
    result.truth = truth_of(panel, projector, w, streaks);
    result.shot.width = out.width, result.shot.height = out.height;
    result.shot.rgb = photograph(scene, out);
    return result;
}

}  // namespace render
