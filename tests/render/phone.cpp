#include "phone.h"

#include <algorithm>
#include <array>

namespace render {

namespace {
double coded(double l) {
    return l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1 / 2.4) - 0.055;
}

// Separable Gaussian on one plane of an interleaved picture.
void blur(std::vector<float>& plane, int W, int H, double sigma) {
    if (sigma < 0.05) return;
    const int r = std::max(1, static_cast<int>(std::ceil(3 * sigma)));
    std::vector<float> k(static_cast<size_t>(2 * r + 1));
    float sum = 0;
    for (int i = -r; i <= r; ++i)
        sum += k[static_cast<size_t>(i + r)] = static_cast<float>(std::exp(-0.5 * i * i / (sigma * sigma)));
    for (float& v : k) v /= sum;
    std::vector<float> line(static_cast<size_t>(std::max(W, H)) + 2 * r), column;
    for (int y = 0; y < H; ++y) {
        float* p = plane.data() + static_cast<size_t>(y) * W;
        for (int x = -r; x < W + r; ++x) line[static_cast<size_t>(x + r)] = p[std::clamp(x, 0, W - 1)];
        for (int x = 0; x < W; ++x) {
            float v = 0;
            for (int i = 0; i <= 2 * r; ++i) v += k[static_cast<size_t>(i)] * line[static_cast<size_t>(x + i)];
            p[x] = v;
        }
    }
    std::vector<float> out(plane.size());
    for (int y = 0; y < H; ++y)
        for (int i = -r; i <= r; ++i) {
            const float* p = plane.data() + static_cast<size_t>(std::clamp(y + i, 0, H - 1)) * W;
            float* q = out.data() + static_cast<size_t>(y) * W;
            const float w = k[static_cast<size_t>(i + r)];
            for (int x = 0; x < W; ++x) q[x] += w * p[x];
        }
    plane.swap(out);
}
}  // namespace

double tone_curve(const Phone& phone, double code) {
    double c = std::pow(clamp(code, 0, 1), phone.gamma);
    c = (1 - phone.curve) * c + phone.curve * c * c * (3 - 2 * c);
    return phone.lift + (1 - phone.lift) * c;
}

