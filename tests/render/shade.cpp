#include "shade.h"

#include <algorithm>

#include "noise.h"

namespace render {

namespace {
void box_blur(std::vector<float>& map, int nx, int ny, double sigma_cells) {
    // Three box passes are close to a Gaussian.
    const int r = std::max(0, static_cast<int>(std::lround(sigma_cells * 1.0)));
    if (r == 0) return;
    std::vector<float> line;
    for (int pass = 0; pass < 3; ++pass) {
        line.resize(static_cast<size_t>(std::max(nx, ny)));
        for (int dir = 0; dir < 2; ++dir) {
            const int n = dir ? ny : nx, m = dir ? nx : ny, step = dir ? nx : 1;
            for (int q = 0; q < m; ++q) {
                float* p = map.data() + static_cast<size_t>(q) * (dir ? 1 : nx);
                float sum = 0;
                for (int i = -r; i <= r; ++i) sum += p[static_cast<size_t>(clamp(i, 0, n - 1)) * step];
                for (int i = 0; i < n; ++i) {
                    line[static_cast<size_t>(i)] = sum / static_cast<float>(2 * r + 1);
                    sum += p[static_cast<size_t>(std::min(n - 1, i + r + 1)) * step] -
                           p[static_cast<size_t>(std::max(0, i - r)) * step];
                }
                for (int i = 0; i < n; ++i) p[static_cast<size_t>(i) * step] = line[static_cast<size_t>(i)];
            }
        }
    }
}
}  // namespace

Shadows::Shadows(const Scene& scene, const Coat& coat, double x0, double y0, double x1, double y1)
    : x0_(x0), y0_(y0), nx_(static_cast<int>((x1 - x0) / cell) + 1), ny_(static_cast<int>((y1 - y0) / cell) + 1) {
    const size_t n = static_cast<size_t>(nx_) * ny_;
    for (auto& layer : layer_) layer.assign(n, 0);
    for (const Strand& s : coat.strands)
        for (int i = 1; i < s.count; ++i) {
            const V3 a = coat.points[static_cast<size_t>(s.first + i - 1)],
                     b = coat.points[static_cast<size_t>(s.first + i)];
            const double z = 0.5 * (a.z + b.z) - scene.camera.scalp_z(0.5 * (a.y + b.y));
            const int ix = static_cast<int>((0.5 * (a.x + b.x) - x0_) / cell),
                      iy = static_cast<int>((0.5 * (a.y + b.y) - y0_) / cell);
            if (ix < 0 || iy < 0 || ix >= nx_ || iy >= ny_) continue;
            int k = 0;
            while (k < layers - 1 && z > top_[k]) ++k;
            const double length = std::hypot(b.x - a.x, b.y - a.y);
            // A piece longer than a cell is spread over the cells that it passes.
            const int parts = std::max(1, static_cast<int>(length / cell));
            for (int p = 0; p < parts; ++p) {
                const double t = (p + 0.5) / parts;
                const int jx = static_cast<int>((a.x + t * (b.x - a.x) - x0_) / cell),
                          jy = static_cast<int>((a.y + t * (b.y - a.y) - y0_) / cell);
                if (jx < 0 || jy < 0 || jx >= nx_ || jy >= ny_) continue;
                layer_[k][static_cast<size_t>(jy) * nx_ + jx] +=
                    static_cast<float>(2 * s.radius * length / parts / (cell * cell));
            }
        }
    key_.assign(n, 1);
    soft_.assign(n, 1);
    const Lighting& light = scene.light;
    double below = 0;
    std::vector<float> soft(n, 0);
    for (int k = 0; k < layers; ++k) {
        for (float& v : layer_[k]) v = 1 - std::exp(-v);
        const double height = k == layers - 1 ? 1.6 : 0.5 * (below + top_[k]);
        below = top_[k];
        std::vector<float> thrown = layer_[k];
        box_blur(thrown, nx_, ny_, (light.penumbra * height) / cell);
        const double dx = -light.key.x / std::max(0.2, light.key.z) * height / cell,
                     dy = -light.key.y / std::max(0.2, light.key.z) * height / cell;
        for (int y = 0; y < ny_; ++y)
            for (int x = 0; x < nx_; ++x) {
                const double sx = clamp(x - dx, 0, nx_ - 1.001), sy = clamp(y - dy, 0, ny_ - 1.001);
                const int ix = static_cast<int>(sx), iy = static_cast<int>(sy);
                const float tx = static_cast<float>(sx - ix), ty = static_cast<float>(sy - iy);
                const float* p = thrown.data() + static_cast<size_t>(iy) * nx_ + ix;
                const int right = ix + 1 < nx_ ? 1 : 0, down = iy + 1 < ny_ ? nx_ : 0;
                const float v =
                    (p[0] * (1 - tx) + p[right] * tx) * (1 - ty) + (p[down] * (1 - tx) + p[down + right] * tx) * ty;
                key_[static_cast<size_t>(y) * nx_ + x] *= 1 - 0.93f * v;
            }
        box_blur(layer_[k], nx_, ny_, (0.25 + height * 0.8) / cell);
        for (size_t i = 0; i < n; ++i) soft[i] = 1 - (1 - soft[i]) * (1 - layer_[k][i]);
    }
    for (size_t i = 0; i < n; ++i) soft_[i] = 1 - 0.75f * soft[i];
}

float Shadows::sample(const std::vector<float>& map, double x, double y) const {
    const double sx = clamp((x - x0_) / cell - 0.5, 0, nx_ - 1.001), sy = clamp((y - y0_) / cell - 0.5, 0, ny_ - 1.001);
    const int ix = static_cast<int>(sx), iy = static_cast<int>(sy);
    const float tx = static_cast<float>(sx - ix), ty = static_cast<float>(sy - iy);
    const float* p = map.data() + static_cast<size_t>(iy) * nx_ + ix;
    const int right = ix + 1 < nx_ ? 1 : 0, down = iy + 1 < ny_ ? nx_ : 0;
    return (p[0] * (1 - tx) + p[right] * tx) * (1 - ty) + (p[down] * (1 - tx) + p[down + right] * tx) * ty;
}

float Shadows::on_strand(double x, double y, double z) const {
    const int ix = static_cast<int>((x - x0_) / cell), iy = static_cast<int>((y - y0_) / cell);
    if (ix < 0 || iy < 0 || ix >= nx_ || iy >= ny_) return 1;
    float left = 1;
    const size_t i = static_cast<size_t>(iy) * nx_ + ix;
    for (int k = 0; k < layers; ++k) {
        // The part of this layer above z shades the strand.
        const double below = k == 0 ? 0 : top_[k - 1], over = k == layers - 1 ? 2.0 : top_[k];
        const double part = clamp((over - z) / (over - below), 0, 1);
        left *= 1 - 0.85f * layer_[k][i] * static_cast<float>(part);
    }
    return left;
}

double light_at(const Lighting& light, double x, double y) {
    double e = 1 + light.gradient_x * x + light.gradient_y * (y + 5);
    if (light.shadow_edge) {
        const double q = x * std::cos(light.shadow_angle) + y * std::sin(light.shadow_angle) - light.shadow_x;
        e *= 1 - light.shadow_depth * smoothstep(-light.shadow_soft_mm, light.shadow_soft_mm, q);
    }
    return e < 0.1 ? 0.1 : e;
}

SkinLight skin_light(const Scene& scene, double x, double y, double depth_mm, double px_mm) {
    const Skin& s = scene.skin;
    const uint32_t seed = s.seed;
    if (depth_mm < scene.detail_from_mm) {
        const float part = static_cast<float>(scene.light.key_share);
        return {s.albedo * part, s.albedo * (1 - part)};
    }
    // Two turned lattices together hide the grid of value noise.
    auto mottle = [](uint32_t salt, double u, double v, double size) {
        return 0.6 *
               (value_noise(salt, (0.8 * u + 0.6 * v) / size, (0.8 * v - 0.6 * u) / size) +
                value_noise(salt + 50, (0.45 * u - 0.89 * v) / (0.8 * size), (0.45 * v + 0.89 * u) / (0.8 * size)));
    };
    const double slow = 0.6 * mottle(seed, x, y, 9) + 0.4 * mottle(seed + 1, x, y, 3.1);
    const double mid = mottle(seed + 2, x, y, 1.1),
                 blood = value_noise(seed + 3, x / 5, y / 5) + 0.6 * value_noise(seed + 9, x / 1.4, y / 1.4);
    double tone = 1 + s.blotch * (0.7 * slow + 0.35 * mid);
    // Pores and follicle mouths: dark dots on a jittered grid of 0.6 mm.
    auto dots = [&](uint32_t salt, double grid, double share, double radius) {
        // Dots reach less than half a cell from their middle third: the four nearest cells are enough.
        const int gx = static_cast<int>(std::floor(x / grid - 0.5)), gy = static_cast<int>(std::floor(y / grid - 0.5));
        double dark = 0;
        for (int j = 0; j <= 1; ++j)
            for (int i = 0; i <= 1; ++i) {
                const float there = 0.5f + 0.5f * lattice(seed + salt, gx + i, gy + j);
                if (there > share) continue;
                const double cx = (gx + i + 0.5 + 0.25 * lattice(seed + salt + 1, gx + i, gy + j)) * grid,
                             cy = (gy + j + 0.5 + 0.25 * lattice(seed + salt + 2, gx + i, gy + j)) * grid;
                const double r = radius * (1 + 0.4 * lattice(seed + salt + 3, gx + i, gy + j)) + 0.3 * px_mm;
                const double q = ((x - cx) * (x - cx) + (y - cy) * (y - cy)) / (r * r);
                if (q < 4) dark = std::max(dark, std::exp(-1.5 * q) * radius / (radius + 0.3 * px_mm));
            }
        return dark;
    };
    if (s.pores > 0) tone *= 1 - 0.35 * s.pores * dots(20, 0.6, 0.7, 0.07);
    if (s.freckles > 0) tone *= 1 - 0.35 * dots(30, 1.4, s.freckles * 1.96, 0.5);
    Rgb albedo = s.albedo * static_cast<float>(tone);
    const float red = static_cast<float>(s.redness * 0.35 * blood);
    albedo.g *= 1 - red;
    albedo.b *= 1 - 0.9f * red;
    // Scalp and forehead pass into each other over some millimetres.
    const float in = static_cast<float>(smoothstep(-5, 5, depth_mm));
    albedo = albedo * (Rgb{1, 1, 1} * (1 - in) + s.scalp_tint * in);
    if (s.stubble > 0 && depth_mm > 0) {
        const float d = static_cast<float>(0.75 * dots(40, 1.0, s.stubble, 0.05));
        albedo = albedo * (1 - d) + scene.hair.albedo * d;
    }
    // Relief: the normal tilts with the slope of fine noise; cylinder of the head.
    const double h = 0.08, grain = s.grain;
    auto relief = [&](double u, double v) {
        return value_noise(seed + 5, u / 0.35, v / 0.35) + 0.5 * value_noise(seed + 6, u / 0.13, v / 0.13);
    };
    const double r0 = relief(x, y), nx = -grain * (relief(x + h, y) - r0) / h * 0.35,
                 ny = -grain * (relief(x, y + h) - r0) / h * 0.35 +
                      (y - scene.camera.bulge_y_mm) / scene.camera.bulge_radius_mm;
    const V3 n = unit({nx, ny, 1});
    const double lambert = std::max(0.0, dot(n, scene.light.key)) / std::max(0.3, scene.light.key.z);
    const V3 half = unit(scene.light.key + V3{0, 0, 1});
    const double sheen = s.sheen * std::pow(std::max(0.0, dot(n, half)), s.sheen_power) *
                         (0.75 + 0.5 * value_noise(seed + 7, x / 2, y / 2));
    const float key = static_cast<float>(scene.light.key_share), soft = 1 - key;
    const float shine = static_cast<float>(sheen) * key;
    return {albedo * static_cast<float>(lambert * key) + Rgb{shine, shine, shine}, albedo * soft};
}

StrandLight strand_light(const Scene& scene, const Strand& strand, V3 t, double along) {
    const HairLook& look = scene.hair;
    const V3 L = scene.light.key;
    Rgb albedo = strand.albedo * static_cast<float>(1 - look.root_dark * std::exp(-along / 4));
    const double sin_i = clamp(dot(t, L), -1, 1), sin_r = clamp(t.z, -1, 1);  // the camera looks along z
    const double theta_i = std::asin(sin_i), theta_r = std::asin(sin_r), half = 0.5 * (theta_i + theta_r),
                 deg = 3.14159265 / 180;
    // Longitudinal lobes after Marschner et al. 2003, table 1: R tilted by -5..-10 degrees, TRT by -3/2 of it, twice as
    // wide.
    auto lobe = [&](double tilt, double width) {
        const double q = (half - tilt * deg) / (width * deg);
        return std::exp(-0.5 * q * q);
    };
    const double cos_d = std::cos(0.5 * (theta_r - theta_i)), norm = 1 / std::max(0.25, cos_d * cos_d);
    const double beta = look.roughness_deg;
    const float r = static_cast<float>(look.gloss * lobe(-7.5, beta) * norm * 8 / beta * 0.5);
    const float trt = static_cast<float>(look.glint * lobe(11.25, 2 * beta) * norm);
    const float diffuse = static_cast<float>(std::sqrt(std::max(0.0, 1 - sin_i * sin_i)));
    const float key = static_cast<float>(scene.light.key_share), soft = 1 - key;
    auto glow = [](Rgb a) {
        return Rgb{std::sqrt(std::max(a.r, 0.f)), std::sqrt(std::max(a.g, 0.f)), std::sqrt(std::max(a.b, 0.f))};
    };
    StrandLight out;
    out.key = albedo * (diffuse * key);
    out.soft = albedo * soft;
    out.highlight = Rgb{r, r, r} * key + albedo * glow(albedo) * (trt * key * 2);
    return out;
}

}  // namespace render
