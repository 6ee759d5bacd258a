// Smooth value noise on a hashed lattice: the same seed gives the same pattern everywhere.
#pragma once

#include <cmath>
#include <cstdint>

namespace render {

inline float lattice(uint32_t seed, int x, int y) {
    uint32_t h = seed ^ (static_cast<uint32_t>(x) * 0x8da6b343u) ^ (static_cast<uint32_t>(y) * 0xd8163841u);
    h ^= h >> 15;
    h *= 0x2c1b3c6du;
    h ^= h >> 12;
    h *= 0x297a2d39u;
    h ^= h >> 15;
    return static_cast<float>(h) * (2.0f / 4294967296.0f) - 1.0f;
}

// -1..1, features about one unit wide.
inline float value_noise(uint32_t seed, double x, double y) {
    const double fx = std::floor(x), fy = std::floor(y);
    const int ix = static_cast<int>(fx), iy = static_cast<int>(fy);
    auto ease = [](float t) { return t * t * (3 - 2 * t); };
    const float tx = ease(static_cast<float>(x - fx)), ty = ease(static_cast<float>(y - fy));
    const float a = lattice(seed, ix, iy), b = lattice(seed, ix + 1, iy), c = lattice(seed, ix, iy + 1),
                d = lattice(seed, ix + 1, iy + 1);
    return (a + (b - a) * tx) * (1 - ty) + (c + (d - c) * tx) * ty;
}

}  // namespace render