std::vector<uint8_t> photograph(const Scene& scene, const Rendered& in) {
    const Phone& phone = scene.phone;
    const int W = in.width, H = in.height;
    const size_t n = static_cast<size_t>(W) * H;
    Rng rng(scene.noise_seed);
    std::array<std::vector<float>, 3> plane;
    for (auto& p : plane) p.resize(n);
    for (size_t i = 0; i < n; ++i) {
        Rgb v = in.light[i];
        if (phone.display_p3)  // sRGB to Display P3, both D65 (SMPTE EG 432-1)
            v = {0.8224621f * v.r + 0.1775380f * v.g, 0.0331941f * v.r + 0.9668058f * v.g,
                 0.0170827f * v.r + 0.0723974f * v.g + 0.9105199f * v.b};
        const float e = static_cast<float>(phone.exposure);
        plane[0][i] = v.r * e * phone.gains.r;
        plane[1][i] = v.g * e * phone.gains.g;
        plane[2][i] = v.b * e * phone.gains.b;
    }
    for (auto& p : plane) blur(p, W, H, phone.blur_px);
    // Noise: shot and read, a cheap normal from three uniforms.
    auto rough_normal = [&] {
        const uint64_t u = rng.next();
        return (static_cast<double>(u & 0x1fffff) + static_cast<double>((u >> 21) & 0x1fffff) +
                static_cast<double>(u >> 42 & 0x1fffff)) /
                   2097151.0 * 2.0 -
               3.0;
    };
    for (auto& p : plane)
        for (float& v : p)
            v += static_cast<float>(
                std::sqrt(phone.noise_shot * std::max(0.f, v) + phone.noise_read * phone.noise_read) * rough_normal());
    if (phone.mosaic) {  // RGGB, bilinear
        std::array<std::vector<float>, 3> full = plane;
        auto colour_at = [](int x, int y) { return (y & 1) ? ((x & 1) ? 2 : 1) : ((x & 1) ? 1 : 0); };
        for (int y = 1; y < H - 1; ++y)
            for (int x = 1; x < W - 1; ++x) {
                const size_t i = static_cast<size_t>(y) * W + x;
                const int own = colour_at(x, y);
                for (int c = 0; c < 3; ++c) {
                    if (c == own) continue;
                    const auto& p = full[static_cast<size_t>(c)];
                    float v;
                    if (c == 1)
                        v = 0.25f *
                            (p[i - 1] + p[i + 1] + p[i - static_cast<size_t>(W)] + p[i + static_cast<size_t>(W)]);
                    else if (own == 1)
                        v = colour_at(x + 1, y) == c
                                ? 0.5f * (p[i - 1] + p[i + 1])
                                : 0.5f * (p[i - static_cast<size_t>(W)] + p[i + static_cast<size_t>(W)]);
                    else
                        v = 0.25f * (p[i - static_cast<size_t>(W) - 1] + p[i - static_cast<size_t>(W) + 1] +
                                     p[i + static_cast<size_t>(W) - 1] + p[i + static_cast<size_t>(W) + 1]);
                    plane[static_cast<size_t>(c)][i] = v;
                }
            }
    }
    if (phone.denoise > 0) {  // chroma is smoothed, as phones do
        std::vector<float> grey(n);
        for (size_t i = 0; i < n; ++i) grey[i] = 0.3f * plane[0][i] + 0.6f * plane[1][i] + 0.1f * plane[2][i];
        const float k = static_cast<float>(phone.denoise);
        for (auto& p : plane) {
            std::vector<float> chroma(n);
            for (size_t i = 0; i < n; ++i) chroma[i] = p[i] - grey[i];
            blur(chroma, W, H, 1.2);
            for (size_t i = 0; i < n; ++i) p[i] = (1 - k) * p[i] + k * (grey[i] + chroma[i]);
        }
    }
    std::vector<float> curve(4097);
    for (size_t i = 0; i < curve.size(); ++i)
        curve[i] = static_cast<float>(
            tone_curve(phone, coded((static_cast<double>(i) / 4096) * (static_cast<double>(i) / 4096))));
    for (auto& p : plane)
        for (float& v : p) {
            const float at = std::sqrt(clamp01(v)) * 4096;
            const int i = std::min(4095, static_cast<int>(at));
            v = curve[static_cast<size_t>(i)] +
                (curve[static_cast<size_t>(i + 1)] - curve[static_cast<size_t>(i)]) * (at - static_cast<float>(i));
        }
    if (phone.sharpen > 0) {
        std::vector<float> grey(n), soft;
        for (size_t i = 0; i < n; ++i) grey[i] = 0.3f * plane[0][i] + 0.59f * plane[1][i] + 0.11f * plane[2][i];
        soft = grey;
        blur(soft, W, H, 1.0);
        for (auto& p : plane)
            for (size_t i = 0; i < n; ++i) p[i] += static_cast<float>(phone.sharpen) * (grey[i] - soft[i]);
    }
    std::vector<uint8_t> rgb(3 * n);
    for (size_t i = 0; i < n; ++i)
        for (size_t c = 0; c < 3; ++c) rgb[3 * i + c] = static_cast<uint8_t>(std::lround(255 * clamp01(plane[c][i])));
    return rgb;
}

