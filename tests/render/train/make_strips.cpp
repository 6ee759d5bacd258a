// Training pictures: strips of hairline straightened as the estimator sees them, with cover and crossings beside them.
// Builds with a compiler alone, see train.py.
// Usage: make_strips SEED COUNT OUT   writes COUNT records of fixed size.
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "edges/reference_colours.h"
#include "phone.h"
#include "raster.h"
#include "scene.h"
#include "strands.h"

using namespace render;

namespace {
constexpr int rows = 256, columns = 128, channels = 7;  // crop; targets at half resolution
constexpr double pi = 3.14159265358979;

double decode(double c) {
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

uint16_t half(float v) {
    uint32_t u;
    std::memcpy(&u, &v, 4);
    const uint32_t sign = (u >> 16) & 0x8000;
    const int e = static_cast<int>((u >> 23) & 0xff) - 112;
    const uint32_t m = u & 0x7fffff;
    if (e <= 0) return static_cast<uint16_t>(sign);
    if (e >= 31) return static_cast<uint16_t>(sign | 0x7bff);
    return static_cast<uint16_t>(sign | static_cast<uint32_t>(e << 10) | (m >> 13));
}

// Cubic convolution, a = -0.75 as in OpenCV's remap.
void cubic(double t, double w[4]) {
    const double a = -0.75;
    auto near = [&](double x) { return ((a + 2) * x - (a + 3)) * x * x + 1; };
    auto far = [&](double x) { return ((a * x - 5 * a) * x + 8 * a) * x - 4 * a; };
    w[0] = far(1 + t), w[1] = near(t), w[2] = near(1 - t), w[3] = far(2 - t);
}
}  // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    Rng rng(std::strtoull(argv[1], nullptr, 10));
    const int count = std::atoi(argv[2]);
    FILE* file = std::fopen(argv[3], "wb");
    if (!file) return 1;
    double covers[10] = {};
    for (int made = 0; made < count;) {
        Scene s;
        s.skin_class = rng.index(skin_classes);
        s.hair_colour = rng.index(hair_colours);
        s.x_from = -7;
        s.x_to = 7;
        s.skin = random_skin(rng, s.skin_class);
        s.hair = random_hair(rng, s.hair_colour);
        s.growth = random_growth(rng, -7, 7);
        s.light = random_lighting(rng);
        s.phone = random_phone(rng, rng.uniform(0.1, 1.0));
        // Mostly what the gate accepts for counts and cover; some as coarse as a portrait, brought to the coarsest
        // band.
        const double ppm = rng.chance(0.1) ? rng.log_uniform(2.5, 11.5) : rng.log_uniform(11.5, 33),
                     band_ppm = std::min(std::max(ppm, 12.0), 24.0);
        Camera& c = s.camera;
        const int quarter = rng.index(4);
        c.turn_deg = 90 * quarter + rng.normal(0, 8);
        const double along = 17, across = 32;
        c.px_per_mm = ppm;
        c.width = static_cast<int>((quarter % 2 ? across : along) * ppm);
        c.height = static_cast<int>((quarter % 2 ? along : across) * ppm);
        c.focal_px = rng.uniform(3000, 5200);
        c.aim_mm = {0, 7.6};
        c.tilt_deg = std::abs(rng.normal(0, 12));
        if (c.tilt_deg > 30) c.tilt_deg = 30;
        c.tilt_axis_deg = rng.uniform(0, 360);
        c.bulge_radius_mm = rng.uniform(75, 200);
        s.strand_seed = rng.next();
        s.noise_seed = rng.next();
        const Coat coat = grow(s, 14, 30);
        const Rendered r = rasterise(s, coat, ppm > 17 ? 3 : ppm > 8 ? 4 : 8);
        std::vector<uint8_t> rgb = photograph(s, r);
        if (rng.chance(0.9)) jpeg_blocks(rgb, r.width, r.height, 70 + rng.index(27), rng.chance(0.7));

        // Back to light: the tone curve undone about as well as the card's ramp allows, or not at all.
        Phone guess = s.phone;
        const bool no_card = rng.chance(0.2);
        guess.curve = no_card ? 0 : guess.curve + rng.normal(0, 0.06);
        guess.lift = no_card ? 0 : std::max(0.0, guess.lift + rng.normal(0, 0.006));
        guess.gamma = no_card ? 1 : guess.gamma * std::exp(rng.normal(0, 0.03));
        float back[256];
        for (int v = 0; v < 256; ++v) {
            double low = 0, high = 1;
            for (int i = 0; i < 30; ++i) {
                const double mid = 0.5 * (low + high);
                (tone_curve(guess, mid) < v / 255.0 ? low : high) = mid;
            }
            back[v] = static_cast<float>(decode(0.5 * (low + high)));
        }
        const bool p3 = s.phone.display_p3;
        const double fix = no_card ? 1 : 1 / s.phone.exposure;
        const Rgb gains = no_card ? Rgb{1, 1, 1} : Rgb{1 / s.phone.gains.r, 1 / s.phone.gains.g, 1 / s.phone.gains.b};
        const Projector projector(c);
        auto light_at_px = [&](int x, int y) -> Rgb {
            x = static_cast<int>(clamp(x, 0, r.width - 1));
            y = static_cast<int>(clamp(y, 0, r.height - 1));
            const uint8_t* p = rgb.data() + 3 * (static_cast<size_t>(y) * r.width + x);
            Rgb v{back[p[0]] * gains.r, back[p[1]] * gains.g, back[p[2]] * gains.b};
            if (p3)
                v = {1.2249402f * v.r - 0.2249402f * v.g, -0.0420569f * v.r + 1.0420571f * v.g,
                     -0.0196376f * v.r - 0.0786361f * v.g + 1.0982735f * v.b};
            return v * static_cast<float>(fix);
        };
        auto log_light = [&](double x, double y) {
            const V2 p = projector.px_from({x, y, 0});
            const int ix = static_cast<int>(std::floor(p.x)), iy = static_cast<int>(std::floor(p.y));
            double wx[4], wy[4];
            cubic(p.x - ix, wx);
            cubic(p.y - iy, wy);
            double v[3] = {};
            for (int j = 0; j < 4; ++j)
                for (int i = 0; i < 4; ++i) {
                    const Rgb q = light_at_px(ix + i - 1, iy + j - 1);
                    const double w = wx[i] * wy[j];
                    v[0] += w * q.r, v[1] += w * q.g, v[2] += w * q.b;
                }
            std::array<float, 3> out;
            for (size_t k = 0; k < 3; ++k)
                out[k] = static_cast<float>(std::log(std::max(v[k], 0.0) + kempt::edges::light_floor));
            return out;
        };
        // The marked line may lie half a millimetre off.
        const double off = rng.normal(0, 0.3), step = 1 / band_ppm;
        std::vector<std::array<float, 3>> outer, deep, taps;
        for (double y = -4; y < -0.5; y += 2.5 * step)
            for (double x = -7; x < 7; x += 2.5 * step) outer.push_back(log_light(x, y + off));
        for (double y = 10; y < 20; y += 2.5 * step)
            for (double x = -7; x < 7; x += 2.5 * step) deep.push_back(log_light(x, y + off));
        if (rng.chance(0.25)) {  // a tap on a strand
            for (int t = 0; t < 3 && !r.pieces.empty(); ++t) {
                const VisiblePiece& piece = r.pieces[static_cast<size_t>(rng.index(static_cast<int>(r.pieces.size())))];
                taps.push_back(log_light(0.5 * (piece.from.x + piece.to.x), 0.5 * (piece.from.y + piece.to.y)));
            }
        }
        const auto reference = kempt::edges::reference_colours(outer, deep, taps, {}, ppm);

        // One crop of the band, -1.5..20.5 mm deep, 14 mm along.
        const double top = rng.uniform(-1.5, std::max(-1.4, 20.5 - rows * step)),
                     left = rng.uniform(-6.8, std::max(-6.7, 6.8 - columns * step));
        std::vector<uint16_t> input(static_cast<size_t>(3) * rows * columns),
            target(static_cast<size_t>(channels) * rows * columns / 4);
        std::vector<float> sums(static_cast<size_t>(channels) * rows * columns / 4, 0.f);
        const size_t plane = static_cast<size_t>(rows) * columns, quarter_plane = plane / 4;
        const int hc = columns / 2;
        double mean_cover = 0;
        for (int j = 0; j < rows; ++j)
            for (int i = 0; i < columns; ++i) {
                const double x = left + (i + 0.5) * step, y = top + off + (j + 0.5) * step;
                const auto v = log_light(x, y);
                for (size_t k = 0; k < 3; ++k)
                    input[k * plane + static_cast<size_t>(j) * columns + i] = half(v[k] - reference.log_skin[k]);
                const V2 p = projector.px_from({x, y, 0});
                const int ix = static_cast<int>(clamp(std::floor(p.x), 0, r.width - 2)),
                          iy = static_cast<int>(clamp(std::floor(p.y), 0, r.height - 2));
                const double tx = clamp(p.x - ix, 0, 1), ty = clamp(p.y - iy, 0, 1);
                const float* a = r.cover.data() + static_cast<size_t>(iy) * r.width + ix;
                const double cover =
                    (a[0] * (1 - tx) + a[1] * tx) * (1 - ty) + (a[r.width] * (1 - tx) + a[r.width + 1] * tx) * ty;
                sums[static_cast<size_t>(j / 2) * hc + i / 2] += static_cast<float>(cover / 4);
                mean_cover += cover / static_cast<double>(plane);
            }
        for (const VisiblePiece& piece : r.pieces) {
            const double dx = piece.to.x - piece.from.x, dy = piece.to.y - piece.from.y, length = std::hypot(dx, dy);
            const double x = 0.5 * (piece.from.x + piece.to.x), y = 0.5 * (piece.from.y + piece.to.y);
            const double u = (x - left) / step / 2 - 0.5, v = (y - top - off) / step / 2 - 0.5;
            const int iu = static_cast<int>(std::floor(u)), iv = static_cast<int>(std::floor(v));
            for (int j = 0; j < 2; ++j)
                for (int i = 0; i < 2; ++i) {
                    const int cu = iu + i, cv = iv + j;
                    if (cu < 0 || cv < 0 || cu >= hc || cv >= rows / 2) continue;
                    const double w = (i ? u - iu : 1 - u + iu) * (j ? v - iv : 1 - v + iv);
                    for (int k = 0; k < 6; ++k) {
                        // Crossings of a test line at angle k * 30 degrees from the edge, per mm of it: |n . t| length
                        // / area; stored per pixel of the band.
                        const double angle = k * pi / 6, n = std::abs(-std::sin(angle) * dx + std::cos(angle) * dy) /
                                                             std::max(1e-9, length);
                        sums[static_cast<size_t>(k + 1) * quarter_plane + static_cast<size_t>(cv) * hc + cu] +=
                            static_cast<float>(w * n * length / (4 * step * step) * step);
                    }
                }
        }
        for (size_t i = 0; i < sums.size(); ++i) target[i] = half(sums[i]);
        float head[kempt::edges::context_size + 3];
        std::copy(reference.context.begin(), reference.context.end(), head);
        head[kempt::edges::context_size] = static_cast<float>(s.skin_class);
        head[kempt::edges::context_size + 1] = static_cast<float>(s.hair_colour);
        head[kempt::edges::context_size + 2] = static_cast<float>(ppm);
        std::fwrite(head, sizeof head, 1, file);
        std::fwrite(input.data(), 2, input.size(), file);
        std::fwrite(target.data(), 2, target.size(), file);
        covers[static_cast<int>(clamp(mean_cover * 10, 0, 9))] += 1;
        ++made;
    }
    std::fclose(file);
    for (double n : covers) std::fprintf(stderr, "%.0f ", n);
    std::fprintf(stderr, "\n");
    return 0;
}
