// Plain small vectors: the renderer needs no library, so that it also builds where only a compiler is.
#pragma once

#include <cmath>

namespace render {

struct V2 {
    double x = 0, y = 0;
};
struct V3 {
    double x = 0, y = 0, z = 0;
};
inline V3 operator+(V3 a, V3 b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline V3 operator-(V3 a, V3 b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline V3 operator*(V3 a, double k) {
    return {a.x * k, a.y * k, a.z * k};
}
inline double dot(V3 a, V3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline V3 unit(V3 a) {
    const double n = std::sqrt(dot(a, a));
    return n > 0 ? a * (1 / n) : a;
}

// Linear light, sRGB primaries, 0..1 where 1 is a perfect white under the scene's light.
struct Rgb {
    float r = 0, g = 0, b = 0;
};
inline Rgb operator+(Rgb a, Rgb b) {
    return {a.r + b.r, a.g + b.g, a.b + b.b};
}
inline Rgb operator*(Rgb a, float k) {
    return {a.r * k, a.g * k, a.b * k};
}
inline Rgb operator*(Rgb a, Rgb b) {
    return {a.r * b.r, a.g * b.g, a.b * b.b};
}

inline float clamp01(float v) {
    return v < 0 ? 0 : v > 1 ? 1 : v;
}
inline double clamp(double v, double low, double high) {
    return v < low ? low : v > high ? high : v;
}
inline double smoothstep(double a, double b, double x) {
    const double t = clamp((x - a) / (b - a), 0, 1);
    return t * t * (3 - 2 * t);
}

}  // namespace render
