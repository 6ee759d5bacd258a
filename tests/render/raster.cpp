#include "raster.h"

#include <algorithm>

#include "shade.h"

namespace render {

namespace {
struct Piece {     // a projected strand piece
    V2 a, b;       // pixels
    float ra, rb;  // half widths in pixels
    float za, zb;  // height towards the camera, mm
    int strand, point;
};

// Share of a pixel's footprint that the card takes up, and the card's mean reflectance there (3 x 3 bilinear samples).
double card_share(const CardPicture& card, double x, double y, double px_mm, double& reflectance) {
    const double k = card.turn_deg * 3.14159265358979 / 180, dx = x - card.origin_mm.x, dy = y - card.origin_mm.y;
    const double u = dx * std::cos(k) + dy * std::sin(k), v = -dx * std::sin(k) + dy * std::cos(k), s = card.px_per_mm;
    const double wide = card.width / s, high = card.height / s;
    if (u < -px_mm || v < -px_mm || u > wide + px_mm || v > high + px_mm) return 0;
    double sum = 0;
    int inside = 0;
    for (int j = -1; j <= 1; ++j)
        for (int i = -1; i <= 1; ++i) {
            const double su = u + i * px_mm / 3, sv = v + j * px_mm / 3;
            if (su < 0 || sv < 0 || su >= wide || sv >= high) continue;
            const double a = clamp(su * s - 0.5, 0, card.width - 1.001),
                         b = clamp(sv * s - 0.5, 0, card.height - 1.001);
            const int ia = static_cast<int>(a), ib = static_cast<int>(b);
            const double ta = a - ia, tb = b - ib;
            const float* p = card.reflectance.data() + static_cast<size_t>(ib) * card.width + ia;
            sum += (p[0] * (1 - ta) + p[1] * ta) * (1 - tb) + (p[card.width] * (1 - ta) + p[card.width + 1] * ta) * tb;
            ++inside;
        }
    if (inside == 0) return 0;
    reflectance = sum / inside;
    return inside / 9.0;
}
}  // namespace

Rendered rasterise(const Scene& scene, const Coat& coat, int samples) {
    const Camera& camera = scene.camera;
    const Projector projector(camera);
    const int W = camera.width, H = camera.height, S = samples, tile = 128;
    Rendered out;
    out.width = W;
    out.height = H;
    out.light.resize(static_cast<size_t>(W) * H);
    out.cover.assign(static_cast<size_t>(W) * H, 0);

    // Shadows over what the camera sees.
    double x0 = 1e9, x1 = -1e9, y0 = 1e9, y1 = -1e9;
    for (int i = 0; i < 4; ++i) {
        const V2 p = projector.plane_from_px({i & 1 ? W - 1.0 : 0.0, i & 2 ? H - 1.0 : 0.0});
        x0 = std::min(x0, p.x), x1 = std::max(x1, p.x), y0 = std::min(y0, p.y), y1 = std::max(y1, p.y);
    }
    const Shadows shadows(scene, coat, x0 - 2, y0 - 2, x1 + 2, y1 + 2);

    // Project and bin the pieces.
    std::vector<Piece> pieces;
    pieces.reserve(coat.points.size());
    const int tx = (W + tile - 1) / tile, ty = (H + tile - 1) / tile;
    std::vector<std::vector<int>> bins(static_cast<size_t>(tx) * ty);
    for (size_t n = 0; n < coat.strands.size(); ++n) {
        const Strand& s = coat.strands[n];
        V2 before{};
        for (int i = 0; i < s.count; ++i) {
            const V3 w = coat.points[static_cast<size_t>(s.first + i)];
            const V2 p = projector.px_from(w);
            if (i > 0) {
                const double scale = camera.px_per_mm;
                // Strands taper over their last fifth.
                auto half = [&](int k) {
                    return static_cast<float>(s.radius * scale *
                                              std::min(1.0, 0.35 + 0.65 * 5.0 * (s.count - 1 - k) / (s.count - 1)));
                };
                const Piece piece{before,
                                  p,
                                  half(i - 1),
                                  half(i),
                                  static_cast<float>(coat.points[static_cast<size_t>(s.first + i - 1)].z),
                                  static_cast<float>(w.z),
                                  static_cast<int>(n),
                                  s.first + i - 1};
                const double r = piece.ra + 1;
                const int bx0 = std::max(0, static_cast<int>((std::min(before.x, p.x) - r) / tile)),
                          bx1 = std::min(tx - 1, static_cast<int>((std::max(before.x, p.x) + r) / tile));
                const int by0 = std::max(0, static_cast<int>((std::min(before.y, p.y) - r) / tile)),
                          by1 = std::min(ty - 1, static_cast<int>((std::max(before.y, p.y) + r) / tile));
                if (std::max(before.x, p.x) + r >= 0 && std::max(before.y, p.y) + r >= 0)
                    for (int b = by0; b <= by1; ++b)
                        for (int a = bx0; a <= bx1; ++a)
                            bins[static_cast<size_t>(b) * tx + a].push_back(static_cast<int>(pieces.size()));
                pieces.push_back(piece);
            }
            before = p;
        }
    }

    std::vector<std::vector<VisiblePiece>> seen(bins.size());
    const double px_mm = 1 / camera.px_per_mm;
    for (int job = 0; job < tx * ty; ++job) {
        const int ox = (job % tx) * tile, oy = (job / tx) * tile, w = std::min(tile, W - ox),
                  h = std::min(tile, H - oy), sw = w * S, sh = h * S;
        // A tile without hair needs no samples.
        const bool hair = !bins[static_cast<size_t>(job)].empty();
        std::vector<float> depth(hair ? static_cast<size_t>(sw) * sh : 0, -1e9f);
        std::vector<int> owner(depth.size(), -1);
        std::vector<Rgb> colour(depth.size());
        for (const int index : bins[static_cast<size_t>(job)]) {
            const Piece& q = pieces[static_cast<size_t>(index)];
            const Strand& s = coat.strands[static_cast<size_t>(q.strand)];
            const V3 wa = coat.points[static_cast<size_t>(q.point)], wb = coat.points[static_cast<size_t>(q.point + 1)];
            const V3 t = unit(wb - wa);
            const double mx = 0.5 * (wa.x + wb.x), my = 0.5 * (wa.y + wb.y),
                         mz = 0.5 * (wa.z + wb.z) - camera.scalp_z(my);
            const StrandLight lit = strand_light(scene, s, t, 0.25 * (q.point - s.first));
            const float shade = shadows.on_strand(mx, my, mz), even = static_cast<float>(light_at(scene.light, mx, my));
            const double ax = (q.a.x - ox + 0.5) * S - 0.5, ay = (q.a.y - oy + 0.5) * S - 0.5,
                         bx = (q.b.x - ox + 0.5) * S - 0.5, by = (q.b.y - oy + 0.5) * S - 0.5;
            const double ux = bx - ax, uy = by - ay, len2 = std::max(1e-9, ux * ux + uy * uy), len = std::sqrt(len2),
                         r = q.ra * S;
            // Side of the light across the strand, in the picture.
            const double side = (-uy * scene.light.key.x + ux * scene.light.key.y) / len;
            const int px0 = std::max(0, static_cast<int>(std::floor(std::min(ax, bx) - r))),
                      px1 = std::min(sw - 1, static_cast<int>(std::ceil(std::max(ax, bx) + r)));
            const int py0 = std::max(0, static_cast<int>(std::floor(std::min(ay, by) - r))),
                      py1 = std::min(sh - 1, static_cast<int>(std::ceil(std::max(ay, by) + r)));
            for (int y = py0; y <= py1; ++y)
                for (int x = px0; x <= px1; ++x) {
                    const double vx = x - ax, vy = y - ay, along = (vx * ux + vy * uy) / len2;
                    const double c = clamp(along, 0, 1), dx = vx - c * ux, dy = vy - c * uy, d2 = dx * dx + dy * dy;
                    const double half = S * (q.ra + (q.rb - q.ra) * c);
                    if (d2 > half * half) continue;
                    const double across = std::sqrt(d2) / half, cap = std::sqrt(std::max(0.0, 1 - across * across));
                    const float z = static_cast<float>(q.za + (q.zb - q.za) * c + s.radius * cap);
                    const size_t at = static_cast<size_t>(y) * sw + x;
                    if (z <= depth[at]) continue;
                    depth[at] = z;
                    owner[at] = q.strand;
                    const double signed_across = (vx * -uy + vy * ux) >= 0 ? across : -across;
                    const double wrap =
                        clamp(0.55 + 0.45 * cap * scene.light.key.z + 0.6 * side * signed_across, 0, 1.4);
                    const float form = static_cast<float>(1 - scene.hair.body + scene.hair.body * wrap);
                    colour[at] = ((lit.key * form + lit.highlight * static_cast<float>(0.4 + 0.6 * cap)) * shade +
                                  lit.soft * (0.35f + 0.65f * shade)) *
                                 even;
                }
        }
        // Skin and card once a pixel, hair by its samples.
        for (int y = 0; y < h; ++y)
            for (int x = 0; x < w; ++x) {
                const V2 p = projector.plane_from_px({static_cast<double>(ox + x), static_cast<double>(oy + y)});
                Rgb sum;
                int covered = 0;
                for (int j = 0; j < S && hair; ++j)
                    for (int i = 0; i < S; ++i) {
                        const size_t at = static_cast<size_t>(y * S + j) * sw + (x * S + i);
                        if (owner[at] < 0) continue;
                        ++covered;
                        sum = sum + colour[at];
                    }
                const size_t to = static_cast<size_t>(oy + y) * W + ox + x;
                out.cover[to] = static_cast<float>(covered) / static_cast<float>(S * S);
                if (covered < S * S) {
                    const float even = static_cast<float>(light_at(scene.light, p.x, p.y));
                    double face = 0;
                    const float share =
                        scene.card.present() ? static_cast<float>(card_share(scene.card, p.x, p.y, px_mm, face)) : 0;
                    const float paper = static_cast<float>(face) * even * share;
                    Rgb ground{paper, paper, paper};
                    if (share < 1) {
                        const V2 q =
                            scene.skin_on_bulge
                                ? projector.scalp_from_px({static_cast<double>(ox + x), static_cast<double>(oy + y)})
                                : p;
                        const SkinLight skin = skin_light(scene, q.x, q.y, q.y - scene.edge_y(q.x), px_mm);
                        ground = ground + (skin.key * shadows.key_on_scalp(q.x, q.y) +
                                           skin.soft * shadows.soft_on_scalp(q.x, q.y)) *
                                              (even * (1 - share));
                    }
                    sum = sum + ground * static_cast<float>(S * S - covered);
                }
                out.light[to] = sum * scene.light.colour * (1.0f / static_cast<float>(S * S));
            }
        // Which middles of strands the camera sees.
        for (const int index : bins[static_cast<size_t>(job)]) {
            const Piece& q = pieces[static_cast<size_t>(index)];
            const double mx = (0.5 * (q.a.x + q.b.x) - ox + 0.5) * S, my = (0.5 * (q.a.y + q.b.y) - oy + 0.5) * S;
            if (mx < 0 || my < 0 || mx >= sw || my >= sh) continue;
            if (owner[static_cast<size_t>(my) * sw + static_cast<size_t>(mx)] == q.strand)
                seen[static_cast<size_t>(job)].push_back(
                    {projector.plane_from_px(q.a), projector.plane_from_px(q.b), q.strand});
        }
    }
    for (auto& list : seen) out.pieces.insert(out.pieces.end(), list.begin(), list.end());
    return out;
}

}  // namespace render
