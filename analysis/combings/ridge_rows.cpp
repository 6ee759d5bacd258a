#include "combings/ridge_rows.h"

#include <algorithm>
#include <bit>
#include <cstring>

#include "core/twice.h"

namespace kempt::combings {
namespace {

// Bright lines are rarer, so more is asked of them.
constexpr float bright_factor = 1.6f;
// Half a pixel would do; a little more leaves no holes between neighbours.
constexpr float most_aside = 0.6f;

// All functions that take or give these are part of their caller, whatever vectors its processor has.
#pragma GCC diagnostic ignored "-Wpsabi"
constexpr int lanes = 8;
typedef float Eight __attribute__((vector_size(4 * lanes)));
typedef int EightInts __attribute__((vector_size(4 * lanes)));

KEMPT_WITHIN Eight eight(const float* from) {
    Eight out;
    std::memcpy(&out, from, sizeof(out));
    return out;
}
KEMPT_WITHIN Eight all(float v) {
    return Eight{v, v, v, v, v, v, v, v};
}
KEMPT_WITHIN Eight size_of(const Eight& v) {
    constexpr int most = 0x7fffffff;
    return reinterpret_cast<Eight>(reinterpret_cast<EightInts>(v) &
                                   EightInts{most, most, most, most, most, most, most, most});
}
KEMPT_WITHIN Eight root_of(const Eight& v) {
    Eight out;
    for (int i = 0; i < lanes; ++i) out[i] = __builtin_sqrtf(v[i]);
    return out;
}
// Bits of the lanes that are not 0.
KEMPT_WITHIN unsigned bits_of(const EightInts& v) {
    const EightInts own = v & EightInts{1, 2, 4, 8, 16, 32, 64, 128};
    uint64_t part[lanes / 2];
    std::memcpy(part, &own, sizeof(part));
    const uint64_t one = part[0] | part[1] | part[2] | part[3];
    return static_cast<unsigned>((one | one >> 32) & 255);
}

// Points of eight pixels.
struct Found {
    float x[lanes], y[lanes], nx[lanes], ny[lanes], strength[lanes], sign[lanes], lean[lanes];
};

// Whether any of eight pixels from x on may hold a point. The curvature along a line is small, so the sum of both is
// near that across; nine pixels in ten are told by it.
KEMPT_WITHIN bool may_hold(const RowOf& row, int x, float least) {
    const float *a = row.a + x, *b = row.b + x, *c = row.c + x;
    const Eight m = eight(b), zero{}, sum = (eight(b - 1) - 2 * m + eight(b + 1)) + (eight(a) - 2 * m + eight(c));
    return bits_of(((sum <= all(-least)) & (m > zero)) | ((sum >= all(bright_factor * least)) & (m < zero))) != 0;
}

// Which of the first `count` of eight pixels from x on hold a point: bits. The places are filled in for those that do.
KEMPT_WITHIN unsigned find(const RowOf& row, int x, int count, float least_strength, Found& found) {
    const float *a = row.a + x, *b = row.b + x, *c = row.c + x;
    const Eight m = eight(b), left = eight(b - 1), right = eight(b + 1), above = eight(a), below = eight(c);
    Eight xx = left - 2 * m + right, yy = above - 2 * m + below;
    const Eight sum = xx + yy, zero{}, one = all(1), least = all(least_strength);
    EightInts wanted = EightInts{0, 1, 2, 3, 4, 5, 6, 7} < count;
    wanted &= ((sum <= -least) & (m > zero)) | ((sum >= all(bright_factor * least_strength)) & (m < zero));
    const Eight sign = sum < zero ? one : -one;
    xx *= sign, yy *= sign;
    const Eight xy = 0.25f * sign * (eight(c + 1) - eight(c - 1) - eight(a + 1) + eight(a - 1));
    const Eight mean = 0.5f * (xx + yy), half = 0.5f * (xx - yy), root = root_of(half * half + xy * xy);
    const Eight across = mean - root, along = mean + root;
    wanted &= -across >= least;
    // Unit vector across: eigenvector of the smaller eigenvalue.
    const Eight by_x = across - xx, by_y = across - yy;
    const EightInts steep = size_of(by_y) > size_of(by_x);
    Eight nx = steep ? by_y : xy, ny = steep ? xy : by_x;
    const Eight gx = 0.5f * sign * (right - left), gy = 0.5f * sign * (below - above);
    const Eight norm = root_of(nx * nx + ny * ny);
    const EightInts none = norm < all(1e-12f);
    nx = none ? one : nx / norm, ny = none ? zero : ny / norm;
    const Eight t = -(gx * nx + gy * ny) / across, aside_x = t * nx, aside_y = t * ny;
    wanted &= (size_of(aside_x) <= all(most_aside)) & (size_of(aside_y) <= all(most_aside));
    const float first = static_cast<float>(row.from + x);
    const Eight at_x = all(first) + Eight{0, 1, 2, 3, 4, 5, 6, 7} + aside_x,
                at_y = all(static_cast<float>(row.y)) + aside_y;
    Eight lean = (size_of(across) - size_of(along)) / (size_of(across) + size_of(along));
    lean = lean < zero ? zero : (one < lean ? one : lean);
    const Eight strength = -across;
    std::memcpy(found.x, &at_x, sizeof(at_x));
    std::memcpy(found.y, &at_y, sizeof(at_y));
    std::memcpy(found.nx, &nx, sizeof(nx));
    std::memcpy(found.ny, &ny, sizeof(ny));
    std::memcpy(found.strength, &strength, sizeof(strength));
    std::memcpy(found.sign, &sign, sizeof(sign));
    std::memcpy(found.lean, &lean, sizeof(lean));
    return bits_of(wanted);
}

}  // namespace

KEMPT_TWICE void smooth_across(const float* __restrict p, int n, float* __restrict to) {
    for (int x = 0; x < n; ++x) to[x] = p[x] + p[x + 4] + 4 * (p[x + 1] + p[x + 3]) + 6 * p[x + 2];
}

KEMPT_TWICE void smooth_down(const float* const (&rows)[5], int n, float* __restrict to) {
    const float* __restrict r0 = rows[0], * __restrict r1 = rows[1], * __restrict r2 = rows[2], * __restrict r3 = rows[3], * __restrict r4 = rows[4];
    for (int x = 0; x < n; ++x) to[x] = (r0[x] + r4[x] + 4 * (r1[x] + r3[x]) + 6 * r2[x]) * (1 / 256.f);
}

KEMPT_TWICE void add_points(const RowOf& row, int x0, int x1, float least, const Field* ask,
                            Roomy<RidgePoint>& points) {
    // Blocks of eight, those that may hold a point first: a processor foretells two short loops better than one long.
    constexpr int most = 64;
    Found found;
    int blocks[most];
    for (int part = x0; part < x1; part += most * lanes) {
        int n = 0;
        for (int x = part; x < std::min(x1, part + most * lanes); x += lanes) {
            blocks[n] = x;
            n += may_hold(row, x, least);
        }
        for (int k = 0; k < n; ++k) {
            const int x = blocks[k];
            for (unsigned bits = find(row, x, x1 - x, least, found); bits != 0; bits &= bits - 1) {
                const int i = std::countr_zero(bits);
                if (ask != nullptr && !ask->inside(cv::Point2f(found.x[i], found.y[i]))) continue;
                points.push_back({found.x[i], found.y[i], -found.ny[i], found.nx[i], found.strength[i], found.sign[i],
                                  found.lean[i], static_cast<uint16_t>(row.from + x + i - row.corner.x),
                                  static_cast<uint16_t>(row.y - row.corner.y)});
            }
        }
    }
}

}  // namespace kempt::combings