void jpeg_blocks(std::vector<uint8_t>& rgb, int W, int H, int quality, bool half_chroma) {
    // ITU-T T.81 annex K tables, scaled as the common libraries do.
    static const int luma[64] = {16, 11, 10, 16, 24,  40,  51,  61,  12, 12, 14, 19, 26,  58,  60,  55,
                                 14, 13, 16, 24, 40,  57,  69,  56,  14, 17, 22, 29, 51,  87,  80,  62,
                                 18, 22, 37, 56, 68,  109, 103, 77,  24, 35, 55, 64, 81,  104, 113, 92,
                                 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99};
    static const int chroma[64] = {17, 18, 24, 47, 99, 99, 99, 99, 18, 21, 26, 66, 99, 99, 99, 99,
                                   24, 26, 56, 99, 99, 99, 99, 99, 47, 66, 99, 99, 99, 99, 99, 99,
                                   99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
                                   99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99};
    const int scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
    static float basis[8][8];
    static const bool made = [] {
        for (int k = 0; k < 8; ++k)
            for (int x = 0; x < 8; ++x)
                basis[k][x] = static_cast<float>((k ? 0.5 : std::sqrt(0.125)) *
                                                 std::cos((2 * x + 1) * k * 3.14159265358979 / 16));
        return true;
    }();
    (void)made;
    const size_t n = static_cast<size_t>(W) * H;
    std::array<std::vector<float>, 3> plane;
    for (auto& p : plane) p.resize(n);
    for (size_t i = 0; i < n; ++i) {
        const float r = rgb[3 * i], g = rgb[3 * i + 1], b = rgb[3 * i + 2];
        plane[0][i] = 0.299f * r + 0.587f * g + 0.114f * b - 128;
        plane[1][i] = -0.168736f * r - 0.331264f * g + 0.5f * b;
        plane[2][i] = 0.5f * r - 0.418688f * g - 0.081312f * b;
    }
    for (int c = 0; c < 3; ++c) {
        const int f = c > 0 && half_chroma ? 2 : 1, w = (W + f - 1) / f, h = (H + f - 1) / f;
        std::vector<float> small(static_cast<size_t>(w) * h);
        for (int y = 0; y < h; ++y)
            for (int x = 0; x < w; ++x) {
                float sum = 0;
                int m = 0;
                for (int j = 0; j < f; ++j)
                    for (int i = 0; i < f; ++i)
                        if (x * f + i < W && y * f + j < H)
                            sum += plane[static_cast<size_t>(c)][static_cast<size_t>(y * f + j) * W + x * f + i], ++m;
                small[static_cast<size_t>(y) * w + x] = sum / static_cast<float>(m);
            }
        const int* table = c ? chroma : luma;
        float q[64];
        for (int i = 0; i < 64; ++i) q[i] = static_cast<float>(std::clamp((table[i] * scale + 50) / 100, 1, 255));
        for (int by = 0; by < h; by += 8)
            for (int bx = 0; bx < w; bx += 8) {
                float v[8][8], t[8][8];
                for (int y = 0; y < 8; ++y)
                    for (int x = 0; x < 8; ++x)
                        v[y][x] = small[static_cast<size_t>(std::min(by + y, h - 1)) * w + std::min(bx + x, w - 1)];
                for (int y = 0; y < 8; ++y)
                    for (int k = 0; k < 8; ++k) {
                        float s = 0;
                        for (int x = 0; x < 8; ++x) s += v[y][x] * basis[k][x];
                        t[y][k] = s;
                    }
                for (int k = 0; k < 8; ++k)
                    for (int l = 0; l < 8; ++l) {
                        float s = 0;
                        for (int y = 0; y < 8; ++y) s += t[y][k] * basis[l][y];
                        v[l][k] = std::round(s / q[8 * l + k]) * q[8 * l + k];
                    }
                for (int l = 0; l < 8; ++l)
                    for (int x = 0; x < 8; ++x) {
                        float s = 0;
                        for (int k = 0; k < 8; ++k) s += v[l][k] * basis[k][x];
                        t[l][x] = s;
                    }
                for (int y = 0; y < 8 && by + y < h; ++y)
                    for (int x = 0; x < 8 && bx + x < w; ++x) {
                        float s = 0;
                        for (int l = 0; l < 8; ++l) s += t[l][x] * basis[l][y];
                        small[static_cast<size_t>(by + y) * w + bx + x] = s;
                    }
            }
        for (int y = 0; y < H; ++y)
            for (int x = 0; x < W; ++x)
                plane[static_cast<size_t>(c)][static_cast<size_t>(y) * W + x] =
                    small[static_cast<size_t>(y / f) * w + x / f];
    }
    for (size_t i = 0; i < n; ++i) {
        const float Y = plane[0][i] + 128, cb = plane[1][i], cr = plane[2][i];
        const float out[3] = {Y + 1.402f * cr, Y - 0.344136f * cb - 0.714136f * cr, Y + 1.772f * cb};
        for (size_t c = 0; c < 3; ++c) rgb[3 * i + c] = static_cast<uint8_t>(std::clamp(std::lround(out[c]), 0l, 255l));
    }
}

}  // namespace render
