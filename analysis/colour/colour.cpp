#include "colour/colour.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kempt::colour {
namespace {

constexpr double pi = 3.14159265358979323846;

// The white that the header names; both matrices are scaled to it, so that R = G = B gives a = b = 0 exactly.
const cv::Vec3d white(0.95047, 1.0, 1.08883);

// XYZ from linear light of a display with these chromaticities (x, y) whose equal signal gives the white above
// (SMPTE RP 177-1993, the usual derivation).
cv::Matx33d xyz_from_primaries(const cv::Vec2d& red, const cv::Vec2d& green, const cv::Vec2d& blue) {
    cv::Matx33d columns;
    const cv::Vec2d primaries[3] = {red, green, blue};
    for (int c = 0; c < 3; ++c) {
        const double x = primaries[c][0], y = primaries[c][1];
        columns(0, c) = x / y;
        columns(1, c) = 1;
        columns(2, c) = (1 - x - y) / y;
    }
    const cv::Vec3d scale = columns.inv() * white;
    return columns * cv::Matx33d::diag(scale);
}

// Chromaticities of IEC 61966-2-1.
const cv::Matx33d& xyz_from_srgb() {
    static const cv::Matx33d matrix = xyz_from_primaries({0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06});
    return matrix;
}

const cv::Matx33d& srgb_from_xyz() {
    static const cv::Matx33d matrix = xyz_from_srgb().inv();
    return matrix;
}

std::array<std::vector<float>, 3> srgb_tables(bool sixteen_bit) {
    const int codes = sixteen_bit ? 65536 : 256;
    std::vector<float> table(static_cast<size_t>(codes));
    for (int code = 0; code < codes; ++code)
        table[static_cast<size_t>(code)] = static_cast<float>(linear_from_srgb(code / double(codes - 1)));
    return {table, table, table};
}

// CIE 15: the two pieces of the lightness function, meeting at (6/29)^3.
constexpr double epsilon = 216.0 / 24389.0;
constexpr double kappa = 24389.0 / 27.0;

double lightness(double t) {
    return t > epsilon ? std::cbrt(t) : (kappa * t + 16) / 116;
}
double from_lightness(double f) {
    return f * f * f > epsilon ? f * f * f : (116 * f - 16) / kappa;
}

double degrees(double radians) {
    return radians * 180 / pi;
}
double radians(double degrees) {
    return degrees * pi / 180;
}

// Hue angle in 0..360, 0 for grey.
double hue(double a, double b) {
    if (a == 0 && b == 0) return 0;
    const double angle = degrees(std::atan2(b, a));
    return angle < 0 ? angle + 360 : angle;
}

// C^7 / (C^7 + 25^7), the weight of the blue and grey corrections.
double seventh(double chroma) {
    const double c7 = std::pow(chroma, 7);
    return c7 / (c7 + 6103515625.0);
}

}  // namespace

double linear_from_srgb(double code) {
    if (code < 0) return -linear_from_srgb(-code);
    return code <= 0.04045 ? code / 12.92 : std::pow((code + 0.055) / 1.055, 2.4);
}

double srgb_from_linear(double light) {
    if (light < 0) return -srgb_from_linear(-light);
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

ColourEncoding srgb_encoding(bool sixteen_bit) {
    ColourEncoding encoding;
    encoding.name = "sRGB";
    encoding.linear = srgb_tables(sixteen_bit);
    return encoding;
}

ColourEncoding display_p3_encoding(bool sixteen_bit) {
    ColourEncoding encoding;
    encoding.name = "Display P3";
    encoding.linear = srgb_tables(sixteen_bit);
    const cv::Matx33d xyz_from_p3 = xyz_from_primaries({0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060});
    encoding.srgb_from_device = cv::Matx33f(srgb_from_xyz() * xyz_from_p3);
    return encoding;
}

Lab lab_from_linear_srgb(const cv::Vec3d& rgb) {
    const cv::Vec3d xyz = xyz_from_srgb() * rgb;
    const double fx = lightness(xyz[0] / white[0]);
    const double fy = lightness(xyz[1] / white[1]);
    const double fz = lightness(xyz[2] / white[2]);
    return {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
}

cv::Vec3d linear_srgb_from_lab(const Lab& lab) {
    const double fy = (lab.L + 16) / 116;
    const double fx = fy + lab.a / 500;
    const double fz = fy - lab.b / 200;
    const cv::Vec3d xyz(white[0] * from_lightness(fx), white[1] * from_lightness(fy), white[2] * from_lightness(fz));
    return srgb_from_xyz() * xyz;
}

double ciede2000(const Lab& one, const Lab& two) {
    const double mean_chroma = (std::hypot(one.a, one.b) + std::hypot(two.a, two.b)) / 2;
    const double stretch = 1 + 0.5 * (1 - std::sqrt(seventh(mean_chroma)));
    const double a1 = stretch * one.a, a2 = stretch * two.a;
    const double c1 = std::hypot(a1, one.b), c2 = std::hypot(a2, two.b);
    const double h1 = hue(a1, one.b), h2 = hue(a2, two.b);

    const double dL = two.L - one.L;
    const double dC = c2 - c1;
    double dh = 0, mean_hue = h1 + h2;
    if (c1 * c2 != 0) {
        dh = h2 - h1;
        if (dh > 180) dh -= 360;
        if (dh < -180) dh += 360;
        if (std::abs(h1 - h2) <= 180)
            mean_hue = (h1 + h2) / 2;
        else
            mean_hue = h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
    }
    const double dH = 2 * std::sqrt(c1 * c2) * std::sin(radians(dh) / 2);

    const double mean_L = (one.L + two.L) / 2;
    const double mean_C = (c1 + c2) / 2;
    const double T = 1 - 0.17 * std::cos(radians(mean_hue - 30)) + 0.24 * std::cos(radians(2 * mean_hue)) +
                     0.32 * std::cos(radians(3 * mean_hue + 6)) - 0.20 * std::cos(radians(4 * mean_hue - 63));
    const double from_middle = (mean_L - 50) * (mean_L - 50);
    const double SL = 1 + 0.015 * from_middle / std::sqrt(20 + from_middle);
    const double SC = 1 + 0.045 * mean_C;
    const double SH = 1 + 0.015 * mean_C * T;
    const double from_blue = (mean_hue - 275) / 25;
    const double rotation = -std::sin(radians(60 * std::exp(-from_blue * from_blue))) * 2 * std::sqrt(seventh(mean_C));

    const double l = dL / SL, c = dC / SC, h = dH / SH;
    return std::sqrt(std::max(0.0, l * l + c * c + h * h + rotation * c * h));
}

double typology_angle(const Lab& lab) {
    // Skin always has b* > 0; from bluish or grey input the limit of b* -> 0 is taken instead of another quadrant.
    return degrees(std::atan2(lab.L - 50, std::max(lab.b, std::numeric_limits<double>::min())));
}

}  // namespace kempt::colour
